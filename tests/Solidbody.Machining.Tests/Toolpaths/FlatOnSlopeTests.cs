using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Tests.Toolpaths;

public class FlatOnSlopeTests
{
    // By hand from the right triangles: D t/2 beside the slope, D t downhill; tan 1° = 0.0174551, tan 0.5° = 0.0087269, tan 2° = 0.0349208.
    [Theory]
    [InlineData(6, 1, 1, 0)]
    [InlineData(6, 1, 0, 0.0523652)]
    [InlineData(6, 1, -1, 0.1047304)]
    [InlineData(10, 0.5, 0, 0.0436345)]
    [InlineData(2.5, -2, 0, 0.0436510)]
    [InlineData(12, -1, -1, 0.2094608)]
    public void The_strip_at_a_wall_is_the_closed_form(double diameter, double degrees, double uphill, double left) =>
        Assert.Equal(left, FlatOnSlope.LeftAtWall(diameter / 2, Math.Tan(double.DegreesToRadians(degrees)), uphill), 6);

    [Theory, MemberData(nameof(Slopes))] // Search: the lowest of all places of the axis that neither cut the wall nor the slope, by trying them.
    public void The_strip_at_a_wall_is_what_a_search_finds(double diameter, double degrees)
    {
        var (radius, slope) = (diameter / 2, Math.Tan(double.DegreesToRadians(degrees)));
        for (var turn = 0.0; turn <= 180; turn += 15)
        {
            var into = Point2.Polar(double.DegreesToRadians(turn));   // the wall stands at the origin, square to this
            var lowest = double.PositiveInfinity;
            for (var back = radius; back <= 2 * radius; back += radius / 200)
                for (var beside = -radius; beside <= radius; beside += radius / 200)
                {
                    var axis = -back * into + beside * into.Left;
                    if (axis.Length > radius + 1e-9) continue;   // does not reach the foot
                    lowest = Math.Min(lowest, LowestTip(axis, radius, slope));
                }
            Assert.Equal(FlatOnSlope.LeftAtWall(radius, slope, Math.Sign(slope) * into.X), lowest, 6);
        }
    }

    [Theory, MemberData(nameof(Slopes))]
    public void The_ridge_between_two_passes_is_the_one_asked_for(double diameter, double degrees)
    {
        const double ridge = 0.02;
        var (radius, slope) = (diameter / 2, Math.Tan(double.DegreesToRadians(degrees)));
        var spacing = FlatOnSlope.Spacing(diameter, slope, ridge);
        var lowest = double.PositiveInfinity;
        for (var x = -radius; x <= radius; x += radius / 20000)
            if (Math.Sqrt(x * x + spacing * spacing / 4) <= radius) lowest = Math.Min(lowest, LowestTip(new(x, 0), radius, slope));
        if (spacing < 0.9 * diameter) Assert.Equal(ridge, lowest, 1e-4);
        else Assert.InRange(lowest, 0, ridge);
    }

    public static TheoryData<double, double> Slopes => new() { { 6, 1 }, { 10, 0.5 }, { 3, 2 }, { 12, -1.5 }, { 6, -0.3 } };

    /// <summary>Height above the plane z = t x at the origin of a level disc about the axis, as low as its rim lets it come.</summary>
    private static double LowestTip(Point2 axis, double radius, double slope)
    {
        var highest = double.NegativeInfinity;
        for (var k = 0; k < 72; k++) highest = Math.Max(highest, slope * (axis + radius * Point2.Polar(k * Math.PI / 36)).X);
        return highest;
    }
}
