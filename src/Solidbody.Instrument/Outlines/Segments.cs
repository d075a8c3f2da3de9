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
