using CsCheck;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Tests.Bodies;

public class WireDrillingTests
{
    private static readonly Gen<(double Depth, double Run, double Diameter)> Any = Gen.Select(Gen.Double[1, 20], Gen.Double[15, 120], Gen.Double[2, 8]);

    /// <summary>The plane of the drill: the wall at 0, the room behind it at negative x, the face at height 0.</summary>
    private static Point2 OnAxis(DrillLie lie, double back) => new Point2(0, -lie.Depth) - back * new Point2(Math.Cos(lie.Angle), -Math.Sin(lie.Angle));

    [Fact]
    public void The_shank_touches_the_far_edge_and_no_more() => Any.Sample((depth, run, diameter) =>
    {
        var lie = DrillLie.Over(depth, run, diameter);
        var (axis, edge) = (new Point2(Math.Cos(lie.Angle), -Math.Sin(lie.Angle)), new Point2(-run, 0) - OnAxis(lie, 0));
        // The axis passes above the edge by the radius: worked out by a cross product, apart from the formula.
        Assert.Equal(diameter / 2, axis.Cross(edge) * -1, 9);
    });

    [Fact]
    public void At_the_free_length_the_chucks_rim_stands_on_the_face() => Gen.Select(Any, Gen.Double[10, 100], Gen.Double[5, 50]).Sample((a, beyond, chuck) =>
    {
        var lie = DrillLie.Over(a.Depth, a.Run, a.Diameter);
        var nose = OnAxis(lie, lie.FreeLength(beyond, chuck) - beyond / Math.Cos(lie.Angle));
        var rim = nose - chuck / 2 * new Point2(Math.Sin(lie.Angle), Math.Cos(lie.Angle));
        Assert.Equal(0, rim.Y, 9);
    });

    [Fact] // 8 mm below the face, 40 mm back to the edge, a 6 mm drill: atan(8/40) = 11.310, asin(3/40.792) = 4.218 degrees.
    public void A_drill_of_6_mm_over_a_pickup_cavity_stands_at_15_and_a_half_degrees() => Assert.Equal(15.53, double.RadiansToDegrees(DrillLie.Over(8, 40, 6).Angle), 2);

    [Fact]
    public void A_way_keeps_inside_the_outline_at_a_narrow_waist()
    {
        // A body with a bay from above that reaches below the straight line between the rooms' middles.
        var outline = new Region(Loop.Of([new(0, -60), new(200, -60), new(200, 60), new(120, 60), new(100, -15), new(80, 60), new(0, 60)]));
        WireRoom Room(double x) => new("room", new(Shapes.Rectangle(new(x, 0), 40, 100, 3)), [.. Enumerable.Range(-11, 23).OrderBy(Math.Abs).Select(i => new Point2(x, 4 * i))], -20, 0);

        var (a, b) = WireLine.Between(Room(35), Room(165), 6, [], outline);

        Assert.True(WireClearance.ToEdge(outline, a, b, 6) >= 6, $"{a} to {b}: {WireClearance.ToEdge(outline, a, b, 6)}");
        Assert.True(WireClearance.ToEdge(outline, new(35, 0), new(165, 0), 6) < 0);
    }

    [Fact]
    public void Every_way_of_the_band_guitar_is_made_by_a_drill_that_fits()
    {
        var body = Designer.Design(Workshop.Guitar).Part("body");

        Assert.Equal(3, body.HandBores.Count(b => b.ForWires));
        Assert.All(body.HandBores.Where(b => b.ForWires), b => Assert.Contains("free of the chuck", b.How, StringComparison.Ordinal));
        // Between two pickups a drill cannot lie over an edge: it comes through the neck pocket.
        Assert.Contains(RoomNames.NeckPocket, body.HandBores.First(b => b.ForWires).Into);
    }

    [Fact]
    public void A_ploughed_way_lies_in_the_joint()
    {
        var body = Workshop.Guitar.Body with { WireWays = [Workshop.Guitar.Body.WireWays[0] with { Made = WireMaking.Ploughed }] };
        var groove = Designer.Design(Workshop.Guitar with { Body = body }).Part("body").HandBores.Single(b => b.ForWires);

        Assert.Equal(GlueUp.Halves, groove.Before);
        Assert.Equal((0, 0), (groove.A.Y, groove.B.Y));
    }
}
