using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Tests.Toolpaths;

public class CutterEngagementTests
{
    [Theory] // A circle so large that it is a straight wall: φ = acos(1 − ae/R), the textbook's engagement beside a wall.
    [InlineData(3, 0.3)]
    [InlineData(3, 1.5)]
    [InlineData(6, 6)]
    public void A_large_spiral_engages_as_a_straight_pass_does(double cutter, double width)
    {
        var angle = Math.Acos(1 - width / cutter);
        Assert.Equal(width, CutterEngagement.Growth(1e6, cutter, angle), 1e-4 * width);
        Assert.Equal(angle, CutterEngagement.Along(new(new(0, 0), 1e6), new(new(0, 0), 1e6 + width), cutter), 1e-4);
    }

    [Fact]
    public void A_spiral_grows_by_as_much_as_the_angle_allows() => Gen.Select(Gen.Double[0.5, 40], Gen.Double[1, 8], Gen.Double[0.2, 2])
        .Sample((radius, cutter, most) =>
            Math.Abs(CutterEngagement.Along(new(default, radius), new(default, radius + CutterEngagement.Growth(radius, cutter, most)), cutter) - most) < 1e-6);

    [Fact] // Places of the rim ahead, each asked whether it lies in the cleared disc.
    public void An_arc_engages_the_rim_that_stands_in_wood() => Gen.Select(Gen.Double[0.2, 20], Gen.Double[0.2, 20], Gen.Double[0.05, 4], Gen.Double[1, 6], Gen.Double[0, 6])
        .Sample((from, next, apart, cutter, turn) =>
        {
            var (a, b) = (new InnerDisc(new(3, -2), from), new InnerDisc(new Point2(3, -2) + apart * Point2.Polar(turn), next));
            if (apart + from <= next || apart + next <= from) return;   // one holds the other
            var half = CutterEngagement.Outside(a, b);
            var most = 0.0;
            for (var i = 0; i <= 200; i++)
            {
                var angle = turn + half * (i / 100.0 - 1);
                var (p, ahead) = (b.Centre + next * Point2.Polar(angle), -Point2.Polar(angle).Left);
                var count = Enumerable.Range(0, 720).Select(k => Point2.Polar(k * Math.PI / 360)).Count(v => v.Dot(ahead) > 0 && (p + cutter * v).DistanceTo(a.Centre) > from + cutter);
                most = Math.Max(most, count * Math.PI / 360);
            }
            Assert.Equal(most, CutterEngagement.Along(a, b, cutter), 0.06);
        }, iter: 60);
}
