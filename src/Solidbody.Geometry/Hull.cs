namespace Solidbody.Geometry;

/// <summary>Convex hull in the plan by the monotone chain. Source: A. M. Andrew, Information Processing Letters 9 (1979) 216–219, from memory.</summary>
public static class Hull
{
    /// <returns>Corners, counter-clockwise; the points themselves where there are fewer than three.</returns>
    public static IReadOnlyList<Point2> Of(IReadOnlyList<Point2> points)
    {
        var sorted = points.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y).ToList();
        if (sorted.Count < 3) return sorted;
        var lower = Chain(sorted);
        sorted.Reverse();
        var upper = Chain(sorted);
        return [.. lower.SkipLast(1), .. upper.SkipLast(1)];
    }

    private static List<Point2> Chain(List<Point2> sorted)
    {
        var chain = new List<Point2>();
        foreach (var p in sorted)
        {
            while (chain.Count > 1 && (chain[^1] - chain[^2]).Cross(p - chain[^1]) <= 0) chain.RemoveAt(chain.Count - 1);
            chain.Add(p);
        }
        return chain;
    }
}
