using Solidbody.Geometry;

namespace Solidbody.Instrument.Necks;

/// <summary>How tight the hollows of the neck's back are: they decide which ball-end can finish it.</summary>
internal static class NeckHollows
{
    /// <summary>Places tried first: along x every this many mm, and at this many fractions across, up to this close to the edge.
    /// The blends that hollow the back are twenty millimetres long and more.</summary>
    private const double Step = 4, EdgeFraction = 0.985;
    private const int Across = 16;
    /// <summary>Then round the worst of them, each time with half the steps: down to a thirtieth of a millimetre.</summary>
    private const int Halvings = 7;
    /// <summary>Difference for second derivatives, mm: rounding 1e-11, truncation 1e-6.</summary>
    private const double H = 1e-3;

    /// <summary>Least radius of a hollow, and where.</summary>
    /// <param name="from">x of the headstock's tip; the heel's level ends the search.</param>
    /// <remarks>Principal curvatures of the graph Z(x, y): eigenvalues of I⁻¹II from the first and second fundamental forms
    /// (M. P. do Carmo, Differential Geometry of Curves and Surfaces, §3.3, from memory); depth grows away from the hollow's centre, so a hollow is positive.</remarks>
    public static (Point2 At, double Radius) Tightest(NeckBack back, double from)
    {
        // x, and e: the place across as a fraction of the half width.
        (double X, double E, double Curvature) worst = (0, 0, 1e-9);
        void Try(double x, double e)
        {
            if (!(x >= from && x < back.HeelX && Math.Abs(e) <= EdgeFraction)) return;
            if (At(back, new(x, e * back.HalfWidth(x))) is var k && k > worst.Curvature) worst = (x, e, k);
        }
        const double stepE = 2 * EdgeFraction / Across;
        for (var x = from; x < back.HeelX; x += Step)
            for (var i = 0; i <= Across; i++) Try(x, -EdgeFraction + i * stepE);
        for (var part = 0.5; part > Math.Pow(0.5, Halvings + 1); part /= 2)
        {
            var (x, e, _) = worst;
            for (var i = -2; i <= 2; i++)
                for (var j = -2; j <= 2; j++) Try(x + i * part * Step, e + j * part * stepE);
        }
        return (new(worst.X, worst.E * back.HalfWidth(worst.X)), 1 / worst.Curvature);
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
