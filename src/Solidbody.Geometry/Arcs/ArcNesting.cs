using System.Collections.Immutable;

namespace Solidbody.Geometry.Arcs;

/// <summary>Loops sorted into separate regions: each outer one with the holes that lie in it.</summary>
internal static class ArcNesting
{
    /// <summary>The regions, largest first, without those narrower than a splinter; null when a hole lies in no outer loop.</summary>
    public static ImmutableArray<ArcRegion>? Regions(IReadOnlyList<ArcLoop> loops, double deviation, double splinter)
    {
        var parts = loops.Select(l => (Loop: l, Area: l.SignedArea)).Where(p => Math.Abs(p.Area) > splinter * p.Loop.Perimeter).ToList();
        var outers = parts.Where(p => p.Area > 0).OrderBy(p => p.Area).Select(p => new ArcRegion([p.Loop])).ToList();
        var holes = outers.ConvertAll(_ => new List<ArcLoop>());
        foreach (var hole in parts.Where(p => p.Area < 0).Select(p => p.Loop))
        {
            var around = outers.Count == 1 ? 0 : outers.FindIndex(o => o.Contains(hole.Segments.MaxBy(s => s.Length).At(0.5)));
            if (around < 0) return null;
            holes[around].Add(hole);
        }
        return [.. outers.Select((o, i) => new ArcRegion(holes[i].Prepend(o.Loops[0]), deviation))
            .Where(r => r.Area > splinter * r.Loops.Sum(l => l.Perimeter)).OrderByDescending(r => r.Area)];
    }
}
