using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Necks;

/// <summary>Where the tuners' posts stand: each string runs straight over the nut (plus the splay) and touches its post's inner side.</summary>
/// <remarks>Points are (u, y): u from the nut toward the tip, mm.</remarks>
public static class TunerPosts
{
    /// <summary>Post of every string, by string number.</summary>
    public static ImmutableArray<Point2> Of(HeadstockDefinition h, Strings strings)
    {
        var posts = new Point2[strings.Count];
        // Bass side: the lowest string goes to the nearest post. Treble side: the highest does.
        Place(h, strings, -1, Enumerable.Range(0, h.TunersBass), posts);
        Place(h, strings, +1, Enumerable.Range(0, h.TunersTreble).Select(k => strings.Count - 1 - k), posts);
        return [.. posts];
    }

    /// <summary>Least distance between posts of opposite sides, mm; infinite with tuners on one side only.</summary>
    public static double LeastOpposite(HeadstockDefinition h, ImmutableArray<Point2> posts)
    {
        ArgumentNullException.ThrowIfNull(h);
        return posts[..h.TunersBass].SelectMany(a => posts[h.TunersBass..].Select(b => a.DistanceTo(b))).DefaultIfEmpty(double.PositiveInfinity).Min();
    }

    /// <summary>What that distance must be: a bass's casings are larger (docs/shapes.md).</summary>
    internal static double OppositeRule(HeadstockDefinition h) => h.PostRadius > Limits.BassPostRadius ? Limits.OppositePostsBass : Limits.OppositePosts;

    private static void Place(HeadstockDefinition h, Strings strings, int side, IEnumerable<int> order, Point2[] posts)
    {
        Point2? before = null;
        foreach (var i in order)
        {
            var slope = Math.Tan(Math.Atan(strings.Drift(i)) + side * h.Splay);
            var leave = strings.Leave(i);
            var offset = leave.Y - slope * leave.X + side * h.PostRadius * Math.Sqrt(1 + slope * slope);
            var u = h.FirstPost;
            if (before is { } p)
            {
                // |(u, offset + slope u) − p| = pitch, the root further out.
                var c = offset - p.Y;
                var (qa, qb, qc) = (1 + slope * slope, -2 * p.X + 2 * slope * c, p.X * p.X + c * c - h.TunerPitch * h.TunerPitch);
                u = (-qb + Math.Sqrt(qb * qb - 4 * qa * qc)) / (2 * qa);
            }
            before = posts[i] = new(u, offset + slope * u);
        }
    }
}
