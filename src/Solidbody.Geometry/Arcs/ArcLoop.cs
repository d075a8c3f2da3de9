using System.Collections.Immutable;

namespace Solidbody.Geometry.Arcs;

/// <summary>A closed path of straights and arcs in a plan, mm: every segment starts where the one before ends, the first where the last ends.</summary>
/// <param name="Segments">At least two.</param>
public sealed record ArcLoop(ImmutableArray<Segment> Segments)
{
    /// <summary>The polygon as it is, in straights.</summary>
    public static ArcLoop Of(Loop loop) =>
        new([.. loop.Points.Select((p, i) => Segment.Line(p, loop.Points[(i + 1) % loop.Points.Length]))]);

    /// <summary>A circle, counter-clockwise, in two halves.</summary>
    public static ArcLoop Circle(Point2 centre, double radius)
    {
        var (a, b) = (centre + new Point2(radius, 0), centre - new Point2(radius, 0));
        return new([Segment.Arc(a, b, Math.PI), Segment.Arc(b, a, Math.PI)]);
    }

    /// <summary>Area, mm²; positive when it runs counter-clockwise (Green's theorem; exact for arcs).</summary>
    public double SignedArea => Segments.Sum(s => s.TwiceArea) / 2;
    public double Perimeter => Segments.Sum(s => s.Length);
    public ArcLoop Reversed => new([.. Segments.Reverse().Select(s => s.Reversed)]);

    /// <summary>The polygon through its joints and along its arcs, no chord further than the tolerance from them.</summary>
    public Loop Flattened(double tolerance = Tolerances.Flattening) => Loop.Of(Segments.SelectMany(s => s.Chords(tolerance)));

    public override string ToString() => $"loop of {Segments.Length} segments, area {SignedArea:0.###} mm²";
}
