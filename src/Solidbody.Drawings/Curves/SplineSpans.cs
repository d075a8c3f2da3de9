namespace Solidbody.Drawings.Curves;

/// <summary>A B-spline's spans as Bézier curves.</summary>
internal static class SplineSpans
{
    /// <summary>The Bézier controls of every span that is not empty, in order.</summary>
    /// <param name="degree">p ≥ 1.</param>
    /// <param name="knots">n + p + 1 knots, none smaller than the one before.</param>
    /// <param name="controls">n controls, n &gt; p.</param>
    /// <remarks>Control j of the span [a, b] is the spline's polar form at (p − j) times a and j times b, by de Boor's recurrence with its own argument at each step.
    /// Source: L. Ramshaw, "Blossoms are polar forms", Computer Aided Geometric Design 6 (1989), from memory.</remarks>
    public static IEnumerable<Weighted[]> Of(int degree, double[] knots, Weighted[] controls)
    {
        for (var k = degree; k < controls.Length; k++)
        {
            if (!(knots[k + 1] > knots[k])) continue;
            var span = new Weighted[degree + 1];
            for (var j = 0; j <= degree; j++) span[j] = Polar(degree, knots, controls, k, j);
            yield return span;
        }
    }

    private static Weighted Polar(int p, double[] knots, Weighted[] controls, int k, int atEnd)
    {
        var d = controls[(k - p)..(k + 1)];
        for (var r = 1; r <= p; r++)
        {
            var t = r <= p - atEnd ? knots[k] : knots[k + 1];
            for (var i = p; i >= r; i--)
            {
                var (low, high) = (knots[k - p + i], knots[k + 1 + i - r]);
                d[i] = Weighted.Between(d[i - 1], d[i], (t - low) / (high - low));
            }
        }
        return d[p];
    }
}
