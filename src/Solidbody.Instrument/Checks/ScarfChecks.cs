using Solidbody.Findings;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Playing;

namespace Solidbody.Instrument.Checks;

/// <summary>Whether a headstock that leans back holds: its grain in one piece, its joint when it is glued on.</summary>
internal static class ScarfChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, ScarfJoint? joint, HeadGrain? grain)
    {
        if (grain is not null && !(Math.Tan(d.Headstock.Angle) <= Limits.SlopeOfGrain)) yield return HeadFindings.ShortGrain(d.Headstock.Angle, grain);
        if (joint is null) yield break;
        yield return ScarfFindings.Layout(joint);
        if (!(joint.GlueLength >= Limits.ScarfLength)) yield return ScarfFindings.Short(joint.GlueLength);
        var access = NeckMaker.AccessSpan(d);
        var behind = access is var (from, _) ? -from : d.Nut.Thickness;
        if (joint.LineAt >= -Limits.ScarfLineToNut && joint.LineAt <= behind) yield return ScarfFindings.LineAtNut(joint.LineAt, behind);
        // The adjuster's room has upright walls down to the channel's floor.
        if (access is var (a, b) && ((double[])[a, b]).Any(x => joint.Depth(-x) is var z && z > -HeadFace.Of(d).Z(x, 0) && z < d.Neck.Rod.Depth)) yield return ScarfFindings.AtAccess();
    }
}
