using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;
using Solidbody.Materials;
using Solidbody.Shop;

namespace Solidbody.Machining.Tests.Feeds;

public class FeedPlannerTests
{
    private static readonly Gen<Machine> Machines = Gen.Select(Gen.Double[5, 60], Gen.Double[3, 40], Gen.Double[100, 200], Gen.Double[210, 500], Gen.Double[100, 1500])
        .Select((xy, z, least, most, power) => Samples.Machine with { FeedMostXY = xy, FeedMostZ = z, SpindleSpeedLeast = least, SpindleSpeedMost = most, SpindlePower = power });
    private static readonly Gen<Cutter> Cutters = Gen.Int[0, Samples.Shop.Cutters.Length - 1].Select(i => Samples.Shop.Cutters[i]);
    private static readonly Gen<WoodOnHand> OfWoods = Gen.Select(Gen.Int[0, Woods.All.Length - 1].Select(i => Woods.All[i]), Gen.Double[0.4, 1.6]).Select((w, k) => new WoodOnHand(w.Key, k));

    [Fact]
    public void Feeds_stay_inside_what_spindle_and_axes_can_do() => Gen.Select(Cutters, OfWoods, Machines).Sample((cutter, wood, machine) =>
    {
        var feeds = FeedPlanner.For(cutter, wood, Samples.Shop with { Machine = machine });
        return feeds.Feed <= (cutter.Kind == CutterKind.Drill ? machine.FeedMostZ : machine.FeedMostXY) + 1e-9 && feeds.PlungeFeed <= machine.FeedMostZ + 1e-9 && feeds.PlungeFeed > 0
            && feeds.SpindleSpeed >= machine.SpindleSpeedLeast - 1e-9 && feeds.SpindleSpeed <= machine.SpindleSpeedMost + 1e-9
            && feeds.Power <= 0.8 * machine.SpindlePower + 1e-9
            && feeds.StepDown > 0 && (cutter.Kind == CutterKind.Drill || feeds.StepDown <= cutter.FluteLength);
    });

    [Fact]
    public void What_is_said_in_the_program_is_what_is_planned() => Gen.Select(Cutters, OfWoods, Machines).Sample((cutter, wood, machine) =>
    {
        var feeds = FeedPlanner.For(cutter, wood, Samples.Shop with { Machine = machine });
        return IsWhole(feeds.Feed * 60) && IsWhole(feeds.PlungeFeed * 60) && IsWhole(feeds.SpindleSpeed * 60);
    });

    [Fact]
    public void The_chip_is_the_wanted_one_where_the_axes_can_follow()
    {
        // 6 mm, two flutes, middle of 0.08 … 0.25 mm: 0.165 mm; 18 000 turns a minute ask for 5940 mm/min, the machine gives 4000:
        // the spindle slows to 4000/(0.165·2) = 12 121 turns a minute and the chip stays (to a whole turn and a whole mm/min).
        var machine = Samples.Machine with { FeedMostXY = 4000 / 60.0, SpindleSpeedLeast = 8000 / 60.0 };
        var feeds = FeedPlanner.For(Samples.Cutter("flat 6"), new("yellow-poplar", 1), Samples.Shop with { Machine = machine });
        Assert.Equal(12121, feeds.SpindleSpeed * 60, 6);
        Assert.Equal(0.165, feeds.ChipLoad, 4);
    }

    [Fact]
    public void A_weak_spindle_gets_shallower_steps()
    {
        // 40 N/mm² · 12 mm · ap · 50 mm/s = 24 W a mm; 0.8 · 60 W = 48 W allow 2 mm.
        var machine = Samples.Machine with { FeedMostXY = 50, SpindlePower = 60 };
        var feeds = FeedPlanner.For(Samples.Cutter("flat 12"), new("black-walnut", 1, new(15, 40)), Samples.Shop with { Machine = machine });
        Assert.Equal(50, feeds.Feed, 9);
        Assert.Equal(2, feeds.StepDown, 9);
    }

    private static bool IsWhole(double x) => Math.Abs(x - Math.Round(x)) < 1e-6;
}
