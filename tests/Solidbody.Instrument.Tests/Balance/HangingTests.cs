using CsCheck;
using Solidbody.Instrument.Balance;

namespace Solidbody.Instrument.Tests.Balance;

public class HangingTests
{
    /// <summary>Buttons 600 mm apart on a level line, strap 1,000 mm: an ellipse of half axes 500 and 400 mm. y grows downward when the neck is level.</summary>
    private static Hanging With(double centreX, double grip, double below = 60) => new(new(0, 0), new(600, 0), new(centreX, below), 1000, grip);

    /// <summary>Worked by hand. Centre of gravity 100 mm from the middle toward the horn: focal distances 500 ∓ 0.6·100 = 440 and 560 mm, level offsets 200 and 400 mm,
    /// so T₁/T₂ = (400/560)/(200/440) = 11/7. By the cosine law the legs enclose acos((440² + 560² − 600²)/(2·440·560)) = 72.6203°: the strap turns by 107.3797°.</summary>
    [Fact]
    public void The_pulls_are_those_of_the_triangle()
    {
        Assert.Equal(1, With(300, 0.3).PullRatio(0)!.Value, 12);
        Assert.Equal(11.0 / 7, With(200, 0.3).PullRatio(0)!.Value, 12);
        Assert.Equal(7.0 / 11, With(400, 0.3).PullRatio(0)!.Value, 12);
        Assert.Equal(Math.Exp(0.3 * double.DegreesToRadians(107.3797)), With(200, 0.3).MostRatio(0)!.Value, 5);
        Assert.Null(With(-10, 0.3).PullRatio(0));
    }

    [Fact] // 11/7 = 1.571 lies between e^(0.2·1.874) = 1.455 and e^(0.3·1.874) = 1.755.
    public void Grip_decides_whether_it_stays()
    {
        Assert.Equal(0, With(200, 0.3).RestsAt(0));
        Assert.True(With(200, 0.2).RestsAt(0) < 0);
        Assert.True(With(400, 0.2).RestsAt(0) > 0);
        Assert.Equal(-Math.PI / 2, With(-50, 0.3, below: 0).RestsAt(0), 9);
    }

    /// <summary>A very long strap that slides freely hangs it as a pendulum from the middle between the buttons: 20 mm tailward and 100 mm below, tan 11.31° = 20/100.</summary>
    [Fact]
    public void A_long_free_strap_is_a_pendulum()
    {
        var hang = new Hanging(new(0, 0), new(600, 0), new(320, 100), 1e7, 0);
        Assert.Equal(Math.Atan(0.2), hang.RestsAt(0), 4);
    }

    [Fact] // Free strap, level: S over the middle. Moments about it: the hand 700 mm toward the nut bears 100/700 of the weight.
    public void A_hand_at_the_nut_bears_what_the_lever_says()
    {
        Assert.Equal(1.0 / 7, With(200, 0).HandShare(0, new(-400, 0)), 9);
        Assert.Equal(0, With(200, 0.3).HandShare(0, new(-400, 0)));
        Assert.Equal(0, With(400, 0).HandShare(0, new(-400, 0)));
    }

    /// <summary>Statics by another road: where it rests on a free strap no small turn lets the centre of gravity sink below the shoulder.</summary>
    [Fact]
    public void A_free_strap_rests_where_the_weight_hangs_lowest() => Gen.Select(Gen.Double[220, 380], Gen.Double[150, 400], Gen.Double[900, 2000]).Sample((x, below, strap) =>
    {
        var hang = new Hanging(new(0, 0), new(600, 0), new(x, below), strap, 0);
        var rests = hang.RestsAt(0);
        if (Math.Abs(rests) > 1.4) return;
        double Drop(double angle)
        {
            // The farthest the centre can hang below a point of the ellipse that lies upright over it, by bisection in the plan.
            var (neck, up) = (Hanging.Toward(angle), Hanging.Up(angle));
            var (low, high) = (Math.Max(hang.Horn.Dot(up), hang.Tail.Dot(up)), strap + 1000);
            for (var i = 0; i < 80; i++)
            {
                var s = (low + high) / 2;
                var at = hang.Centre.Dot(neck) * neck + s * up;
                if (at.DistanceTo(hang.Horn) + at.DistanceTo(hang.Tail) < strap) low = s; else high = s;
            }
            return low - hang.Centre.Dot(up);
        }
        Assert.True(Drop(rests) >= Drop(rests - 0.01) - 1e-9 && Drop(rests) >= Drop(rests + 0.01) - 1e-9, $"{hang} rests at {rests}");
    }, iter: 200);

    [Fact]
    public void Any_hanging_gives_finite_figures() => Gen.Select(Gen.Double[-400, 900], Gen.Double[-200, 300], Gen.Double[900, 2000], Gen.Double[0, 1], Gen.Double[-0.5, 1]).Sample((x, y, strap, grip, angle) =>
    {
        var hang = new Hanging(new(300, -110), new(770, 30), new(x, y), strap, grip);
        var (lowest, highest) = hang.Held(angle);
        double[] figures = [hang.RestsAt(angle), lowest, highest, hang.HandShare(angle, new(0, 0))];
        Assert.All(figures, f => Assert.True(double.IsFinite(f), $"{hang}: {f}"));
        Assert.InRange(hang.RestsAt(angle), -Math.PI / 2, Math.PI / 2);
    }, iter: 500);
}
