using Solidbody.Geometry;

namespace Solidbody.Instrument.Outlines;

/// <summary>Distances between points, segments and loops in a plan, mm.</summary>
internal static class Segments
{
    public static double SquaredDistance(Point2 p, Point2 a, Point2 b)
    {
        var (e, v) = (b - a, p - a);
        var length = e.Dot(e);
        var rest = v - (length > 0 ? Math.Clamp(v.Dot(e) / length, 0, 1) : 0) * e;
        return rest.Dot(rest);
    }

    public static double Distance(Point2 p, Point2 a, Point2 b) => Math.Sqrt(SquaredDistance(p, a, b));

    /// <summary>Least distance from a point of one loop to the region, negative when it reaches in by that much.</summary>
    public static double Gap(Loop loop, Region region) => loop.Points.Min(region.SignedDistance);

    /// <summary>How far it is from a point inside a region to its wall in a direction, mm; 0 from outside.</summary>
    public static double ToWall(Region region, Point2 from, Point2 along) => region.Contains(from) ? FirstCrossing(region, from, along) : 0;

    /// <summary>How far it is from a point outside a region to just inside it in a direction, mm; 0 when it lies inside already or the region is missed.</summary>
    public static double FromOutside(Region region, Point2 from, Point2 along, double within) =>
        !region.Contains(from) && FirstCrossing(region, from, along) is var reach && double.IsFinite(reach) ? reach + within : 0;

    private static double FirstCrossing(Region region, Point2 from, Point2 along)
    {
        var best = double.PositiveInfinity;
        foreach (var points in region.Loops.Select(l => l.Points))
            for (var i = 0; i < points.Length; i++)
            {
                var (a, edge) = (points[i] - from, points[(i + 1) % points.Length] - points[i]);
                var across = along.Cross(edge);
                if (across == 0) continue;
                var (t, u) = (a.Cross(edge) / across, a.Cross(along) / across);
                if (t > 0 && u is >= 0 and <= 1 && t < best) best = t;
            }
        return best;
    }

    /// <summary>The point of a counter-clockwise loop nearest to p, and the way square into it there, unit.</summary>
    public static (Point2 At, Point2 Inward) Nearest(Loop loop, Point2 p)
    {
        var (n, best, at, index) = (loop.Points.Length, double.PositiveInfinity, p, 0);
        for (var i = 0; i < n; i++)
        {
            var (a, b) = (loop.Points[i], loop.Points[(i + 1) % n]);
            var foot = a + Math.Clamp((p - a).Dot(b - a) / (b - a).Dot(b - a), 0, 1) * (b - a);
            if (foot.DistanceTo(p) is var d && d < best) (best, at, index) = (d, foot, i);
        }
        // Over three chords: the direction of the curve rather than of one chord.
        return (at, (loop.Points[(index + 2) % n] - loop.Points[(index + n - 1) % n]).Unit.Left);
    }

    /// <summary>Where the upright line x meets a closed loop: y values, ascending.</summary>
    public static List<double> CrossingsAtX(Loop loop, double x)
    {
        var ys = new List<double>();
        for (var i = 0; i < loop.Points.Length; i++)
        {
            var (a, b) = (loop.Points[i], loop.Points[(i + 1) % loop.Points.Length]);
            if (a.X <= x != b.X <= x) ys.Add(a.Y + (x - a.X) / (b.X - a.X) * (b.Y - a.Y));
        }
        ys.Sort();
        return ys;
    }
}
