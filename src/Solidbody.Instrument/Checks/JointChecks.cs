using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Playing;
using Solidbody.Materials;

namespace Solidbody.Instrument.Checks;

/// <summary>Whether screws or glue hold the neck in the body.</summary>
internal static class JointChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part body, NeckScrewHold? hold) => d.Neck.Joint switch
    {
        JointKind.BoltOn => [.. Screws(d, hold), .. Plate(d, body)],
        JointKind.Set => Glue(d),
        _ => [],
    };

    private static IEnumerable<Finding> Screws(InstrumentDefinition d, NeckScrewHold? hold)
    {
        if (hold is null) yield break;
        var pilot = d.Neck.Heel.Screws.PilotDepth;
        if (!(hold.Tip >= Limits.BeyondScrew)) yield return NeckFindings.TipNearGluePlane(hold.Tip);
        if (!(hold.Thread >= Limits.ScrewBite)) yield return NeckFindings.ShortBite(hold.Thread);
        if (d.Neck.Heel.Thickness - hold.Tip is var deepest && !(deepest <= pilot)) yield return NeckFindings.ShallowPilot(deepest, pilot);
        if (hold.Safety is { } safety && !(safety >= WoodScrews.UltimateToAllowable)) yield return NeckFindings.WeakHold(hold);
    }

    private static IEnumerable<Finding> Plate(InstrumentDefinition d, Part body)
    {
        if (d.Neck.Heel.Screws.Plate is not { } plate) yield break;
        var places = HeelScrews.Of(d.Neck.Heel.Screws, NeckJoint.Of(d));
        var middle = new Point2((places.Min(p => p.X) + places.Max(p => p.X)) / 2, 0);
        var edge = Shapes.Rectangle(middle, plate.Length, plate.Width).Points.Min(p => -body.Outline.SignedDistance(p));
        if (d.Body.BackEdge?.Width is var least && !(edge >= (least ?? 0))) yield return NeckFindings.PlateOffFlat(edge, least ?? 0);
    }

    private static IEnumerable<Finding> Glue(InstrumentDefinition d)
    {
        var (pocket, joint) = (d.Body.Pocket, NeckJoint.Of(d));
        if (Tenon.HalfWidth(d) is not null && NeckSeat.Of(d).Z(joint.HeelEnd, d.Neck.Heel.Thickness) is var gap && !(gap <= Limits.BoardOffBody)) yield return TenonFindings.BoardHangsFree(gap);
        if (Tenon.GlueArea(d) is var area && !(area >= Limits.TenonGlue)) yield return TenonFindings.LittleGlue(area);
        if (!(pocket.Clearance <= Limits.GlueGap)) yield return TenonFindings.Loose(pocket.Clearance);
    }
}
