using System.Collections.Immutable;

namespace Solidbody.Geometry;

/// <summary>A flat region in a plan: loops under the even-odd rule, outer ones counter-clockwise, holes clockwise. Immutable, thread-safe.</summary>
public sealed class Region
{
    private readonly Lazy<SegmentIndex> index;

    public Region(IEnumerable<Loop> loops)
    {
        Loops = [.. loops];
        if (Loops.IsEmpty) throw new ArgumentException("A region needs a loop.", nameof(loops));
        Bounds = Loops.Aggregate(Box2.Empty, (box, l) => { foreach (var p in l.Points) box = box.With(p); return box; });
        index = new(() => new SegmentIndex(Loops, Bounds));
    }

    public Region(Loop outer) : this([outer.CounterClockwise]) { }

    public ImmutableArray<Loop> Loops { get; }
    public Box2 Bounds { get; }
    /// <summary>Area, mm²; holes taken away.</summary>
    public double Area => Loops.Sum(l => l.SignedArea);
    public Region Mirrored => new(Loops.Select(l => l.Mirrored));
    public Region Map(Func<Point2, Point2> f) => new(Loops.Select(l => l.Map(f)));

    /// <summary>Whether the point lies inside (even-odd); points on the edge may count either way.</summary>
    public bool Contains(Point2 p) => Bounds.Contains(p) && index.Value.CrossingsLeftOf(p) % 2 == 1;

    /// <summary>Distance to the nearest edge, mm: negative inside, positive outside. Exact for the polygon up to rounding.</summary>
    public double SignedDistance(Point2 p)
    {
        var d = index.Value.Distance(p, double.PositiveInfinity);
        return Contains(p) ? -d : d;
    }

    /// <summary>As <see cref="SignedDistance(Point2)"/>, but cheaper far away: any size ≥ <paramref name="within"/> stands for "at least that".</summary>
    public double SignedDistance(Point2 p, double within)
    {
        var d = Math.Min(index.Value.Distance(p, within), within);
        return Contains(p) ? -d : d;
    }

    /// <summary>Where the level line y crosses the edges: x values, ascending; the inside lies between the 1st and 2nd, 3rd and 4th, and so on.</summary>
    public void Crossings(double y, List<double> xs)
    {
        xs.Clear();
        index.Value.Crossings(y, xs);
        xs.Sort();
    }
}
