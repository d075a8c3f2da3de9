using Solidbody.Geometry;

namespace Solidbody.Instrument.Outlines;

/// <summary>How tightly a closed path bends.</summary>
internal static class PathBends
{
    /// <summary>Distance along the path between the three points a radius is taken from, and from one place to the next, mm: chords 0.005 mm off an arc tell a radius of 10 mm within 2 %, one of 40 mm within 5 %.</summary>
    private const double Reach = 3, Step = 1;

    /// <param name="Radius">Of the circle through a point and two others 3 mm before and after it, mm; +∞ on a straight.</param>
    /// <param name="Turn">+1 where a counter-clockwise path bulges outward, −1 in a hollow, 0 on a straight.</param>
    /// <param name="At">The point.</param>
    public readonly record struct Bend(double Radius, int Turn, Point2 At);

    public static IEnumerable<Bend> Of(Loop path)
    {
        var points = path.Points;
        var stations = new double[points.Length + 1];
        for (var i = 0; i < points.Length; i++) stations[i + 1] = stations[i] + points[i].DistanceTo(points[(i + 1) % points.Length]);
        var length = stations[^1];
        Point2 At(double station)
        {
            station -= Math.Floor(station / length) * length;
            var i = Array.BinarySearch(stations, station) is var found && found >= 0 ? Math.Min(found, points.Length - 1) : ~found - 1;
            var t = (station - stations[i]) / (stations[i + 1] - stations[i]);
            return points[i] + t * (points[(i + 1) % points.Length] - points[i]);
        }
        for (var s = 0.0; s < length; s += Step) yield return Through(At(s - Reach), At(s), At(s + Reach));
    }

    /// <summary>Radius of the circle round a triangle: abc / 4·area.</summary>
    private static Bend Through(Point2 before, Point2 at, Point2 after)
    {
        var twiceArea = (at - before).Cross(after - at);
        return new(before.DistanceTo(at) * at.DistanceTo(after) * before.DistanceTo(after) / (2 * Math.Abs(twiceArea)), Math.Sign(twiceArea), at);
    }
}
