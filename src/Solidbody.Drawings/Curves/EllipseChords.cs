using Solidbody.Geometry;

namespace Solidbody.Drawings.Curves;

/// <summary>A stretch of the ellipse C + cos t · U + sin t · V as chords.</summary>
internal static class EllipseChords
{
    /// <param name="u">Any half-diameter, mm.</param>
    /// <param name="v">Its conjugate.</param>
    /// <param name="sweep">Radians, any sign.</param>
    /// <param name="end">Takes the place of the formula's last point, so that what follows joins on.</param>
    /// <remarks>The ellipse is the unit circle under the map [U V], which lengthens no vector more than its greater half-axis: chords that serve a circle of that radius serve it.</remarks>
    public static void Draw(Point2 centre, Point2 u, Point2 v, double from, double sweep, Point2? end, Func<Point2, bool> put, double tolerance = Tolerances.Flattening)
    {
        var n = Chords(GreaterHalfAxis(u, v), Math.Abs(sweep), tolerance);
        for (var k = 1; k < n; k++) put(At(centre, u, v, from + sweep * k / n));
        put(end ?? At(centre, u, v, from + sweep));
    }

    /// <summary>Beyond this radius, in tolerances, 2 acos(1 − e/r) loses its digits; 2 √(2e/r) is a little smaller and keeps them.</summary>
    private const double Flat = 1e9;

    /// <summary>An arc that is all but straight may have its centre miles away. No more chords than a drawing may have points, and one.</summary>
    private static int Chords(double radius, double sweep, double tolerance) =>
        radius < Flat * tolerance ? Shapes.ChordsFor(radius, sweep, tolerance) : (int)Math.Clamp(Math.Ceiling(sweep * Math.Sqrt(radius / (8 * tolerance))), 1, DrawingLimits.Points + 1);

    public static Point2 At(Point2 centre, Point2 u, Point2 v, double t)
    {
        var (sin, cos) = Math.SinCos(t);
        return centre + cos * u + sin * v;
    }

    /// <summary>Greatest singular value of [U V]: σ² = (p + √(q² + 4 r²)) / 2 with p = U² + V², q = U² − V², r = U·V.</summary>
    public static double GreaterHalfAxis(Point2 u, Point2 v)
    {
        var (uu, vv, uv) = (u.Dot(u), v.Dot(v), u.Dot(v));
        return Math.Sqrt((uu + vv + Math.Sqrt((uu - vv) * (uu - vv) + 4 * uv * uv)) / 2);
    }
}
