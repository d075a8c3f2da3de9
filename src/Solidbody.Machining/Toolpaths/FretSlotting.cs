using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Thin straight slots whose floors follow a surface: fret slots on a curved board.</summary>
public static class FretSlotting
{
    /// <summary>Cuts each slot back and forth along itself, sinking on a ramp, and once more at full depth.</summary>
    /// <param name="s">Each leg sinks by at most half a step-down and no steeper, against the surface, than the ramp.</param>
    /// <param name="slots">Slots; the surface must already be the wood's top along them, ends included.</param>
    /// <param name="surface">Closed form, laid frame.</param>
    public static ImmutableArray<Motion> Path(CutSettings s, IReadOnlyList<SlotLine> slots, IHeight surface)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(slots);
        var path = new PathBuilder(s);
        foreach (var (line, depth) in InOrder(slots, surface))
        {
            path.EnterAbove(line.Start, line.Highest);
            path.Line(line.Start, line.StartHeight);
            var (back, above) = (false, 0.0);
            foreach (var below in DepthLevels.Of(0, -depth, Math.Min(s.StepDown / 2, line.Length * Math.Tan(s.RampAngle))))
            {
                line.Run(path, above, -below, back);
                (back, above) = (!back, -below);
            }
            line.Run(path, depth, depth, back);
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
