using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A short open walk through points: the shortest there is through few, exchanged until none shortens it through many.</summary>
internal static class VisitOrder
{
    /// <summary>Through so many points the shortest walk is found outright: 2ⁿ·n² steps, a thousandth of a second.</summary>
    private const int Few = 10;

    /// <summary>Indices in visiting order; of a walk's two directions the one that begins at the lesser x (then y).</summary>
    public static int[] Of(IReadOnlyList<Point2> points)
    {
        if (points.Count == 0) return [];
        var walk = points.Count <= Few ? Shortest(points) : Improved(points, Nearest(points));
        var (first, last) = (points[walk[0]], points[walk[^1]]);
        if ((last.X, last.Y).CompareTo((first.X, first.Y)) < 0) Array.Reverse(walk);
        return walk;
    }

    /// <summary>Length of a walk, mm.</summary>
    public static double Length(IReadOnlyList<Point2> points, IReadOnlyList<int> walk) =>
        Enumerable.Range(1, Math.Max(0, walk.Count - 1)).Sum(i => points[walk[i - 1]].DistanceTo(points[walk[i]]));

    /// <summary>Dynamic programming over which points are visited and which one last (Held and Karp, J. SIAM 10, 1962, from memory).</summary>
    private static int[] Shortest(IReadOnlyList<Point2> points)
    {
        var n = points.Count;
        var (least, before) = (new double[1 << n, n], new int[1 << n, n]);
        for (var set = 1; set < 1 << n; set++)
            for (var last = 0; last < n; last++)
            {
                var rest = set & ~(1 << last);
                (least[set, last], before[set, last]) = ((set >> last & 1) == 0 ? double.PositiveInfinity : rest == 0 ? 0 : double.PositiveInfinity, -1);
                if ((set >> last & 1) == 0) continue;
                for (var k = 0; k < n; k++)
                    if ((rest >> k & 1) == 1 && least[rest, k] + points[k].DistanceTo(points[last]) is var length && length < least[set, last])
                        (least[set, last], before[set, last]) = (length, k);
            }
        var all = (1 << n) - 1;
        var walk = new int[n];
        walk[^1] = Enumerable.Range(0, n).MinBy(i => least[all, i]);
        for (var (i, set) = (n - 1, all); i > 0; i--)
        {
            walk[i - 1] = before[set, walk[i]];
            set &= ~(1 << walk[i]);
        }
        return walk;
    }

    /// <summary>From the point of least x always to the nearest.</summary>
    private static int[] Nearest(IReadOnlyList<Point2> points)
    {
        var left = Enumerable.Range(0, points.Count).ToList();
        var walk = new List<int> { left.MinBy(i => (points[i].X, points[i].Y)) };
        left.Remove(walk[0]);
        while (left.Count > 0)
        {
            var next = left.MinBy(i => points[i].DistanceTo(points[walk[^1]]));
            walk.Add(next);
            left.Remove(next);
        }
        return [.. walk];
    }

    /// <summary>Turns stretches round and moves stretches of up to three points elsewhere until neither shortens the walk.</summary>
    private static int[] Improved(IReadOnlyList<Point2> points, int[] walk)
    {
        var current = walk.ToList();
        while (Turned(points, current) || Moved(points, current)) { }
        return [.. current];
    }

    /// <summary>Turns a stretch round where that shortens the walk; its ends may be the walk's own.</summary>
    private static bool Turned(IReadOnlyList<Point2> points, List<int> walk)
    {
        var better = false;
        for (var i = 0; i + 1 < walk.Count; i++)
            for (var k = i + 1; k < walk.Count; k++)
            {
                if (Joint(points, walk, i - 1, k) + Joint(points, walk, i, k + 1) >= Joint(points, walk, i - 1, i) + Joint(points, walk, k, k + 1) - Tolerances.Geometry) continue;
                walk.Reverse(i, k - i + 1);
                better = true;
            }
        return better;
    }

    /// <summary>Moves one stretch to where the walk gets shorter, either way round.</summary>
    private static bool Moved(IReadOnlyList<Point2> points, List<int> walk)
    {
        for (var length = 1; length <= 3; length++)
            for (var i = 0; i + length <= walk.Count; i++)
            {
                var stretch = walk.GetRange(i, length);
                var rest = walk.Take(i).Concat(walk.Skip(i + length)).ToList();
                var gain = Length(points, walk) - Length(points, rest) - Length(points, stretch);
                for (var at = 0; at <= rest.Count; at++)
                    foreach (var reversed in (bool[])[false, true])
                    {
                        var (head, tail) = reversed ? (stretch[^1], stretch[0]) : (stretch[0], stretch[^1]);
                        var cost = (at > 0 ? points[rest[at - 1]].DistanceTo(points[head]) : 0) + (at < rest.Count ? points[tail].DistanceTo(points[rest[at]]) : 0)
                            - (at > 0 && at < rest.Count ? points[rest[at - 1]].DistanceTo(points[rest[at]]) : 0);
                        if (cost >= gain - Tolerances.Geometry) continue;
                        walk.Clear();
                        walk.AddRange(rest);
                        walk.InsertRange(at, reversed ? stretch.AsEnumerable().Reverse() : stretch);
                        return true;
                    }
            }
        return false;
    }

    /// <summary>Distance between two places of the walk; none past its ends.</summary>
    private static double Joint(IReadOnlyList<Point2> points, List<int> walk, int i, int k) =>
        i < 0 || k >= walk.Count ? 0 : points[walk[i]].DistanceTo(points[walk[k]]);
}
