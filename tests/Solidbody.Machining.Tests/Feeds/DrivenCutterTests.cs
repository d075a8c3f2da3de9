using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;
using Solidbody.Materials;
using Solidbody.Shop;

namespace Solidbody.Machining.Tests.Feeds;

public class DrivenCutterTests
{
    private static readonly Cutter[] Routers = [.. Samples.Shop.Cutters.Where(c => c.Kind != CutterKind.Drill)];
    private static readonly Gen<Cutter> OfCutters = Gen.Int[0, Routers.Length - 1].Select(i => Routers[i]);
    private static readonly Gen<Wood> OfWoods = Gen.Int[0, Woods.All.Length - 1].Select(i => Woods.All[i]);
    private static readonly Gen<DrivenCutter> Any = Gen.Select(OfCutters, OfWoods,
        Gen.Double[0.4, 1.6], Gen.Double[20, 400], Gen.Double[100, 1500], Gen.Double[5, 60]).Select((cutter, wood, chip, push, power, feed) =>
        new DrivenCutter(cutter, new(wood.Key, chip), Samples.Shop with { Machine = Samples.Machine with { SideForce = push, SpindlePower = power, FeedMostXY = feed } }));
    private static readonly Gen<Pass> Passes = Gen.Bool.Select(rough => rough ? Pass.Roughing : Pass.Finishing);

    [Fact] // A program cannot say less than 1 mm/min: there a limit may be passed.
    public void Any_bite_at_the_feed_given_for_it_stays_inside_every_limit() => Gen.Select(Any, Gen.Double[0.05, 1], Gen.Double[0.01, 1], Passes).Sample((driven, deep, wide, pass) =>
    {
        var bite = new Bite(deep * driven.Cutter.FluteLength, wide * driven.EdgeDiameter);
        var angle = Engagement.Angle(bite.Width, driven.EdgeDiameter);
        var feed = driven.Feed(bite, pass);
        return feed <= 1 / 60.0 + 1e-12 || (feed <= driven.Machine.FeedMostXY + 1e-9
            && driven.Chip(angle, feed) <= driven.WantedChip * (1 + 1e-9)
            && driven.ChipLoad(feed) <= Math.Max(driven.WantedChip, driven.Usual.Most) * (1 + 1e-9)
            && driven.Power(bite.Depth, angle, feed) <= driven.PowerLimit * (1 + 1e-9)
            && driven.Force(bite.Depth, angle, feed) <= driven.Machine.SideForce * (1 + 1e-9)
            && driven.Bending(bite.Depth, angle, feed) <= DrivenCutter.BendLimit(pass) * (1 + 1e-9)
            && driven.Stress(bite.Depth, angle, feed) <= driven.StressLimit * (1 + 1e-9));
    });

    [Fact]
    public void The_feed_never_grows_with_depth_or_engagement() => Gen.Select(Any, Gen.Double[0.05, 0.9], Gen.Double[0.05, 3], Gen.Double[0, 0.1], Passes).Sample((driven, deep, angle, more, pass) =>
    {
        var depth = deep * driven.Cutter.FluteLength;
        var feed = driven.FeedAt(depth, angle, pass);
        return driven.FeedAt(depth * (1 + more), angle, pass) <= feed && driven.FeedAt(depth, Math.Min(Math.PI, angle + more), pass) <= feed;
    });

    [Fact]
    public void A_narrow_bite_is_fed_faster_by_its_thinning_up_to_the_usual_chip_load()
    {
        // 3 mm, two flutes, chip 0.065 mm at 18 000 turns a minute: 39 mm/s. At ae = 0.6 mm, φ = 53.13° and the factor 1.25: 48.75 mm/s.
        // At ae = 0.1 mm the factor 2.785 would be 0.181 mm a tooth: the usual 0.10 mm bounds it, 60 mm/s.
        var driven = new DrivenCutter(Samples.Cutter("flat 3"), new("yellow-poplar", 1), Samples.Shop);
        Assert.Equal(39, driven.Feed(new(0.2, 3), Pass.Roughing), 6);
        Assert.Equal(48.75, driven.Feed(new(0.2, 0.6), Pass.Roughing), 6);
        Assert.Equal(60, driven.Feed(new(0.2, 0.1), Pass.Roughing), 6);
    }

    [Fact] // Force by hand: kc 40 N/mm², 3 mm deep, chip 0.1 mm, slot with two flutes: 12 N. Power of the same slot, 6 mm wide at 33.33 mm/s (2000 mm/min): 24.0 W, which at 5.6549 m/s is a mean of 4.244132 N.
    public void Force_and_power_agree_with_worked_values()
    {
        var shop = Samples.Shop with { Pinned = [new() { Cutter = "flat 6", SpindleSpeed = 300 }] };
        var driven = new DrivenCutter(Samples.Cutter("flat 6"), new("black-walnut", 1, new(15, 40)), shop);
        Assert.Equal(12, driven.Force(3, Math.PI, 60), 9);
        var power = driven.Power(3, Math.PI, 2000 / 60.0);
        Assert.Equal(24.0, power, 9);
        Assert.Equal(4.244132, power / (CuttingPhysics.CuttingSpeed(6, 300) / 1000), 6);
    }

    [Fact]
    public void A_wide_cutter_is_turned_no_faster_than_its_rim_may_run()
    {
        var wide = Samples.Cutter("flat 12") with { Name = "wide", Diameter = 60, ShankDiameter = 12, Flutes = 1 };
        var driven = new DrivenCutter(wide, new("red-alder", 0.3), Samples.Shop with { Machine = Samples.Machine with { FeedMostXY = 400 } });
        Assert.InRange(CuttingPhysics.CuttingSpeed(60, driven.SpindleSpeed), 49_900, 50_010);
    }
}
