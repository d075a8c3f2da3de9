using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Where the passes of a ball raster lie, so that no ridge exceeds the scallop height. Passes run along x.</summary>
internal static class RasterSpacing
{
    /// <summary>Steepest cross slope that still tightens the passes: beyond 80° the ridge is no longer held.</summary>
    private const double LeastFactor = 0.17;
    /// <summary>Base over which slope and curvature are read, mm.</summary>
    private const double Reading = 0.6;
    /// <summary>Share of the ridge height planned for; the rest is for readings between samples.</summary>
    private const double Margin = 0.95;

    /// <summary>y of every pass over the zone, from its lower edge to its upper one, ascending.</summary>
    /// <param name="field">Samples of the zone.</param>
    /// <param name="bounds">Bounds of the zone.</param>
    /// <param name="flat">Spacing on a flat face, mm.</param>
    /// <param name="ball">Ball radius, mm; 0 for a flat cutter, whose spacing is kept everywhere.</param>
    /// <remarks>
    /// On a plane that rises by g across the passes, passes s apart in the plan lie s √(1 + g²) apart on it: spacing flat / √(1 + g²).
    /// Over a convex curvature κ passes on a ball's offset surface lie (1 + κR) further apart than their contacts and the ridge between them
    /// grows alike: h ≈ s² (1/R + κ)/8, so spacing falls by √(1 + κR). The tightest reading within the next spacing counts.
    /// </remarks>
    public static List<double> Passes(SurfaceField field, Box2 bounds, double flat, double ball)
    {
        var factors = ball > 0 ? Factors(field, ball) : null;
        var inset = Math.Min(Tolerances.Output, bounds.Height / 4);
        var (y, last) = (bounds.Y0 + inset, bounds.Y1 - inset);
        var passes = new List<double>();
        while (y < last)
        {
            passes.Add(y);
            y += At(field, factors, flat, y);
        }
        passes.Add(last);
        return passes;

        double At(SurfaceField f, double[]? by, double spacing, double from)
        {
            if (by is null) return spacing;
            int Row(double at) => Math.Clamp((int)((at - f.Grid.Y0) / f.Grid.Cell), 0, by.Length - 1);
            var least = 1.0;
            for (var r = Row(from - Reading); r <= Row(from + spacing + Reading); r++) least = Math.Min(least, by[r]);
            return spacing * least * Math.Sqrt(Margin);
        }
    }

    private static double[] Factors(SurfaceField field, double ball)
    {
        var grid = field.Grid;
        var k = Math.Max(1, (int)Math.Round(Reading / grid.Cell));
        var factors = new double[grid.Rows];
        Array.Fill(factors, 1);
        Parallel.For(k, Math.Max(k, grid.Rows - k), row =>
        {
            var least = 1.0;
            for (var c = 0; c < grid.Columns; c++)
            {
                var (below, here, above) = (field[c, row - k], field[c, row], field[c, row + k]);
                if (!float.IsFinite(below + here + above)) continue;
                var slope = (above - below) / (2 * k * grid.Cell);
                var lean = 1 + slope * slope;
                var convex = Math.Max(0, -(above + below - 2 * here) / (k * grid.Cell * k * grid.Cell) / (lean * Math.Sqrt(lean)));
                least = Math.Min(least, 1 / Math.Sqrt(lean * (1 + convex * ball)));
            }
            factors[row] = Math.Max(LeastFactor, least);
        });
        return factors;
    }
}
