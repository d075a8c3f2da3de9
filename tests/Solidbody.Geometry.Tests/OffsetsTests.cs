using CsCheck;

namespace Solidbody.Geometry.Tests;

public class OffsetsTests
{
    [Theory]
    [InlineData(3)]
    [InlineData(12)]
    [InlineData(-3)]
    [InlineData(-20)]
    public void A_circle_stays_a_circle_within_the_tolerance(double distance)
    {
        var circle = new Region(Shapes.Circle(new(0, 0), 40, 1e-5));
        var moved = Assert.Single(Offsets.Of(circle, distance, 0.002));
        Assert.All(moved.Loops[0].Points, p => Assert.InRange(p.Length, 40 + distance - 0.0025, 40 + distance + 0.0005));
    }

    [Fact]
    public void A_grown_rectangle_has_its_closed_form_area()
    {
        // Steiner: area + perimeter·d + π d².
        var grown = Assert.Single(Offsets.Of(new Region(Shapes.Rectangle(new(0, 0), 80, 50)), 6, 1e-4));
        Assert.Equal(80 * 50 + 260 * 6 + Math.PI * 36, grown.Area, 1);
    }

    [Fact]
    public void Points_of_an_inward_offset_lie_that_deep_inside() => Gen.Select(Gen.Double[20, 80], Gen.Double[20, 80], Gen.Double[0, 9], Gen.Double[0.5, 9])
        .Sample((length, width, corner, depth) =>
        {
            var region = new Region(Shapes.Rectangle(new(0, 0), length, width, corner));
            return Offsets.Of(region, -depth).SelectMany(r => r.Loops).SelectMany(l => l.Points)
                .All(p => Math.Abs(region.SignedDistance(p) + depth) < 0.01);
        });

    [Fact]
    public void An_island_grows_while_the_room_shrinks()
    {
        var room = Offsets.Difference(new Region(Shapes.Rectangle(new(0, 0), 60, 60)), new Region(Shapes.Circle(new(0, 0), 8)))[0];
        Assert.Equal(2, room.Loops.Length);
        var inside = Assert.Single(Offsets.Of(room, -3));
        Assert.Equal(54 * 54 - Math.PI * 11 * 11, inside.Area, 0);
    }

    [Fact]
    public void A_waist_narrower_than_the_offset_parts_the_region()
    {
        var two = Offsets.Union([new Region(Shapes.Rectangle(new(-20, 0), 30, 30)), new Region(Shapes.Rectangle(new(20, 0), 30, 30)), new Region(Shapes.Rectangle(new(0, 0), 30, 4))])[0];
        Assert.Equal(2, Offsets.Of(two, -3).Length);
    }

    /// <summary>An outline of 1 300 points with waists and horns, r(t) in closed form.</summary>
    internal static readonly Region Waisted = new(Loop.Of(Enumerable.Range(0, 1300).Select(i =>
    {
        var t = 2 * Math.PI * i / 1300;
        return new Point2((150 + 30 * Math.Cos(2 * t) + 12 * Math.Cos(3 * t)) * Math.Cos(t), (110 + 25 * Math.Cos(2 * t + 0.4) - 9 * Math.Sin(3 * t)) * Math.Sin(t));
    })));

    [Theory] // Areas and lengths by an independent polygon library: shapely 1.8.5 on GEOS 3.11.1, Polygon(points).buffer(d, resolution=512).
    [InlineData(3, 55398.9997, 916.007)]
    [InlineData(-3, 50016.0555, 878.3077)]
    [InlineData(12, 63897.5305, 972.5556)]
    [InlineData(-12, 42365.7569, 821.7587)]
    [InlineData(-40, 21819.5427, 645.8224)]
    [InlineData(-70, 5441.5778, 437.6388)]
    public void An_outlines_offset_is_that_of_another_library(double distance, double area, double length)
    {
        const double tolerance = 0.002;
        var moved = Assert.Single(Offsets.Of(Waisted, distance, tolerance));
        Assert.InRange(Math.Abs(moved.Area - area), 0, tolerance * length);
        Assert.Equal(length, Assert.Single(moved.Loops).Perimeter, 0.05);
        // The promise itself, point by point and in the middle of every chord.
        var points = moved.Loops[0].Points;
        for (var i = 0; i < points.Length; i++)
            Assert.InRange(Math.Abs(Math.Abs(Waisted.SignedDistance(0.5 * (points[i] + points[(i + 1) % points.Length]))) - Math.Abs(distance)), 0, tolerance * 1.01);
    }

    [Fact]
    public void Nothing_is_left_of_an_outline_shrunk_past_its_middle() => Assert.Empty(Offsets.Of(Waisted, -90));

    [Fact]
    public void Nothing_is_left_of_a_region_shrunk_by_more_than_its_half_width() =>
        Assert.Empty(Offsets.Of(new Region(Shapes.Rectangle(new(0, 0), 60, 10)), -5.01));
}
