using System.Collections.Immutable;

namespace Solidbody.Geometry.Arcs;

/// <summary>Offsets of regions bounded by straights and arcs: straights stay straights, arcs stay arcs, exact but for closing gaps of rounding.</summary>
/// <remarks>
/// Every segment is moved by the distance and arcs are put about the joints where moved neighbours part (<see cref="RawOffset"/>). All of it is cut where it meets itself
/// (<see cref="OffsetRuns"/>). A run between meetings belongs to the offset when no edge of the source is nearer to it than the distance: one look at one of its points decides.
/// What is left is strung to loops (<see cref="LoopTrace"/>). Where a meeting is so nearly tangent that the loops do not close, it is tried anew over crumbs, then at a distance changed by hundredths of a micrometre.
/// </remarks>
public static class ArcOffsets
{
    /// <summary>Runs nearer to the source than the distance less this are out, mm; far above rounding.</summary>
    private const double Doubt = 1e-5;
    /// <summary>Runs no nearer than the distance less this certainly belong, mm.</summary>
    private const double Sure = 1e-6;
    /// <summary>Moved ends nearer than this are joined as they are, mm.</summary>
    private const double Join = 1e-5;
    /// <summary>Regions narrower than this, by area over edge, are nothing, mm.</summary>
    private const double Splinter = 2e-5;
    /// <summary>Changes of the distance tried in turn, mm.</summary>
    private static readonly double[] Nudges = [0, 1.1e-5, -1.3e-5, 3.7e-5, -4.1e-5, 9.1e-5, -8.3e-5, 1.9e-4, -2.3e-4];

    /// <summary>All points within the distance of the region (outward), or at least that deep inside it (inward, negative).</summary>
    /// <param name="region">The region.</param>
    /// <param name="distance">Offset d, mm; negative is inward.</param>
    /// <returns>The separate regions left, largest first; none when nothing is left. Their deviation is the source's and what this offset may have added: mostly 0.00001 mm, at most 0.0003.</returns>
    /// <exception cref="InvalidOperationException">The edges of the source do not bound a region.</exception>
    public static ImmutableArray<ArcRegion> Of(ArcRegion region, double distance)
    {
        ArgumentNullException.ThrowIfNull(region);
        if (!double.IsFinite(distance)) throw new ArgumentOutOfRangeException(nameof(distance), distance, "An offset's distance is finite, mm.");
        if (Math.Abs(distance) < Tolerances.Geometry) return [region];
        foreach (var nudge in Nudges)
            if (Try(region, distance + nudge) is var (loops, moved) && ArcNesting.Regions(loops, region.Deviation + moved + Math.Abs(nudge), Splinter) is { } regions)
                return regions;
        throw new InvalidOperationException($"The offset by {distance} mm of a region of {region.Loops.Length} loops about {region.Bounds.Centre} does not close: do its edges cross?");
    }

    private static (List<ArcLoop> Loops, double Moved)? Try(ArcRegion region, double distance)
    {
        var runs = new OffsetRuns(new RawOffset(region, -distance, Join)).Runs().Select(r => Judged(r, region, Math.Abs(distance))).OfType<OffsetRun>().ToList();
        var open = runs.Where(r => !r.Closed).ToList();
        foreach (var overCrumbs in (ReadOnlySpan<bool>)[false, true])
        {
            var trace = new LoopTrace(open, overCrumbs);
            if (trace.Loops() is not { } strung) continue;
            var loops = runs.Where(r => r.Closed && r.Certain).Select(r => r.Segments).Concat(strung).Select(ArcCleaning.Of).OfType<ArcLoop>();
            return ([.. loops], trace.Moved + Join);
        }
        return null;
    }

    /// <summary>The run with its certainty; null when it lies too near to the source.</summary>
    private static OffsetRun? Judged(OffsetRun run, ArcRegion region, double distance)
    {
        var away = region.Tree.Distance(run.Middle, distance, distance - Doubt);
        run.Certain = away >= distance - Sure;
        return away < distance - Doubt ? null : run;
    }
}
