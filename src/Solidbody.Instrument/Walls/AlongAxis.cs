using Solidbody.Geometry;

namespace Solidbody.Instrument.Walls;

/// <summary>The least of a distance along a bore's axis.</summary>
internal static class AlongAxis
{
    /// <summary>A distance changes by no more than the way gone, so a step may be as long as what is still to spare; the least step, mm, bounds the error by half.</summary>
    private const double Step = 0.2;

    public static (double Least, PartPoint At) Least(BoreVoid bore, Func<PartPoint, double> distance)
    {
        var length = bore.Length;
        (double Least, PartPoint At) best = (double.PositiveInfinity, bore.Bore.A);
        for (var gone = 0.0; ;)
        {
            var p = bore.Axis(length > 0 ? gone / length : 0);
            var d = distance(p);
            if (d < best.Least) best = (d, p);
            if (gone >= length) return best;
            gone = Math.Min(length, gone + Math.Max(d - best.Least, Step));
        }
    }
}
