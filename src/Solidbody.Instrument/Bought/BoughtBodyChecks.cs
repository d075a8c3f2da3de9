using Solidbody.Findings;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Checks;
using Solidbody.Instrument.Fretboards;

namespace Solidbody.Instrument.Bought;

/// <summary>Whether the neck goes into a bought body and brings the scale to its bridge.</summary>
internal static class BoughtBodyChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, BoughtBody body)
    {
        var joint = NeckJoint.Of(d);
        var off = d.Scale - (joint.HeelEnd + joint.Clearance + body.PocketToScaleLine);
        if (!(Math.Abs(off) <= BoughtLimits.Measuring)) yield return BoughtFindings.BridgeOffScale(off, d.Fretboard.BeyondLastFret + off);
        foreach (var (where, x, width) in ((string, double, double)[])[("end", joint.HeelEnd, body.PocketWidth), ("mouth", joint.ShoulderX, body.PocketWidthAtMouth)])
        {
            var gap = width / 2 - FretboardMaker.HalfWidth(d, x);
            if (!(gap >= 0)) yield return BoughtFindings.HeelTooWide(where, -2 * gap);
            if (gap > BoughtLimits.Play) yield return BoughtFindings.HeelLoose(where, gap);
        }
        if (!(d.Neck.Heel.Thickness >= d.Body.Pocket.Depth)) yield return PocketFindings.TooDeep(d.Neck.Heel.Thickness - d.Body.Pocket.Depth);
    }
}
