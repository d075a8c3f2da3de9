using Solidbody.Geometry;
using Solidbody.Geometry.Arcs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Whether the cutter's axis may go straight from one place of a room to another.</summary>
internal static class StraightWay
{
    /// <summary>Between places tried, mm.</summary>
    private const double Spacing = 0.2;

    /// <param name="room">Where the axis may be.</param>
    public static bool StaysInside(Region room, Point2 a, Point2 b) => StaysInside(p => room.SignedDistance(p, 1), a, b);

    /// <param name="room">Where the axis may be.</param>
    public static bool StaysInside(ArcRegion room, Point2 a, Point2 b) => StaysInside(p => room.SignedDistance(p, 1), a, b);

    private static bool StaysInside(Func<Point2, double> outside, Point2 a, Point2 b)
    {
        var n = Math.Max(1, (int)Math.Ceiling(a.DistanceTo(b) / Spacing));
        for (var i = 0; i <= n; i++)
            if (outside(a + (double)i / n * (b - a)) > Tolerances.Flattening / 2) return false;
        return true;
    }
}
