using CsCheck;
using Solidbody.Geometry.Arcs;

namespace Solidbody.Geometry.Tests.Arcs;

public class SegmentTests
{
    private static readonly Gen<Point2> Spot = Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50]).Select((x, y) => new Point2(x, y));
    private static readonly Gen<Segment> Any = Gen.Select(Spot, Spot, Gen.Double[-Math.PI, Math.PI], Gen.Int[0, 4])
        .Where((a, b, sweep, _) => a.DistanceTo(b) > 0.01 && Math.Abs(sweep) > 0.01).Select((a, b, sweep, kind) => Segment.Arc(a, b, kind == 0 ? 0 : kind == 1 ? Math.Sign(sweep) * Math.PI : sweep));

    private static IEnumerable<Point2> Along(Segment s, int n = 4000) => Enumerable.Range(0, n + 1).Select(i => s.At((double)i / n));

    [Fact]
    public void Length_is_that_of_many_chords() => Any.Sample(s =>
        Math.Abs(Along(s).Zip(Along(s).Skip(1), (a, b) => a.DistanceTo(b)).Sum() - s.Length) < 1e-5 * s.Length, iter: 100);

    [Fact]
    public void Distance_is_that_to_the_nearest_of_many_points() => Gen.Select(Any, Spot).Sample((s, p) =>
    {
        var nearest = Along(s).Min(p.DistanceTo);
        return s.DistanceTo(p) <= nearest + 1e-9 && s.DistanceTo(p) > nearest - s.Length / 4000 && Math.Abs(s.At(s.Nearest(p)).DistanceTo(p) - s.DistanceTo(p)) < 1e-9;
    }, iter: 200);

    [Fact]
    public void Bounds_hold_it_and_no_more() => Any.Sample(s =>
    {
        var box = Box2.Around(Along(s));
        return Along(s, 50).All(s.Bounds.Grown(1e-9).Contains) && s.Bounds.Width < box.Width + 1e-3 && s.Bounds.Height < box.Height + 1e-3;
    }, iter: 200);

    [Fact] // Each crossing changes the sign of what lies on the other side; counted on many points, those that lie too near to an end left out.
    public void Crossings_are_found() => Gen.Select(Any, Any).Sample((a, b) =>
    {
        var found = new List<SegmentCrossings.Meeting>();
        SegmentCrossings.Find(a, b, found);
        if (found.Exists(m => a.At(m.OnFirst).DistanceTo(m.At) > 1e-6 || b.At(m.OnSecond).DistanceTo(m.At) > 1e-6)) return false;
        // The nearest the two come: nought where a crossing was found, and only there.
        var least = Along(a, 2000).Min(b.DistanceTo);
        return found.Count > 0 ? least < a.Length / 2000 : least > 1e-6;
    }, iter: 300);

    [Fact]
    public void Beside_lies_at_the_distance() => Gen.Select(Any, Gen.Double[-20, 20]).Sample((s, left) =>
        s.Beside(left) is not { } moved ? s.IsArc && s.Radius < Math.Abs(left)
            : Along(moved, 20).Zip(Along(s, 20)).All(p => Math.Abs(p.First.DistanceTo(p.Second) - Math.Abs(left)) < 1e-6), iter: 300);

    [Fact]
    public void Inside_is_told_as_by_the_polygon() => Gen.Int[0, 2000].Sample(seed =>
    {
        var region = RandomShapes.Of(seed);
        var (polygon, random, box) = (region.Flattened(1e-4), new Random(seed), region.Bounds);
        for (var i = 0; i < 100; i++)
        {
            // On the levels of joints, tops and bottoms too.
            var joint = region.Loops[0].Segments[random.Next(region.Loops[0].Segments.Length)];
            var y = (i % 4) switch { 0 => joint.From.Y, 1 when joint.IsArc => joint.Centre.Y + joint.Radius, 2 when joint.IsArc => joint.Centre.Y - joint.Radius, _ => box.Y0 + box.Height * random.NextDouble() };
            var p = new Point2(box.X0 + box.Width * random.NextDouble(), y);
            if (Math.Abs(polygon.SignedDistance(p)) > 1e-3 && Math.Abs(polygon.SignedDistance(p) - region.SignedDistance(p)) > 2e-4) return false;
        }
        return true;
    }, iter: 60);

    [Fact]
    public void Areas_are_those_of_elementary_geometry()
    {
        Assert.Equal(Math.PI * 49, ArcLoop.Circle(new(30, -20), 7).SignedArea, 9);
        Assert.Equal(-Math.PI * 49, ArcLoop.Circle(new(30, -20), 7).Reversed.SignedArea, 9);
        // A half disc with its diameter.
        Assert.Equal(Math.PI * 50, new ArcLoop([Segment.Arc(new(10, 0), new(-10, 0), Math.PI), Segment.Line(new(-10, 0), new(10, 0))]).SignedArea, 9);
    }

    [Fact]
    public void A_turn_too_small_to_show_makes_a_straight() => Assert.False(Segment.Arc(new(0, 0), new(10, 0), 1e-12).IsArc);

    [Fact]
    public void More_than_half_a_turn_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Segment.Arc(new(0, 0), new(1, 0), 3.2));
}
