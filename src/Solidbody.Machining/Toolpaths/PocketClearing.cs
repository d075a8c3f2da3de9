using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Geometry.Arcs;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Clears a pocket level by level with rings inside one another, from the middle outward, climbing.</summary>
public static class PocketClearing
{
    /// <summary>Greatest distance between rings by cutter radius: under 1, so that what a vanished ring left lies within reach of the last one.</summary>
    private const double WidestStepByRadius = 0.9;
    /// <summary>Thinnest helix into solid wood, by cutter radius; a ramp along the ring below that. Common practice, no source.</summary>
    internal const double ThinnestEntryByRadius = 0.3;
    /// <summary>How far beyond a step-over a link may cut into solid wood, mm.</summary>
    private const double LinkSlack = 0.5;

    /// <summary>Removes everything the cutter reaches at least <paramref name="wallLeave"/> off the walls and islands, down to the floor plus <paramref name="floorLeave"/>.</summary>
    /// <param name="s">Settings; a StepOver above 0.45 D is taken as 0.45 D.</param>
    /// <param name="region">The finished pocket in the laid frame; holes are islands.</param>
    /// <param name="top">Height of the wood.</param>
    /// <param name="floor">Height of the finished floor.</param>
    /// <param name="wallLeave">Skin on the walls, mm; ≥ 0.</param>
    /// <param name="floorLeave">Skin on the floor, mm; ≥ 0.</param>
    /// <returns>Motions; none when the cutter does not fit.</returns>
    /// <remarks>A point deeper than the last ring but inside no further one lies less than a step from the ring: both are offsets of the same wall. Step &lt; radius covers it.</remarks>
    public static ImmutableArray<Motion> Path(CutSettings s, Region region, double top, double floor, double wallLeave, double floorLeave)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(region);
        var path = new PathBuilder(s);
        Clear(path, s, region, s.Cutter.Radius + wallLeave, top, floor + floorLeave, top);
        return path.Build();
    }

    /// <summary>Levels and rings, the cutter's axis at least <paramref name="inset"/> inside the region.</summary>
    internal static void Clear(PathBuilder path, CutSettings s, Region region, double inset, double top, double bottom, double highest)
    {
        if (!(s.StepOver > 0)) throw new ArgumentOutOfRangeException(nameof(s), s.StepOver, "Step-over must be positive, mm.");
        var step = Math.Min(s.StepOver, WidestStepByRadius * s.Cutter.Radius);
        foreach (var rings in ClearingRings.Of(region, inset, step))
        {
            var (wood, over) = (top, Math.Max(top, highest));
            foreach (var level in DepthLevels.Of(top, bottom, s.StepDown))
            {
                Level(path, s, rings, over, wood, level, step);
                (wood, over) = (level, level);
            }
        }
    }

    private static void Level(PathBuilder path, CutSettings s, ClearingRings rings, double over, double wood, double z, double step)
    {
        for (var i = 0; i < rings.Rings.Count; i++)
        {
            var ring = rings.Rings[i];
            var start = i > 0 ? ring.Line.Nearest(path.At.Plan) : 0;
            var reach = step + LinkSlack;
            if (i > 0 && path.At.Plan.DistanceTo(ring.Line.At(start)) <= reach && rings.MayGo(path.At.Plan, ring.Line.At(start)))
                path.Line(ring.Line.At(start), z);
            else if (FromCutRing(rings, i, reach) is var (cut, onRing))
            {
                path.EnterAbove(cut, z);
                path.Line(cut, z);
                start = onRing;
                path.Line(ring.Line.At(start), z);
            }
            else start = EnterSolid(path, s, rings, ring, over, wood, z);
            path.Follow(ring.Line, start, start + ring.Line.Length, z);
        }
    }

    /// <summary>A corner of a ring already cut on this level, and the station of this ring it lies next to.</summary>
    private static (Point2 Cut, double Station)? FromCutRing(ClearingRings rings, int ring, double reach)
    {
        var line = rings.Rings[ring].Line;
        for (var k = ring - 1; k >= 0; k--)
            foreach (var p in rings.Rings[k].Line.Points)
            {
                var station = line.Nearest(p);
                if (p.DistanceTo(line.At(station)) <= reach && rings.MayGo(p, line.At(station))) return (p, station);
            }
        return null;
    }

    /// <summary>Down into uncut wood: a helix where one fits, else a ramp along the ring. Ends on the ring at depth; returns the station.</summary>
    private static double EnterSolid(PathBuilder path, CutSettings s, ClearingRings rings, ClearingRings.Ring ring, double over, double wood, double z)
    {
        var (centre, deep) = Deepest(rings, ring.Inside);
        var radius = Math.Min(HelicalBoring.EntryByRadius * s.Cutter.Radius, deep - Tolerances.Flattening);
        if (radius >= ThinnestEntryByRadius * s.Cutter.Radius)
        {
            var from = centre + radius * (ring.Line.At(ring.Line.Nearest(centre)) - centre).Unit;
            var station = ring.Line.Nearest(from);
            if (rings.MayGo(from, ring.Line.At(station)))
            {
                path.EnterAbove(from, over);
                HelicalBoring.Helix(path, s, centre, wood, z);
                path.Line(ring.Line.At(station), z);
                return station;
            }
        }
        var start = ring.Line.MiddleOfLongestChord();
        path.EnterAbove(ring.Line.At(start), over);
        path.Line(path.At with { Z = wood });
        var end = start + (wood - z) / Math.Tan(s.RampAngle);
        path.Follow(ring.Line, start, end, z);
        return end;
    }

    /// <summary>The point of the region deepest in the room, of a grid of trials, and how deep it lies.</summary>
    private static (Point2 At, double Depth) Deepest(ClearingRings rings, ArcRegion inside)
    {
        const int trials = 16;
        var grid = Grid.Over(inside.Bounds, Math.Max(Math.Max(inside.Bounds.Width, inside.Bounds.Height) / trials, Tolerances.Output));
        var best = (At: inside.Loops[0].Segments[0].From, Depth: 0.0);
        for (var i = 0; i < grid.Count; i++)
        {
            var p = grid.Centre(i % grid.Columns, i / grid.Columns);
            if (!inside.Contains(p)) continue;
            var depth = -rings.Room.SignedDistance(p);
            if (depth > best.Depth) best = (p, depth);
        }
        return best;
    }
}
