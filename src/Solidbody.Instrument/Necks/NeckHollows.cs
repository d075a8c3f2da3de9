using Solidbody.Geometry;

namespace Solidbody.Instrument.Necks;

/// <summary>How tight the hollows of the neck's back are: they decide which ball-end can finish it.</summary>
internal static class NeckHollows
{
    /// <summary>Places tried: along x every this many mm, across at this many fractions, up to this close to the edge.</summary>
    private const double Step = 1, EdgeFraction = 0.985;
    private const int Across = 32;
    /// <summary>Difference for second derivatives, mm: rounding 1e-11, truncation 1e-6.</summary>
    private const double H = 1e-3;

    /// <summary>Least radius of a hollow, and where.</summary>
    /// <param name="from">x of the headstock's tip; the heel's level ends the search.</param>
    /// <remarks>Principal curvatures of the graph Z(x, y): eigenvalues of I⁻¹II from the first and second fundamental forms
    /// (M. P. do Carmo, Differential Geometry of Curves and Surfaces, §3.3, from memory); depth grows away from the hollow's centre, so a hollow is positive.</remarks>
    public static (Point2 At, double Radius) Tightest(NeckBack back, double from)
    {
        (Point2 At, double Curvature) worst = (default, 1e-9);
        for (var x = from; x < back.HeelX; x += Step)
            for (var i = 0; i <= Across; i++)
            {
                var p = new Point2(x, EdgeFraction * (2.0 * i / Across - 1) * back.HalfWidth(x));
                if (Hollow(back, p) is var k && k > worst.Curvature) worst = (p, k);
            }
        return (worst.At, 1 / worst.Curvature);
    }

    private static double Hollow(NeckBack back, Point2 at)
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
