using CsCheck;
using Solidbody.Geometry;

namespace Solidbody.Programs.Tests;

/// <summary>Arcs in closed form against points walked along them.</summary>
public class MotionTests
{
    private static readonly Gen<Motion> Arcs =
        from x in Gen.Double[-50, 50]
        from y in Gen.Double[-50, 50]
        from radius in Gen.Double[0.1, 80]
        from start in Gen.Double[-4, 4]
        from bend in Gen.Double[0.01, 6.28]
        from left in Gen.Bool
        from climb in Gen.Double[-5, 5]
        select Arc(new(x, y), radius, start, left ? bend : -bend, climb);

    private static Motion Arc(Point2 centre, double radius, double start, double sweep, double climb)
    {
        var from = centre + radius * Point2.Polar(start);
        var to = centre + radius * Point2.Polar(start + sweep);
        return new(sweep > 0 ? MotionKind.ArcCounterClockwise : MotionKind.ArcClockwise, new(from.X, from.Y, 10), new(to.X, to.Y, 10 + climb), centre, 20);
    }

    [Fact]
    public void An_arcs_box_is_that_of_its_points() => Arcs.Sample(arc =>
    {
        const int Steps = 2000;
        var (radius, sweep) = ((arc.From.Plan - arc.Centre).Length, arc.Sweep);
        var points = Enumerable.Range(0, Steps + 1).Select(i => arc.Centre + (arc.From.Plan - arc.Centre).Turned(sweep * i / Steps));
        var (walked, box) = (Box2.Around(points), MotionBounds.Of([arc]));
        // Between two points the arc bulges by at most R (1 − cos(step / 2)).
        var bulge = radius * (1 - Math.Cos(sweep / Steps / 2)) + 1e-9;
        Assert.Equal(walked.X0, box.X0, bulge);
        Assert.Equal(walked.Y0, box.Y0, bulge);
        Assert.Equal(walked.X1, box.X1, bulge);
        Assert.Equal(walked.Y1, box.Y1, bulge);
        Assert.Equal(Math.Min(arc.From.Z, arc.To.Z), box.Z0);
        Assert.Equal(Math.Max(arc.From.Z, arc.To.Z), box.Z1);
    }, iter: 300);

    [Fact]
    public void A_whole_turn_fills_its_square_and_a_quarter_only_its_own()
    {
        Assert.Equal(new Box3(-5, -5, 0, 5, 5, 0), MotionBounds.Of([new(MotionKind.ArcClockwise, new(5, 0, 0), new(5, 0, 0), new(0, 0), 1)]));
        Assert.Equal(new Box3(0, 0, 0, 5, 5, 2), MotionBounds.Of([new(MotionKind.ArcCounterClockwise, new(5, 0, 0), new(0, 5, 2), new(0, 0), 1)]));
        Assert.Throws<ArgumentException>(() => MotionBounds.Of([]));
    }

    [Fact]
    public void A_helixs_length_is_that_of_its_points() => Arcs.Sample(arc =>
    {
        const int Steps = 4000;
        var length = 0.0;
        WorkPoint At(int i)
        {
            var plan = arc.Centre + (arc.From.Plan - arc.Centre).Turned(arc.Sweep * i / Steps);
            return new(plan.X, plan.Y, arc.From.Z + (arc.To.Z - arc.From.Z) * i / Steps);
        }
        for (var i = 0; i < Steps; i++) length += At(i).DistanceTo(At(i + 1));
        Assert.Equal(length, arc.Length, length * 1e-6); // a chord is shorter than its arc by θ²/24, here 1e-7 of it
    }, iter: 100);
}
