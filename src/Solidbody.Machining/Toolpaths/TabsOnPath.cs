using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Where a profile path must stay above a tab.</summary>
/// <param name="From">Station where the cutter must be up, in [0, length of the path).</param>
/// <param name="To">Station where it may go down again; above From.</param>
/// <param name="Top">Least height of the tip between them.</param>
internal readonly record struct TabStretch(double From, double To, double Top);

/// <summary>Tabs of an outline laid on the path that runs outside of it.</summary>
internal static class TabsOnPath
{
    /// <summary>Walk by which a stretch is widened until the cutter is clear of the tab, mm; the tab may be longer by that.</summary>
    private const double Step = 0.05;

    /// <summary>Stretches in order of From, none overlapping. Tabs that lie nearer to another path are not ours.</summary>
    /// <param name="path">Path outside of the outline.</param>
    /// <param name="outline">The outline.</param>
    /// <param name="offset">Distance between them, mm.</param>
    /// <param name="cutterRadius">mm.</param>
    /// <param name="tabs">The tabs.</param>
    public static TabStretch[] Of(PathLine path, PathLine outline, double offset, double cutterRadius, IEnumerable<TabSpan> tabs)
    {
        var found = new List<TabStretch>();
        foreach (var tab in tabs)
        {
            var on = outline.Nearest(tab.At);
            var middle = path.Nearest(outline.At(on));
            if (path.At(middle).DistanceTo(outline.At(on)) > 2 * offset) continue;
            var ends = new[] { -tab.Length / 2, tab.Length / 2 }.Select(d => outline.At(on + d)).ToArray();
            var around = ends.Select(e => Wrapped(path.Nearest(e) - middle, path.Length)).ToArray();
            var walls = ends.Select((e, i) => (From: e, To: e + (offset + cutterRadius) / offset * (path.At(middle + around[i]) - e))).ToArray();
            bool Meets(double d) => walls.Any(w => Distance(path.At(middle + d), w.From, w.To) < cutterRadius);
            var (low, high) = (around.Min(), around.Max());
            while (Meets(low) && high - low < path.Length) low -= Step;
            while (Meets(high) && high - low < path.Length) high += Step;
            var from = (middle + low) - Math.Floor((middle + low) / path.Length) * path.Length;
            found.Add(new(from, from + high - low, tab.Top));
        }
        return Merged([.. found.OrderBy(t => t.From)]);
    }

    private static TabStretch[] Merged(TabStretch[] sorted)
    {
        var kept = new List<TabStretch>();
        foreach (var tab in sorted)
            if (kept.Count > 0 && tab.From <= kept[^1].To)
                kept[^1] = new(kept[^1].From, Math.Max(kept[^1].To, tab.To), Math.Max(kept[^1].Top, tab.Top));
            else kept.Add(tab);
        return [.. kept];
    }

    private static double Wrapped(double d, double length) => d - Math.Round(d / length) * length;

    private static double Distance(Point2 p, Point2 a, Point2 b)
    {
        var edge = b - a;
        var t = Math.Clamp((p - a).Dot(edge) / Math.Max(edge.Dot(edge), double.Epsilon), 0, 1);
        return p.DistanceTo(a + t * edge);
    }
}
