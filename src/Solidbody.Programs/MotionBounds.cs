using Solidbody.Geometry;

namespace Solidbody.Programs;

/// <summary>The room the tip moves in.</summary>
public static class MotionBounds
{
    /// <summary>The least upright box around every path, arcs with their bulge; work frame, mm.</summary>
    /// <exception cref="ArgumentException">There is no motion.</exception>
    public static Box3 Of(IReadOnlyList<Motion> motions)
    {
        ArgumentNullException.ThrowIfNull(motions);
        if (motions.Count == 0) throw new ArgumentException("There are no motions to put a box around.", nameof(motions));
        var first = motions[0].From;
        var box = new Box3(first.X, first.Y, first.Z, first.X, first.Y, first.Z);
        foreach (var motion in motions)
        {
            box = With(With(box, motion.From), motion.To);
            if (motion.IsArc) box = WithQuadrants(box, motion);
        }
        return box;
    }

    private static Box3 With(Box3 box, WorkPoint p) => new(
        Math.Min(box.X0, p.X), Math.Min(box.Y0, p.Y), Math.Min(box.Z0, p.Z), Math.Max(box.X1, p.X), Math.Max(box.Y1, p.Y), Math.Max(box.Z1, p.Z));

    /// <summary>An arc reaches furthest where it crosses the axes through its centre.</summary>
    private static Box3 WithQuadrants(Box3 box, in Motion arc)
    {
        var start = arc.From.Plan - arc.Centre;
        var (radius, sweep) = (start.Length, arc.Sweep);
        ReadOnlySpan<Point2> axes = [new(1, 0), new(0, 1), new(-1, 0), new(0, -1)];
        foreach (var axis in axes)
        {
            var turn = Math.Atan2(start.Cross(axis), start.Dot(axis)) * Math.Sign(sweep);
            if (turn < 0) turn += 2 * Math.PI;
            if (turn > Math.Abs(sweep)) continue;
            var reach = arc.Centre + radius * axis;
            box = With(box, new(reach.X, reach.Y, arc.From.Z));
        }
        return box;
    }
}
