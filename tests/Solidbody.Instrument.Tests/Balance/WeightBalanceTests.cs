using Solidbody.Geometry;
using Solidbody.Instrument.Balance;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Balance;

public class WeightBalanceTests
{
    private static InstrumentDefinition Read(string more) => InstrumentFile.Read("units = \"mm\"\nname = \"a\"\nscale = 635\n" + more, "a.toml").Good;
    private static InstrumentDefinition Sound { get; } = Read("");
    private static WeightBalance Of(InstrumentDefinition d) => Designer.Design(d).Figures.Balance!;

    [Fact] // Two weights on a lever: 1 kg at 0 and 3 kg at 400 mm balance at 300 mm.
    public void Weights_together_balance_by_the_lever()
    {
        var both = Weighed.Together("both", [new("a", 1, new(0, 0, 0)), new("b", 3, new(400, 40, -20))]);
        Assert.Equal((4, new PartPoint(300, 30, -15)), (both.Mass, both.Centre));
    }

    [Fact] // Alder at the workshop's 8.485 %: 1000·0.41·V(12)/V(8.485)·1.08485, the volumes 1 − 0.126·18/30 and 1 − 0.126·21.515/30 of the green.
    public void A_parts_mass_is_its_volume_times_its_density()
    {
        var body = Designer.Design(Sound).Part("body");
        var density = 410 * (1 - 0.126 * 18 / 30) / (1 - 0.126 * 21.514822 / 30) * 1.08485178e-9;
        Assert.Equal(density * PartVolume.Of(body).Volume, Of(Sound).Things.Single(t => t.Name == "body").Mass, 1e-6);
    }

    [Fact]
    public void A_left_handed_instrument_hangs_the_same()
    {
        var (right, left) = (Of(Sound), Of(Sound with { Hand = Hand.Left }));
        Assert.Equal(right.Whole, left.Whole);
        Assert.Equal(right.Hangs, left.Hangs);
        Assert.Equal(right.Sits, left.Sits);
    }

    [Fact]
    public void Changes_pull_the_way_they_should()
    {
        var b = Of(Sound);
        BalanceChange Change(string what) => b.Changes.Single(c => c.What.StartsWith(what, StringComparison.Ordinal));
        Assert.Equal(b.Whole.Mass + 0.1, Change("100 g more at the tuners").Mass, 9);
        Assert.True(Change("100 g more at the tuners").HighestBy < 0);
        Assert.True(Change("100 g of holes behind the bridge").HighestBy < 0);
        Assert.True(Change("100 g more at the tail button").HighestBy > 0);
        Assert.True(Change("horn button 25 mm toward the nut").HighestBy > 0);
        Assert.True(Change("body of basswood").Mass < b.Whole.Mass && b.Whole.Mass < Change("body of white ash").Mass);
        // By the lever: 0.1 kg at the place of the tuners moves the centre by 0.1/(m + 0.1) of the way there.
        Assert.Equal(b.Whole.Centre.X + 0.1 / (b.Whole.Mass + 0.1) * (-Sound.Headstock.FirstPost - Sound.Headstock.TunerPitch - b.Whole.Centre.X), Change("100 g more at the tuners").CentreX, 6);
    }

    /// <summary>A body like an hourglass: lower bout 150 mm wide a side at x 600, waist 100 at x 450, upper bout 130 at x 300. Level, its waist is the lowest hollow;
    /// 4 kg at x 500 pull 4·9.80665·50 N·mm toward the tail.</summary>
    [Fact]
    public void On_the_knee_the_waist_bears_it()
    {
        var body = Loop.Of([new(250, -100), new(600, -150), new(680, -60), new(680, 60), new(600, 150), new(450, 100), new(300, 130), new(250, 60)]);
        var sits = Knee.Of(body, new("whole", 4, new(500, 0, 0)), 0);
        Assert.Equal(new Point2(450, 100), sits.At);
        Assert.Equal(-4 * 9.80665 * 50, sits.Moment, 6);
        Assert.Equal(-4 * 9.80665 * 50 / 450, sits.HandForce(0), 9);
        // Without a hollow it rests on its lowest point.
        Assert.Equal(150, Knee.Of(Loop.Of([new(250, -100), new(600, -150), new(600, 150), new(250, 100)]), new("whole", 4, new(500, 0, 0)), 0).At.Y);
    }

    [Fact]
    public void A_neck_that_drops_is_found()
    {
        var found = Fires.OnlyWhenSpoilt("BALANCE-01", Sound, Sound with { Weights = Sound.Weights with { Tuner = 0.12 } });
        Assert.StartsWith("let go at 20.0°, the neck drops to -", found.Figure, StringComparison.Ordinal);
    }

    [Fact] public void A_neck_that_rises_is_found() => Fires.OnlyWhenSpoilt("BALANCE-02", Sound, Sound with { Weights = Sound.Weights with { Bridge = 3 }, Hanging = Sound.Hanging with { Grip = 0.1 } });
    [Fact] public void An_instrument_with_one_button_is_found() => Fires.OnlyWhenSpoilt("BALANCE-03", Sound, Sound with { Body = Sound.Body with { StrapButtons = [Sound.Body.StrapButtons[0]] } });
    [Fact] public void A_strap_that_does_not_reach_is_found() => Fires.OnlyWhenSpoilt("BALANCE-03", Sound, Sound with { Hanging = Sound.Hanging with { Strap = 450 } });
    [Fact] public void A_head_that_drops_on_the_knee_is_found() => Fires.OnlyWhenSpoilt("BALANCE-04", Sound, Sound with { Weights = Sound.Weights with { Tuner = 0.4 } });

    [Fact]
    public void Without_a_density_nothing_is_made_up() => Assert.Null(Designer.Design(Read("[fretboard]\nwood = \"ebony\"\n")).Figures.Balance);

    [Fact]
    public void Weights_are_read_in_their_units()
    {
        var d = Read("[weights]\ntuner = \"1.5 oz\"\nbridge = \"0.4 kg\"\n[hanging]\nstrap = \"50 in\"\nangle = \"10 deg\"\ngrip = 0.5\n");
        Assert.Equal(0.042524, d.Weights.Tuner, 6);
        Assert.Equal(0.4, d.Weights.Bridge, 12);
        Assert.Equal((1270, 0.5), (d.Hanging.Strap, d.Hanging.Grip));
        Assert.Equal(Math.PI / 18, d.Hanging.Angle, 12);
    }
}
