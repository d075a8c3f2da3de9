using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Making;

/// <summary>Laid frame → work frame: the placement's turn and shift in the plan, applied to motions in this one place. Heights stay: both frames have Z = 0 on the spoilboard.</summary>
internal static class WorkMotion
{
    public static Motion Of(in Motion laid, Placement placement) => laid with
    {
        From = Of(laid.From, placement),
        To = Of(laid.To, placement),
        Centre = laid.IsArc ? Of(laid.Centre, placement) : default,
    };

    private static WorkPoint Of(WorkPoint p, Placement placement)
    {
        var plan = Of(p.Plan, placement);
        return new(plan.X, plan.Y, p.Z);
    }

    private static Point2 Of(Point2 p, Placement placement) => p.Turned(placement.Turn) + placement.Origin.Plan;
}
