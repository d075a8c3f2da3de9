using System.Collections.Immutable;

namespace Solidbody.Geometry;

/// <summary>A closed polygon in a plan, mm: the last point joins the first and is not repeated.</summary>
/// <param name="Points">At least three points, no two neighbours within <see cref="Tolerances.Geometry"/>.</param>
public sealed record Loop(ImmutableArray<Point2> Points)
{
    /// <summary>Builds a loop from points, dropping repeats.</summary>
    /// <exception cref="ArgumentException">Fewer than three points are left.</exception>
    public static Loop Of(IEnumerable<Point2> points)
    {
        var kept = ImmutableArray.CreateBuilder<Point2>();
        foreach (var p in points)
            if (kept.Count == 0 || p.DistanceTo(kept[^1]) > Tolerances.Geometry)
                kept.Add(p);
        while (kept.Count > 1 && kept[0].DistanceTo(kept[^1]) <= Tolerances.Geometry) kept.RemoveAt(kept.Count - 1);
        if (kept.Count < 3) throw new ArgumentException($"A loop needs three points apart; {kept.Count} were left.", nameof(points));
        return new(kept.ToImmutable());
    }

    /// <summary>Area, mm²; positive when the points run counter-clockwise (shoelace formula).</summary>
    public double SignedArea
    {
        get
        {
            var twice = 0.0;
            for (var i = 0; i < Points.Length; i++) twice += Points[i].Cross(Points[(i + 1) % Points.Length]);
            return twice / 2;
        }
    }

    public double Perimeter
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Points.Length; i++) sum += Points[i].DistanceTo(Points[(i + 1) % Points.Length]);
            return sum;
        }
    }

    public Box2 Bounds => Box2.Around(Points);
    public Loop Reversed => new([.. Points.Reverse()]);
    public Loop CounterClockwise => SignedArea >= 0 ? this : Reversed;
    public Loop Clockwise => SignedArea <= 0 ? this : Reversed;
    public Loop Map(Func<Point2, Point2> f) => new([.. Points.Select(f)]);
    /// <summary>The mirror image y → −y, running the same way round.</summary>
    public Loop Mirrored => Map(p => new(p.X, -p.Y)).Reversed;

    public override string ToString() => $"loop of {Points.Length} points, area {SignedArea:0.###} mm²";
}
