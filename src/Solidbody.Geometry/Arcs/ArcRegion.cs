using System.Collections.Immutable;

namespace Solidbody.Geometry.Arcs;

/// <summary>A flat region bounded by straights and arcs: loops under the even-odd rule with the inside on their left, outer ones counter-clockwise, holes clockwise. Immutable, thread-safe.</summary>
public sealed class ArcRegion
{
    private readonly Lazy<BoxTree> tree;

    /// <param name="loops">Its edges, at least one.</param>
    /// <param name="deviation">How far they may lie off the edges they stand for, mm.</param>
    public ArcRegion(IEnumerable<ArcLoop> loops, double deviation = 0)
    {
        Loops = [.. loops];
        if (Loops.IsEmpty) throw new ArgumentException("A region needs a loop.", nameof(loops));
        Deviation = deviation;
        tree = new(() => new BoxTree(Loops.SelectMany(l => l.Segments).ToArray()));
    }

    public ImmutableArray<ArcLoop> Loops { get; }
    /// <summary>Bound on how far its edges lie off those they stand for, mm: fitting, and what offsets moved to close gaps.</summary>
    public double Deviation { get; }
    /// <summary>Area, mm²; holes taken away.</summary>
    public double Area => Loops.Sum(l => l.SignedArea);
    public Box2 Bounds => Tree.Bounds;
    internal BoxTree Tree => tree.Value;

    /// <summary>Whether the point lies inside (even-odd); points on the edge may count either way.</summary>
    public bool Contains(Point2 p) => Tree.CrossingsLeftOf(p) % 2 == 1;

    /// <summary>Distance to the nearest edge, mm: negative inside, positive outside. Any size ≥ <paramref name="within"/> stands for "at least that".</summary>
    public double SignedDistance(Point2 p, double within = double.PositiveInfinity)
    {
        var d = Math.Min(Tree.Distance(p, within), within);
        return Contains(p) ? -d : d;
    }

    /// <summary>The region of polygons, no chord further than the tolerance from its arc.</summary>
    public Region Flattened(double tolerance = Tolerances.Flattening) => new(Loops.Select(l => l.Flattened(tolerance)));
}
