namespace Solidbody.Geometry;

/// <summary>Plain closed shapes as loops, counter-clockwise, flattened within <see cref="Tolerances.Flattening"/> unless told otherwise.</summary>
public static class Shapes
{
    /// <summary>Chords needed so that none lies further than <paramref name="tolerance"/> from an arc.</summary>
    /// <param name="radius">Arc radius r, mm; r ≥ 0.</param>
    /// <param name="sweep">Swept angle, radians, any sign.</param>
    /// <param name="tolerance">Greatest sagitta e, mm; e &gt; 0. Chord angle 2·acos(1 − e/r).</param>
    public static int ChordsFor(double radius, double sweep, double tolerance = Tolerances.Flattening)
    {
        if (radius <= tolerance) return Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / (Math.PI / 2)));
        return Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / (2 * Math.Acos(1 - tolerance / radius))));
    }

    public static Loop Circle(Point2 centre, double radius, double tolerance = Tolerances.Flattening)
    {
        var n = Math.Max(8, ChordsFor(radius, 2 * Math.PI, tolerance));
        return Loop.Of(Enumerable.Range(0, n).Select(i => centre + radius * Point2.Polar(2 * Math.PI * i / n)));
    }

    /// <summary>A rectangle with rounded corners.</summary>
    /// <param name="centre">Its middle.</param>
    /// <param name="length">Along its own first direction, mm.</param>
    /// <param name="width">Across, mm.</param>
    /// <param name="cornerRadius">0 ≤ r ≤ half the shorter side; larger is clipped to that.</param>
    /// <param name="turn">Angle of the first direction from +X, radians.</param>
    /// <param name="tolerance">Greatest sagitta of the corner chords, mm.</param>
    public static Loop Rectangle(Point2 centre, double length, double width, double cornerRadius = 0, double turn = 0, double tolerance = Tolerances.Flattening)
    {
        var r = Math.Min(cornerRadius, Math.Min(length, width) / 2);
        var (a, b) = (length / 2 - r, width / 2 - r);
        Point2[] corners = [new(a, b), new(-a, b), new(-a, -b), new(a, -b)];
        var n = r > 0 ? ChordsFor(r, Math.PI / 2, tolerance) : 0;
        var points = corners.SelectMany((c, k) => Enumerable.Range(0, n + 1).Select(i => c + r * Point2.Polar(k * Math.PI / 2 + (n == 0 ? 0 : i * Math.PI / 2 / n))));
        return Loop.Of(points.Select(p => centre + p.Turned(turn)));
    }

    /// <summary>The shape swept by a circle moved from a to b: a slot with round ends.</summary>
    public static Loop Capsule(Point2 a, Point2 b, double radius, double tolerance = Tolerances.Flattening) =>
        Rectangle(0.5 * (a + b), a.DistanceTo(b) + 2 * radius, 2 * radius, radius, Math.Atan2(b.Y - a.Y, b.X - a.X), tolerance);
}
