using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Necks;

/// <summary>The hollow behind the nut, where the headstock's edge swings out to its first post: with u² ≥ 40 mm × rise its radius stays at 8 mm (docs/shapes.md).</summary>
internal static class NutHollow
{
    /// <summary>Where the straight edge beside the first post begins, and where it may begin at the nearest, u in mm; null on a side without posts.</summary>
    /// <param name="halfWidth">Of the neck at u = 0.</param>
    /// <param name="side">−1 bass, +1 treble.</param>
    public static (double From, double Least)? Of(HeadstockDefinition h, Strings strings, double halfWidth, int side) =>
        HeadstockOutline.FirstEdge(h, strings, side) is { } edge ? (edge.X, Math.Sqrt(Math.Max(0, Limits.NutHollow * (Math.Abs(edge.Y) - halfWidth)))) : null;

    public static bool Holds((double From, double Least) edge) => edge.From > 0 && edge.From >= edge.Least;
}
