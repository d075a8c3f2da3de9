using Solidbody.Geometry;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>What a curved face asks of the ball-end that makes it.</summary>
internal sealed class Carving
{
    /// <summary>Distance between sampled points, mm; slopes and curvatures are taken over <see cref="Reach"/>.</summary>
    private const double Spacing = 3, Reach = 0.5;

    /// <summary>How far off the planed face a zone's edge may lie, mm; steepest rise into the zone that still counts as none.</summary>
    private const double EdgeOff = 0.02, EdgeRise = 0.01;

    private readonly double floor;
    private readonly List<(double Z, double Normal)> edge = [];   // height, and z of the unit normal

    /// <param name="face">The face, laid frame.</param>
    /// <param name="zone">Where it is carved: the whole outline, or part of it.</param>
    /// <param name="top">Height of the raw wood.</param>
    /// <param name="machine">Its spoilboard allowance.</param>
    public Carving(IHeight face, Region zone, double top, Machine machine)
    {
        floor = -machine.SpoilboardAllowance;
        foreach (var (at, inward) in Edge(zone)) AddEdge(face, at, inward);
        LowestEdge = edge.Min(e => e.Z);
        var box = zone.Bounds;
        var least = double.PositiveInfinity;
        var lowest = double.PositiveInfinity;
        for (var x = box.X0; x <= box.X1; x += Spacing)
            for (var y = box.Y0; y <= box.Y1; y += Spacing)
            {
                var p = new Point2(x, y);
                if (zone.SignedDistance(p, 2 * Reach) > -2 * Reach) continue;
                lowest = Math.Min(lowest, face.Z(x, y));
                least = Math.Min(least, HollowRadius(face, p));
            }
        LargestRadius = least;
        MostWood = top - Math.Min(lowest, LowestEdge);
    }

    /// <summary>Lowest height of the face along the outline.</summary>
    public double LowestEdge { get; }
    /// <summary>Least radius of a hollow in the face, mm: a larger ball bridges it.</summary>
    public double LargestRadius { get; }
    /// <summary>Deepest wood over the face, mm.</summary>
    public double MostWood { get; }

    /// <summary>Lowest tip of a ball of radius r that touches the face's edge: contact height + r·(n_z − 1), n the unit normal there.</summary>
    public double Tip(Cutter ball) => edge.Min(e => e.Z + ball.Radius * (e.Normal - 1));

    /// <summary>Whether the ball fits the hollows and its tip stays out of the bed.</summary>
    public bool Suits(Cutter ball) => ball.Radius <= LargestRadius && Tip(ball) >= floor;

    /// <summary>Highest point of a face over a region, from samples a millimetre apart.</summary>
    public static double Highest(IHeight face, Region region)
    {
        var highest = region.Loops.SelectMany(l => l.Points).Max(p => face.Z(p.X, p.Y));
        for (var x = region.Bounds.X0; x <= region.Bounds.X1; x += 1)
            for (var y = region.Bounds.Y0; y <= region.Bounds.Y1; y += 1)
                if (region.Contains(new(x, y))) highest = Math.Max(highest, face.Z(x, y));
        return highest;
    }

    /// <summary>Where the edge of a zone does not run out into the planed face round it: a step, or a hollow no ball-end makes; null when it does everywhere.</summary>
    /// <param name="face">The face, laid frame.</param>
    /// <param name="zone">The zone, within the outline.</param>
    /// <param name="outline">What is on the outline borders on waste.</param>
    /// <param name="planed">Height of the planed face.</param>
    public static (Point2 At, double Off)? EdgeFault(IHeight face, Region zone, Region outline, double planed)
    {
        foreach (var (at, inward) in Edge(zone))
        {
            var outside = at - Reach * inward;
            if (outline.SignedDistance(outside, 2 * Reach) > -Tolerances.Output) continue;
            var (off, here, inside) = (face.Z(outside.X, outside.Y) - planed, face.Z(at.X, at.Y), at + Reach * inward);
            if (!(Math.Abs(off) <= EdgeOff)) return (at, off);
            if (!(Math.Abs(here - planed) <= EdgeOff)) return (at, here - planed);
            if (face.Z(inside.X, inside.Y) - here is var rise && !(rise <= EdgeRise * Reach)) return (at, rise);
        }
        return null;
    }

    /// <summary>Points along a region's edge, and the way into it.</summary>
    private static IEnumerable<(Point2 At, Point2 Inward)> Edge(Region region)
    {
        foreach (var points in region.Loops.Select(l => l.Points))
            for (var i = 0; i < points.Length; i++)
            {
                var (a, b) = (points[i], points[(i + 1) % points.Length]);
                var n = Math.Max(1, (int)(a.DistanceTo(b) / Spacing));
                for (var k = 0; k < n; k++) yield return (a + (double)k / n * (b - a), (b - a).Unit.Left);
            }
    }

    private void AddEdge(IHeight face, Point2 at, Point2 inward)
    {
        // Slopes just inside: beyond the edge the face is only a continuation.
        var p = at + Reach * inward;
        var (gx, gy) = ((face.Z(p.X + 0.1, p.Y) - face.Z(p.X - 0.1, p.Y)) / 0.2, (face.Z(p.X, p.Y + 0.1) - face.Z(p.X, p.Y - 0.1)) / 0.2);
        edge.Add((face.Z(at.X, at.Y), 1 / Math.Sqrt(1 + gx * gx + gy * gy)));
    }

    /// <summary>Radius of the sharpest upward bend through a point along x, along y and along both diagonals: (1 + s²)^(3/2)/z″; +∞ where none bends upward.</summary>
    private static double HollowRadius(IHeight face, Point2 p)
    {
        var least = double.PositiveInfinity;
        for (var k = 0; k < 4; k++)
        {
            var step = 2 * Reach * Point2.Polar(k * Math.PI / 4);
            var (before, here, after) = (face.Z(p.X - step.X, p.Y - step.Y), face.Z(p.X, p.Y), face.Z(p.X + step.X, p.Y + step.Y));
            var bend = (after - 2 * here + before) / (4 * Reach * Reach);
            var slope = (after - before) / (4 * Reach);
            if (bend > 1e-6) least = Math.Min(least, Math.Pow(1 + slope * slope, 1.5) / bend);
        }
        return least;
    }
}
