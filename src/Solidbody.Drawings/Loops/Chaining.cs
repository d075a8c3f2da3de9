using System.Globalization;
using Solidbody.Geometry;

namespace Solidbody.Drawings.Loops;

/// <summary>A closed run of strokes: its points, and the stroke each of them comes from.</summary>
internal sealed record Chain(List<Point2> Points, string Name, DrawingPlace At);

/// <summary>Joins strokes at their ends into closed loops. Gaps up to the stated one are closed and told; an end that is left over, or meets more than one other, is refused.</summary>
internal static class Chaining
{
    /// <summary>An end meeting more ends than this is refused before all of them are compared.</summary>
    private const int Crowd = 8;

    public static List<Chain> Close(IReadOnlyList<Piece> pieces, double gap, ReadingLog log)
    {
        var chains = pieces.Where(p => p.Closed).Select(p => new Chain(p.Points, p.Name, p.At)).ToList();
        var open = WithoutRepeats(WithoutSpecks(pieces.Where(p => !p.Closed), gap, log), log);
        var meets = new Ends(open, gap).Pair(log);
        if (meets is null) return chains;

        var done = new bool[open.Count];
        for (var i = 0; i < open.Count; i++)
            if (!done[i]) chains.Add(Follow(open, meets, done, i, log));
        return chains;
    }

    /// <summary>A stroke shorter than the gap has both ends in one place: it is a leftover of drawing.</summary>
    private static IEnumerable<Piece> WithoutSpecks(IEnumerable<Piece> open, double gap, ReadingLog log)
    {
        foreach (var piece in open)
            if (piece.Length <= gap) log.Mended(piece.At, $"a speck, {piece.Name}, was left out", piece.Length);
            else yield return piece;
    }

    private static List<Piece> WithoutRepeats(IEnumerable<Piece> open, ReadingLog log)
    {
        var seen = new Dictionary<(Point2, Point2, Point2, int), Piece>();
        var kept = new List<Piece>();
        foreach (var piece in open)
        {
            // The same stroke the other way round has the same ends and, of an even number of points, the same two in the middle.
            var (a, b, n) = (Coarse(piece.Points[0]), Coarse(piece.Points[^1]), piece.Points.Count);
            var middle = Coarse(0.5 * (piece.Points[(n - 1) / 2] + piece.Points[n / 2]));
            var key = (a.X, a.Y).CompareTo((b.X, b.Y)) <= 0 ? (a, b, middle, n) : (b, a, middle, n);
            if (seen.TryGetValue(key, out var first))
                log.Refuse(piece.At, $"{piece.Name} is drawn twice, first in line {first.At.Line}", "every line once", "remove one of the two");
            else kept.Add(seen[key] = piece);
        }
        return kept;
    }

    /// <summary>To a thousandth of a millimetre.</summary>
    private static Point2 Coarse(Point2 p) => new(Math.Round(p.X, 3) + 0.0, Math.Round(p.Y, 3) + 0.0);

    private static Chain Follow(List<Piece> open, int[] meets, bool[] done, int start, ReadingLog log)
    {
        var points = new List<Point2>();
        var (piece, from) = (start, 0);
        do
        {
            done[piece] = true;
            var own = open[piece].Points;
            points.AddRange(from == 0 ? own : Enumerable.Reverse(own));
            // Ends are numbered 2 i for a stroke's first point and 2 i + 1 for its last.
            var next = meets[2 * piece + 1 - from];
            var (here, there) = (points[^1], next % 2 == 0 ? open[next / 2].Points[0] : open[next / 2].Points[^1]);
            if (here.DistanceTo(there) is > Tolerances.Geometry and var size)
                log.Mended(open[next / 2].At, string.Create(CultureInfo.InvariantCulture, $"a gap between {open[piece].Name} and {open[next / 2].Name} at x {there.X:0.##}, y {there.Y:0.##} of the drawing was closed"), size);
            // Both ends give way by half: the next stroke brings their meeting place, the last one finds it at the start.
            var joint = 0.5 * (here + there);
            (piece, from) = (next / 2, next % 2);
            points.RemoveAt(points.Count - 1);
            if (piece == start) points[0] = joint;
            else open[piece].Points[from == 0 ? 0 : ^1] = joint;
        }
        while (piece != start);
        return new(points, open[start].Name, open[start].At);
    }

    /// <summary>The ends of strokes in square buckets as wide as the gap.</summary>
    private sealed class Ends
    {
        private readonly List<Piece> open;
        private readonly double gap;
        private readonly Dictionary<(long, long), List<int>> buckets = [];

        public Ends(List<Piece> open, double gap)
        {
            (this.open, this.gap) = (open, gap);
            for (var e = 0; e < 2 * open.Count; e++)
            {
                var key = Bucket(At(e));
                if (!buckets.TryGetValue(key, out var bucket)) buckets[key] = bucket = [];
                bucket.Add(e);
            }
        }

        /// <summary>For every end the one it meets; null, with mistakes, when one meets none or several.</summary>
        public int[]? Pair(ReadingLog log)
        {
            var meets = new int[2 * open.Count];
            var good = true;
            for (var e = 0; e < meets.Length; e++)
            {
                var near = Near(e);
                if (near.Count == 1) meets[e] = near[0];
                else good = false;
                // Every end of a branch would say the same: the first one speaks.
                if (near.Count > 1 && near.TrueForAll(other => other > e))
                    log.Refuse(open[e / 2].At, $"{near.Count + 1} ends meet at {Place(At(e))}: {open[e / 2].Name} and others", "two ends at every place: a closed line without branches", "remove the line that does not belong to the outline, or lessen `gap`");
                if (near.Count == 0) Alone(e, log);
            }
            // To be near is mutual: what one end meets alone meets it alone.
            return good ? meets : null;
        }

        private void Alone(int e, ReadingLog log)
        {
            var nearest = Nearest(e);
            var away = nearest is { } n ? At(e).DistanceTo(At(n)) : double.PositiveInfinity;
            log.Refuse(open[e / 2].At, $"{open[e / 2].Name} ends in the open at {Place(At(e))}{(nearest is null ? "" : string.Create(CultureInfo.InvariantCulture, $"; the nearest other end is {away:0.###} mm away"))}",
                $"a closed line; gaps up to {gap.ToString(CultureInfo.InvariantCulture)} mm are closed by themselves",
                away <= DrawingWish.MostGap ? string.Create(CultureInfo.InvariantCulture, $"join the ends in the drawing, or say gap = {Math.Ceiling(away * 1000) / 1000 + 0.001:0.###} in the instrument file") : "join the ends in the drawing; a path is closed with Z, a polyline by its flag");
        }

        private List<int> Near(int e)
        {
            var near = new List<int>();
            var (column, row) = Bucket(At(e));
            for (var c = column - 1; c <= column + 1; c++)
                for (var r = row - 1; r <= row + 1; r++)
                    if (buckets.TryGetValue((c, r), out var bucket))
                        foreach (var other in bucket)
                        {
                            if (other != e && At(e).DistanceTo(At(other)) <= gap) near.Add(other);
                            if (near.Count > Crowd) return near;
                        }
            return near;
        }

        private int? Nearest(int e)
        {
            int? best = null;
            for (var other = 0; other < 2 * open.Count; other++)
                if (other != e && (best is null || At(e).DistanceTo(At(other)) < At(e).DistanceTo(At(best.Value)))) best = other;
            return best;
        }

        private Point2 At(int e) => e % 2 == 0 ? open[e / 2].Points[0] : open[e / 2].Points[^1];
        private (long, long) Bucket(Point2 p) => ((long)Math.Floor(p.X / gap), (long)Math.Floor(p.Y / gap));
        private static string Place(Point2 p) => string.Create(CultureInfo.InvariantCulture, $"x {p.X:0.##}, y {p.Y:0.##} mm of the drawing");
    }
}
