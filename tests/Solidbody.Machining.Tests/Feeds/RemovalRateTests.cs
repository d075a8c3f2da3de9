using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;
using Solidbody.Materials;
using Solidbody.Shop;

namespace Solidbody.Machining.Tests.Feeds;

public class RemovalRateTests
{
    private static readonly Cutter[] Routers = [.. Samples.Shop.Cutters.Where(c => c.Kind != CutterKind.Drill)];
    private static readonly Gen<Cutter> OfCutters = Gen.Int[0, Routers.Length - 1].Select(i => Routers[i]);
    private static readonly Gen<Wood> OfWoods = Gen.Int[0, Woods.All.Length - 1].Select(i => Woods.All[i]);
    private static readonly WoodOnHand Alder = new("red-alder", 1);

    [Fact] // 12 mm cutter, 6 mm deep, slot, 60 mm/s: 12·6·60.
    public void The_rate_of_a_slot_is_section_times_feed() =>
        Assert.Equal(12 * 6 * 60, RemovalRate.Greatest(Samples.Cutter("flat 12"), Alder, Samples.Shop with { Machine = Samples.Machine with { SideForce = 1000 } }), 6);

    [Fact] // Drill 8 mm: cutting speed 3 m/s is 119.37 turns a second, under the least of 133.33; 0.16 mm a turn: 21.333 mm/s.
    public void The_rate_of_a_drill_is_its_bores_section_times_its_feed() =>
        Assert.Equal(Math.PI / 4 * 64 * 1280 / 60, RemovalRate.Greatest(Samples.Cutter("drill 8"), Alder, Samples.Shop), 6);

    // Against a search over all bites: none removes more, to the whole mm/min feeds are rounded down to.
    [Fact]
    public void No_bite_inside_the_limits_removes_more() => Gen.Select(OfCutters, Gen.Int[1, 6], OfWoods,
        Gen.Double[5, 400], Gen.Double[20, 1500], Gen.Double[0.05, 1]).Sample((cutter, flutes, wood, push, power, share) =>
    {
        var shop = Samples.Shop with { Machine = Samples.Machine with { SideForce = push, SpindlePower = power } };
        var driven = new DrivenCutter(cutter with { Flutes = flutes }, new(wood.Key, 1), shop);
        var widest = share * driven.EdgeDiameter;
        var greatest = RemovalRate.Greatest(driven.Cutter, new(wood.Key, 1), shop, widest);
        for (var i = 1; i <= 12; i++)
            for (var k = 1; k <= 12; k++)
            {
                var bite = new Bite(driven.StepDown * i / 12, widest * k / 12);
                if (bite.Depth * bite.Width * driven.Feed(bite, Pass.Roughing) > greatest + driven.StepDown * widest / 60) return false;
            }
        return true;
    });
}
