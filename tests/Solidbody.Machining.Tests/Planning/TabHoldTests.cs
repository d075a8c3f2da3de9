using Solidbody.Findings;
using Solidbody.Machining.Planning;
using Solidbody.Machining.Tests.Toolpaths;
using Solidbody.Materials;

namespace Solidbody.Machining.Tests.Planning;

/// <summary>Whether tabs hold the part against the cut that frees it.</summary>
public class TabHoldTests
{
    [Theory] // Tension square to the grain at 12 %, kPa: Wood Handbook, table 5-3a, from memory. The function is a fit over all hardwoods.
    [InlineData(0.41, 2900)]   // red alder
    [InlineData(0.42, 3700)]   // yellow-poplar
    [InlineData(0.60, 6500)]   // white ash
    [InlineData(0.37, 2400)]   // American basswood
    public void Tension_across_the_grain_is_near_the_handbooks_rows(double gravity, double kilopascals) =>
        Assert.InRange(AcrossTheGrain.Tension(gravity) / (kilopascals / 1000), 0.67, 1.5);

    [Fact] // A beam held at both ends of a span w, its ends moved apart by V: moment V·w/2; stress M/(L·t²/6). Worked for L + t = 12, t = 2, w = 6, σ = 4.
    public void A_tab_is_a_beam_over_the_groove()
    {
        var hold = TabHold.Of(1, 10, 2, Given.Flat(6), 40, 4);
        Assert.Equal(12, hold.Lift, 9);
        Assert.Equal(4 * 12 * 2, hold.BearsPush, 9);
        Assert.Equal(1.5 * 4 * (12 * 4 / 6.0) / (6 / 2.0), hold.BearsLift, 9);
        Assert.Equal(0, TabHold.Of(1, 10, 2, Given.Flat(6) with { Kind = Geometry.CutterKind.Straight }, 40, 4).Lift);
    }

    [Fact]
    public void Thin_tabs_stop_thicker_ones_of_the_said_size_do_not()
    {
        var weak = OnFourTabs(0.9)!;
        Assert.Equal(Severity.Stops, weak.Severity);
        var said = double.Parse(weak.Remedy.Split("tab_thickness = ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Null(OnFourTabs(said));
        Assert.NotNull(OnFourTabs(0.8 * said));
    }

    private static Finding? OnFourTabs(double thickness)
    {
        var hold = TabHold.Of(4, 10, thickness, Given.Flat(12), 100, AcrossTheGrain.Tension(0.4));
        return hold.Safety < TabFindings.Safe ? TabFindings.Weak("body", hold, 4, 10, thickness) : null;
    }

    [Fact]
    public void The_planner_asks_for_every_part_on_tabs()
    {
        var thin = Planner.Plan(SampleParts.Design, Samples.Shop with { Outline = new(TabThickness: 1) });
        Assert.Contains(thin.Findings, f => f.Code == "TAB-01");
        Assert.DoesNotContain(Planner.Plan(SampleParts.Design, Samples.Shop with { Outline = new(TabThickness: 6) }).Findings, f => f.Code == "TAB-01" && f.Severity == Severity.Stops);
    }
}
