using Solidbody.Geometry;

namespace Solidbody.Instrument.Necks;

/// <summary>How tight the hollows of the neck's back are: they decide which ball-end can finish it.</summary>
internal static class NeckHollows
{
    /// <summary>Places tried first: along x every this many mm, and at this many fractions across, up to this close to the edge.
    /// The blends that hollow the back are twenty millimetres long and more.</summary>
    private const double Step = 4, EdgeFraction = 0.985;
    private const int Across = 16;
    /// <summary>Then round each that is hollower than its neighbours and this near the worst, each time with half the steps: down to a thirtieth of a millimetre.</summary>
    private const double NearTheWorst = 0.7;
    private const int Halvings = 7;
    /// <summary>Difference for second derivatives, mm: rounding 1e-11, truncation 1e-6.</summary>
    private const double H = 1e-3;

    /// <summary>Least radius of a hollow, and where.</summary>
    /// <param name="from">x of the headstock's tip; the heel's level ends the search.</param>
    /// <remarks>Principal curvatures of the graph Z(x, y): eigenvalues of I⁻¹II from the first and second fundamental forms
    /// (M. P. do Carmo, Differential Geometry of Curves and Surfaces, §3.3, from memory); depth grows away from the hollow's centre, so a hollow is positive.</remarks>
    public static (Point2 At, double Radius) Tightest(NeckBack back, double from)
    {
        double Curvature(double x, double e) => x >= from && x < back.HeelX && Math.Abs(e) <= EdgeFraction ? At(back, new(x, e * back.HalfWidth(x))) : 0;
        const double stepE = 2 * EdgeFraction / Across;
        var rows = Math.Max(0, (int)Math.Ceiling((back.HeelX - from) / Step));
        var coarse = new double[rows, Across + 1];
        for (var r = 0; r < rows; r++)
            for (var i = 0; i <= Across; i++) coarse[r, i] = Curvature(from + r * Step, -EdgeFraction + i * stepE);

        var least = NearTheWorst * coarse.Cast<double>().DefaultIfEmpty().Max();
        (double X, double E, double Curvature) worst = (0, 0, 1e-9);
        for (var r = 0; r < rows; r++)
            for (var i = 0; i <= Across; i++)
                if (coarse[r, i] >= least && IsPeak(coarse, r, i)) Climb(from + r * Step, -EdgeFraction + i * stepE, coarse[r, i]);
        return (new(worst.X, worst.E * back.HalfWidth(worst.X)), 1 / worst.Curvature);

        void Climb(double x, double e, double curvature)
        {
            var best = (X: x, E: e, Curvature: curvature);
            for (var part = 0.5; part > Math.Pow(0.5, Halvings + 1); part /= 2)
            {
                (x, e, _) = best;
                for (var i = -2; i <= 2; i++)
                    for (var j = -2; j <= 2; j++)
                        if (Curvature(x + i * part * Step, e + j * part * stepE) is var k && k > best.Curvature) best = (x + i * part * Step, e + j * part * stepE, k);
            }
            if (best.Curvature > worst.Curvature) worst = best;
        }
    }

    /// <summary>Whether no neighbour of a place is hollower.</summary>
    private static bool IsPeak(double[,] coarse, int row, int column)
    {
        for (var r = Math.Max(0, row - 1); r <= Math.Min(coarse.GetLength(0) - 1, row + 1); r++)
            for (var c = Math.Max(0, column - 1); c <= Math.Min(coarse.GetLength(1) - 1, column + 1); c++)
                if (coarse[r, c] > coarse[row, column]) return false;
        return true;
    }

    /// <summary>Greater principal curvature at one place, 1/mm: a hollow is positive.</summary>
    internal static double At(NeckBack back, Point2 at)
    {
        var (_, p, q) = back.At(at.X, at.Y);
        var (east, west) = (back.At(at.X + H, at.Y), back.At(at.X - H, at.Y));
        var (north, south) = (back.At(at.X, at.Y + H), back.At(at.X, at.Y - H));
        var (r, s, t) = ((east.AlongX - west.AlongX) / (2 * H), (north.AlongX - south.AlongX) / (2 * H), (north.AlongY - south.AlongY) / (2 * H));
        var g = 1 + p * p + q * q;
        var mean = ((1 + q * q) * r - 2 * p * q * s + (1 + p * p) * t) / (2 * g * Math.Sqrt(g));
        var gauss = (r * t - s * s) / (g * g);
        return mean + Math.Sqrt(Math.Max(0, mean * mean - gauss));
    }
}
