using Solidbody.Geometry;

namespace Solidbody.Drawings.Curves;

/// <summary>A Bézier curve, rational too, as chords.</summary>
internal static class BezierChords
{
    /// <summary>Halvings at most: a chord is then a sixty-thousandth of the curve.</summary>
    private const int MostHalvings = 16;

    /// <summary>Draws the chords' ends, the curve's end last, its start not.</summary>
    /// <param name="controls">Positive weights.</param>
    /// <remarks>The curve lies inside the hull of its controls; where every control lies within the tolerance of the chord, so does the curve. Else it is halved (de Casteljau).
    /// A curve inside <see cref="DrawingLimits.Reach"/> is flat long before the last halving.</remarks>
    public static void Draw(ReadOnlySpan<Weighted> controls, Func<Point2, bool> put, double tolerance = Tolerances.Flattening) => Halve(controls, put, tolerance, MostHalvings);

    private static void Halve(ReadOnlySpan<Weighted> controls, Func<Point2, bool> put, double tolerance, int left)
    {
        if (left == 0 || IsFlat(controls, tolerance))
        {
            put(controls[^1].Point);
            return;
        }
        var n = controls.Length;
        Span<Weighted> first = stackalloc Weighted[n];
        Span<Weighted> second = stackalloc Weighted[n];
        controls.CopyTo(second);
        for (var k = 0; k < n; k++)
        {
            first[k] = second[0];
            for (var i = 0; i < n - 1 - k; i++) second[i] = Weighted.Between(second[i], second[i + 1], 0.5);
        }
        Halve(first, put, tolerance, left - 1);
        Halve(second, put, tolerance, left - 1);
    }

    private static bool IsFlat(ReadOnlySpan<Weighted> controls, double tolerance)
    {
        var (a, b) = (controls[0].Point, controls[^1].Point);
        var along = b - a;
        var length = along.Dot(along);
        for (var i = 1; i < controls.Length - 1; i++)
        {
            var v = controls[i].Point - a;
            var t = length > 0 ? Math.Clamp(v.Dot(along) / length, 0, 1) : 0;
            if (!((v - t * along).Length <= tolerance)) return false;
        }
        return true;
    }
}
