using System.Collections.Immutable;

namespace Solidbody.Instrument.Beams;

/// <summary>A beam held fast at its far end, bent: how far each point of it is lifted. Curvature runs straight between the nodes, and what follows from that is exact.</summary>
/// <remarks>w″ = κ with w = w′ = 0 at the hold; κ hollows the upper side. Lifts of load cases add.</remarks>
public sealed class BentLine
{
    private readonly ImmutableArray<double> x, curvature, turn, lift;

    /// <param name="x">Nodes, mm, rising; the last is the hold.</param>
    /// <param name="curvature">κ = M/EI at each, 1/mm.</param>
    public BentLine(ImmutableArray<double> x, ImmutableArray<double> curvature)
    {
        if (x.Length < 2 || x.Length != curvature.Length) throw new ArgumentException($"{x.Length} places and {curvature.Length} curvatures: two or more, as many of one as of the other.");
        (this.x, this.curvature) = (x, curvature);
        var (turns, lifts) = (new double[x.Length], new double[x.Length]);
        for (var k = x.Length - 2; k >= 0; k--)
        {
            var step = Step(x[k + 1] - x[k], curvature[k], curvature[k + 1]);
            turns[k] = turns[k + 1] + step.Turn;
            lifts[k] = lifts[k + 1] + turns[k + 1] * (x[k + 1] - x[k]) + step.Lift;
        }
        (turn, lift) = ([.. turns], [.. lifts]);
    }

    /// <summary>Lift at a place, mm; beyond the hold nothing moves, before the first node the line goes on straight.</summary>
    public double At(double place)
    {
        if (place >= x[^1]) return 0;
        if (place < x[0]) return lift[0] + turn[0] * (x[0] - place);
        var k = x.BinarySearch(place);
        if (k >= 0) return lift[k];
        k = ~k - 1;
        var (h, part) = (x[k + 1] - place, (place - x[k]) / (x[k + 1] - x[k]));
        return lift[k + 1] + turn[k + 1] * h + Step(h, curvature[k] + part * (curvature[k + 1] - curvature[k]), curvature[k + 1]).Lift;
    }

    /// <summary>How far a place lies below a straightedge laid over two others, mm.</summary>
    public double Hollow(double from, double to, double place)
    {
        var part = (place - from) / (to - from);
        return (1 - part) * At(from) + part * At(to) - At(place);
    }

    /// <summary>Over a length h with curvature from a to b, straight between: ∫κ, and ∫κ·u, u being the distance from its near end.</summary>
    private static (double Turn, double Lift) Step(double h, double a, double b) => (h * (a + b) / 2, h * h * (a / 6 + b / 3));
}
