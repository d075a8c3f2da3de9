using System.Collections.Immutable;

namespace Solidbody.Geometry.Arcs;

/// <summary>A region inside others of the same source, at a depth that grows by one step from each to those within it.</summary>
/// <param name="Region">The region.</param>
/// <param name="Inner">What one step further in leaves of it, largest first.</param>
public sealed record NestedOffset(ArcRegion Region, ImmutableArray<NestedOffset> Inner)
{
    /// <summary>What the levels' own closing of gaps may add up to before a level is taken from the source anew, mm.</summary>
    private const double MostDrift = 0.001;

    /// <summary>Offsets inward until nothing is left, each level from the one before: as exact as from the source, and cheaper, for what has vanished is looked at no more.</summary>
    /// <param name="source">The region.</param>
    /// <param name="first">Depth of the outermost level, mm; ≥ 0.</param>
    /// <param name="step">Depth from level to level, mm; over 0.</param>
    /// <returns>The regions of the outermost level. All lie within <see cref="MostDrift"/> of their depth, whatever the number of levels.</returns>
    public static ImmutableArray<NestedOffset> Of(ArcRegion source, double first, double step)
    {
        ArgumentNullException.ThrowIfNull(source);
        if (!(step > Tolerances.Geometry)) throw new ArgumentOutOfRangeException(nameof(step), step, "Levels need a step between them, mm.");
        return [.. ArcOffsets.Of(source, -first).Select(r => new NestedOffset(r, Within(r, source, first + step, step)))];
    }

    private static ImmutableArray<NestedOffset> Within(ArcRegion outer, ArcRegion source, double depth, double step)
    {
        var inner = ArcOffsets.Of(outer, -step);
        if (inner.Any(r => r.Deviation - source.Deviation > MostDrift))
            inner = [.. ArcOffsets.Of(source, -depth).Where(r => outer.Contains(r.Loops[0].Segments[0].From))];
        return [.. inner.Select(r => new NestedOffset(r, Within(r, source, depth + step, step)))];
    }
}
