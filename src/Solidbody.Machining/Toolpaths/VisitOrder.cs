using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A short open walk through points: nearest neighbour, then 2-opt until no exchange shortens it.</summary>
internal static class VisitOrder
{
    /// <summary>Indices in visiting order, starting at the point of least x (then y).</summary>
    public static int[] Of(IReadOnlyList<Point2> points)
    {
        if (points.Count == 0) return [];
        var left = Enumerable.Range(0, points.Count).ToList();
        var walk = new List<int> { left.MinBy(i => (points[i].X, points[i].Y)) };
        left.Remove(walk[0]);
        while (left.Count > 0)
        {
            var next = left.MinBy(i => points[i].DistanceTo(points[walk[^1]]));
            walk.Add(next);
            left.Remove(next);
        }
        for (var better = true; better;)
        {
            better = false;
            for (var i = 1; i + 1 < walk.Count; i++)
                for (var k = i + 1; k < walk.Count; k++)
                {
                    var before = points[walk[i - 1]].DistanceTo(points[walk[i]]) + (k + 1 < walk.Count ? points[walk[k]].DistanceTo(points[walk[k + 1]]) : 0);
                    var after = points[walk[i - 1]].DistanceTo(points[walk[k]]) + (k + 1 < walk.Count ? points[walk[i]].DistanceTo(points[walk[k + 1]]) : 0);
                    if (after >= before - Tolerances.Geometry) continue;
                    walk.Reverse(i, k - i + 1);
                    better = true;
                }
        }
        return [.. walk];
    }
}
