using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Timing;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Timing;

public class MotionTimeTests
{
    // Source: even acceleration, t = d/v + v/a when d ≥ v²/a, else 2√(d/a); worked by hand. mm, mm/s, mm/s², s.
    [Theory]
    [InlineData(100, 50, 500, 2.1)]
    [InlineData(5, 50, 500, 0.2)]
    [InlineData(2, 50, 500, 0.126491106)]
    [InlineData(0.5, 33.3333333333, 250, 0.089442719)]
    [InlineData(300, 83.3333333333, 400, 3.808333333)]
    public void From_rest_to_rest_agrees_with_worked_values(double distance, double speed, double acceleration, double seconds)
    {
        var machine = Samples.Machine with { FeedMostXY = 1000, AccelerationXY = acceleration };
        Assert.Equal(seconds, MotionTime.Seconds([Line(new(0, 0, 0), new(distance, 0, 0), speed)], machine), 8);
    }

    // Source: v_p = √((2ad + v₀² + v₁²)/2), capped at v; worked by hand.
    [Theory]
    [InlineData(20, 10, 5, 50, 500, 0.4725)]
    [InlineData(2, 10, 5, 50, 500, 0.100384048)]
    public void General_ends_agree_with_worked_values(double distance, double from, double to, double most, double acceleration, double seconds) =>
        Assert.Equal(seconds, MotionTime.Trapezoid(distance, from, to, most, acceleration), 8);

    // Source: R = e·sin(θ/2)/(1 − sin(θ/2)), v = √(aR); a 500 mm/s², e 0.01 mm; worked by hand.
    [Theory]
    [InlineData(60, 2.2360680)]
    [InlineData(90, 3.4743442)]
    [InlineData(120, 5.6851128)]
    [InlineData(135, 7.7900806)]
    [InlineData(150, 11.9054064)]
    [InlineData(170, 36.1794996)]
    [InlineData(175, 72.4453144)]
    public void Corner_speed_agrees_with_worked_values(double interiorDegrees, double speed) =>
        Assert.Equal(speed, MotionTime.CornerSpeed(interiorDegrees * Math.PI / 180, 500, 0.01), 6);

    [Fact]
    public void A_corner_costs_what_slowing_down_to_its_speed_costs()
    {
        // Two legs of 100 mm at a right angle, 50 mm/s, 500 mm/s²: each is a trapezoid between rest and the corner's 3.4743442 mm/s.
        var machine = Samples.Machine with { FeedMostXY = 1000, AccelerationXY = 500 };
        var seconds = MotionTime.Seconds([Line(new(0, 0, 0), new(100, 0, 0), 50), Line(new(100, 0, 0), new(100, 100, 0), 50)], machine);
        Assert.Equal(2 * MotionTime.Trapezoid(100, 0, 3.4743442, 50, 500), seconds, 7);
    }

    [Fact]
    public void An_arc_is_no_faster_than_its_radius_allows()
    {
        // a 500, R 5: 50 mm/s (v = √(aR)). A full turn of 31.4159 mm from rest: d/v + v/a.
        var machine = Samples.Machine with { FeedMostXY = 1000, AccelerationXY = 500 };
        var turn = new Motion(MotionKind.ArcCounterClockwise, new(5, 0, 0), new(5, 0, 0), new(0, 0), 200);
        Assert.Equal(10 * Math.PI / 50 + 50 / 500.0, MotionTime.Seconds([turn], machine), 8);
    }

    [Fact]
    public void A_straight_line_cut_in_pieces_takes_the_same_time() => Gen.Select(Gen.Double[1, 300], Gen.Int[1, 20], Gen.Double[5, 100]).Sample((length, pieces, feed) =>
    {
        WorkPoint At(int i) => new(length * i / pieces, 0, 0);
        var whole = MotionTime.Seconds([Line(At(0), At(pieces), feed)], Samples.Machine);
        var cut = MotionTime.Seconds([.. Enumerable.Range(0, pieces).Select(i => Line(At(i), At(i + 1), feed))], Samples.Machine);
        return Math.Abs(whole - cut) < 1e-6;
    });

    [Fact]
    public void No_chain_is_faster_than_its_length_at_its_feed() => Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[0, 20]).Array[2, 12].Sample(points =>
    {
        var motions = points.Zip(points.Skip(1), (a, b) => Line(new(a.Item1, a.Item2, a.Item3), new(b.Item1, b.Item2, b.Item3), 30)).ToArray();
        return MotionTime.Seconds(motions, Samples.Machine) >= motions.Sum(m => m.Length) / 30 - 1e-9;
    });

    [Fact]
    public void The_motions_share_the_whole_time_between_them() => Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[0, 20]).Array[2, 12].Sample(points =>
    {
        var motions = points.Zip(points.Skip(1), (a, b) => Line(new(a.Item1, a.Item2, a.Item3), new(b.Item1, b.Item2, b.Item3), 30)).ToArray();
        var each = MotionTime.Each([motions[0], motions[0] with { From = motions[0].To }, .. motions[1..]], Samples.Machine);
        return each.Length == motions.Length + 1 && each[1] == 0 && each.All(s => s >= 0) && Math.Abs(each.Sum() - MotionTime.Seconds(motions, Samples.Machine)) < 1e-9;
    });

    private static Motion Line(WorkPoint from, WorkPoint to, double feed) => new(MotionKind.Line, from, to, default, feed);
}
