using System.Collections.Immutable;

namespace Solidbody.Geometry;

/// <summary>Gauss–Legendre quadrature: the sum of weight × value over n nodes on [−1, 1] is the integral of any polynomial of degree below 2n.</summary>
/// <remarks>Nodes are the zeros of the Legendre polynomial P_n, weights 2 / ((1 − x²) P_n′(x)²). Source: Abramowitz and Stegun, 25.4.29, from memory.</remarks>
public static class GaussLegendre
{
    /// <summary>Newton's method from cos(π(i − ¼)/(n + ½)) doubles its digits each time: five steps give all of them, the bound is for a wrong program.</summary>
    private const int MostSteps = 20;
    private const double Settled = 1e-15;

    /// <param name="n">1 or more.</param>
    public static ImmutableArray<(double Node, double Weight)> Nodes(int n)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(n, 1);
        return [.. Enumerable.Range(1, n).Select(i => Node(n, Math.Cos(Math.PI * (i - 0.25) / (n + 0.5))))];
    }

    private static (double, double) Node(int n, double x)
    {
        for (var step = 0; step < MostSteps; step++)
        {
            var (value, slope) = Legendre(n, x);
            var change = value / slope;
            x -= change;
            if (Math.Abs(change) > Settled) continue;
            slope = Legendre(n, x).Slope;
            return (x, 2 / ((1 - x) * (1 + x) * slope * slope));
        }
        throw new InvalidOperationException($"A zero of the Legendre polynomial of degree {n} was not found in {MostSteps} steps.");
    }

    /// <summary>P_n and its slope by (k + 1) P_{k+1} = (2k + 1) x P_k − k P_{k−1}.</summary>
    private static (double Value, double Slope) Legendre(int n, double x)
    {
        var (before, now) = (1.0, x);
        for (var k = 1; k < n; k++) (before, now) = (now, ((2 * k + 1) * x * now - k * before) / (k + 1));
        return (now, n * (x * now - before) / ((x - 1) * (x + 1)));
    }
}
