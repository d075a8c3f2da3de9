using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Thin straight slots whose floors follow a surface: fret slots on a curved board.</summary>
public static class FretSlotting
{
    /// <summary>Cuts each slot in level passes, forth and back. At the end where it stands, the cutter sinks on a ramp into the slot, comes back
    /// level, and then runs to the other end: no place ever meets more than one pass's depth of wood.</summary>
    /// <param name="s">Each pass sinks by at most the step-down, no steeper, against the surface, than the ramp.</param>
    /// <param name="slots">Slots; the surface must already be the wood's top along them, ends included.</param>
    /// <param name="surface">Closed form, laid frame.</param>
    /// <param name="top">Height of wood that may stand where a slot begins past the surface's edge: a thin cutter may not go straight down into it.</param>
    public static ImmutableArray<Motion> Path(CutSettings s, IReadOnlyList<SlotLine> slots, IHeight surface, double top = double.NegativeInfinity)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(slots);
        var path = new PathBuilder(s);
        foreach (var (line, depth) in InOrder(slots, surface))
        {
            var standing = Math.Max(0, top - line.StartHeight);
            path.EnterAbove(line.Start, Math.Max(top, line.Highest));
            path.Line(line.Start, line.StartHeight + standing);
            if (standing > 0)
            {
                var run = Math.Min(line.Length, standing / Math.Tan(s.RampAngle));
                line.Run(path, 0, run, -standing, 0);
                line.Run(path, run, 0, 0, 0);
            }
            var (end, other, above) = (0.0, line.Length, 0.0);
            foreach (var level in DepthLevels.Of(0, -depth, Math.Min(s.StepDown, line.Length * Math.Tan(s.RampAngle))))
            {
                var ramp = (-level - above) / Math.Tan(s.RampAngle);
                var into = end + Math.Sign(other - end) * Math.Min(ramp, line.Length);
                line.Run(path, end, into, above, -level);
                line.Run(path, into, end, -level, -level);
                line.Run(path, end, other, -level, -level);
                (end, other, above) = (other, end, -level);
            }
        }
        return path.Build();
    }

    /// <summary>A short way through the slots, each begun at the end nearer to where the one before began.</summary>
    internal static IEnumerable<(SurfaceLine Line, double Depth)> InOrder(IReadOnlyList<SlotLine> slots, IHeight surface)
    {
        Point2? at = null;
        foreach (var slot in VisitOrder.Of([.. slots.Select(l => 0.5 * (l.A + l.B))]).Select(i => slots[i]))
        {
            var swap = at is { } p && p.DistanceTo(slot.B) < p.DistanceTo(slot.A);
            var (a, b) = swap ? (slot.B, slot.A) : (slot.A, slot.B);
            at = a;
            yield return (new(surface, a, b), slot.Depth);
        }
    }
}
