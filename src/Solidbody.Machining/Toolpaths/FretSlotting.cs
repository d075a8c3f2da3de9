using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Thin straight slots whose floors follow a surface: fret slots on a curved board.</summary>
public static class FretSlotting
{
    /// <summary>Of a pass's depth, what a leg of a zigzag sinks: two legs meet at its end, over what the last one left.</summary>
    private const double LegShare = 1.0 / 3;
    /// <summary>Room in which wood may stand past the surface's edge at an end, and a little more, mm.</summary>
    private const double EndRoom = 1.5;

    /// <summary>Cuts each slot in level passes, forth and back. At the end where it stands, the cutter sinks on a ramp into the slot, comes back
    /// level, and then runs to the other end: no place ever meets more than one pass's depth of wood. What stands higher at the ends is taken first, on a zigzag.</summary>
    /// <param name="s">Each pass sinks by at most the step-down, no steeper, against the surface, than the ramp.</param>
    /// <param name="slots">Slots; the surface must already be the wood's top along them, but for what may stand over it at their ends.</param>
    /// <param name="surface">Closed form, laid frame.</param>
    public static ImmutableArray<Motion> Path(CutSettings s, IReadOnlyList<SlotLine> slots, IHeight surface)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(slots);
        var path = new PathBuilder(s);
        foreach (var (line, slot) in InOrder(slots, surface))
        {
            path.EnterAbove(line.Start, line.StartHeight + slot.Over);
            path.Line(line.Start, line.StartHeight + slot.Over);
            Sink(path, s, line, 0, slot.Over, 0);
            var (end, other, above) = (0.0, line.Length, 0.0);
            foreach (var level in DepthLevels.Of(0, -slot.Depth, Math.Min(s.StepDown, line.Length * Math.Tan(s.RampAngle))))
            {
                var ramp = (-level - above) / Math.Tan(s.RampAngle);
                var into = end + Math.Sign(other - end) * Math.Min(ramp, line.Length);
                line.Run(path, end, into, above, -level);
                line.Run(path, into, end, -level, -level);
                if (above > 0 || slot.Over <= 0) line.Run(path, end, other, -level, -level);
                else ToStandingEnd(path, s, line, slot.Over, -level, level <= -slot.Depth);
                (end, other, above) = (other, end, -level);
            }
        }
        return path.Build();
    }

    /// <summary>The first pass, to the end where wood still stands over the surface: over it, and down on a zigzag. When no pass follows, back level over what the zigzag left.</summary>
    private static void ToStandingEnd(PathBuilder path, CutSettings s, SurfaceLine line, double over, double depth, bool isLast)
    {
        var near = Math.Max(line.Length / 2, line.Length - Math.Max(EndRoom, Leg(s, over + depth).Length));
        line.Run(path, 0, near, depth, depth);
        path.Line(path.At with { Z = path.At.Z + depth + over });
        line.Run(path, near, line.Length, -over, -over);
        Sink(path, s, line, line.Length, over, -depth);
        if (isLast) line.Run(path, line.Length, near, depth, depth);
    }

    /// <summary>Forth and back between an end and a point a little inside, sinking from one height over the surface to another; ends at the end.</summary>
    private static void Sink(PathBuilder path, CutSettings s, SurfaceLine line, double end, double from, double to)
    {
        if (from <= to) return;
        var (legs, length) = Leg(s, from - to);
        var inside = end + Math.Sign(line.Length / 2 - end) * Math.Min(line.Length / 2, Math.Max(EndRoom, length));
        for (var i = 0; i < legs; i++)
        {
            var (a, b) = i % 2 == 0 ? (end, inside) : (inside, end);
            line.Run(path, a, b, -(from + (to - from) * i / legs), -(from + (to - from) * (i + 1) / legs));
        }
    }

    /// <summary>An even number of legs that sink so far together, and how long one must be.</summary>
    private static (int Legs, double Length) Leg(CutSettings s, double drop)
    {
        var legs = 2 * Math.Max(1, (int)Math.Ceiling(drop / (2 * LegShare * s.StepDown) - 1e-9));
        return (legs, drop / legs / Math.Tan(s.RampAngle));
    }

    /// <summary>A short way through the slots, each begun at the end nearer to where the one before began.</summary>
    internal static IEnumerable<(SurfaceLine Line, SlotLine Slot)> InOrder(IReadOnlyList<SlotLine> slots, IHeight surface)
    {
        Point2? at = null;
        foreach (var slot in VisitOrder.Of([.. slots.Select(l => 0.5 * (l.A + l.B))]).Select(i => slots[i]))
        {
            var swap = at is { } p && p.DistanceTo(slot.B) < p.DistanceTo(slot.A);
            var (a, b) = swap ? (slot.B, slot.A) : (slot.A, slot.B);
            at = a;
            yield return (new(surface, a, b), slot);
        }
    }
}
