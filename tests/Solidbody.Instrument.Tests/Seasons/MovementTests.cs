using Solidbody.Instrument.Files;
using Solidbody.Instrument.Seasons;
using Solidbody.Materials;

namespace Solidbody.Instrument.Tests.Seasons;

public class MovementTests
{
    private static InstrumentDefinition G => Workshop.Guitar;
    /// <summary>Air whose moistures were worked apart from this code: 8.485178, 6.188214 and 11.996267 %.</summary>
    private static readonly SeasonsDefinition Known = new() { Built = new(20, 0.45), Driest = new(20, 0.30), Wettest = new(20, 0.65) };

    private static Movement Of(InstrumentDefinition d) => Designer.Design(d).Figures.Movement!;
    private static InstrumentDefinition Living(double driest, double wettest) => G with { Seasons = new() { Driest = new(21, driest), Wettest = new(24, wettest) } };

    /// <summary>Equation 13-2 by hand, flatsawn maple (0.00353) in flatsawn alder (0.00256): heel 56 mm, pocket 56.2 mm;
    /// dry 56·0.00353·2.296964 = 0.4541 and 56.2·0.00256·2.296964 = 0.3305; wet 56·0.00353·3.511089 = 0.6941 and 56.2·0.00256·3.511089 = 0.5051.</summary>
    [Fact]
    public void The_pockets_play_is_the_difference_of_two_woods()
    {
        var pocket = Of(G with { Seasons = Known }).Pocket!;
        Assert.Equal(0.2, pocket.Built, 4);
        Assert.Equal(0.2 - 0.3305 + 0.4541, pocket.Driest!.Value, 4);
        Assert.Equal(0.2 + 0.5051 - 0.6941, pocket.Wettest!.Value, 2e-4);
    }

    [Fact] // By hand: 43 mm and 56 mm of quartersawn rosewood, C_R = 2.7/(3000 − 54) = 0.00091650.
    public void Widths_move_with_their_own_wood_and_grain()
    {
        var m = Of(G with { Seasons = Known });
        Assert.Equal(43 * 0.0009165 * 3.511089, m.Widths.Single(w => w.What == "fretboard at the nut").Wet!.Value, 4);
        Assert.Equal(56 * 0.0009165 * 2.296964 / 2, m.FretEnds!.Value, 4);
        Assert.Equal(-43 * 0.00353 * 2.296964, m.Widths.Single(w => w.What == "neck at the nut").Dry!.Value, 4);
    }

    [Fact] // Turned by −27°, 120 mm and 52 mm between the ledge's walls: they part by 120·sin² and 52·cos² of what the alder's width does.
    public void A_ledge_moves_only_across_the_grain()
    {
        var m = Of(G with { Seasons = Known });
        Assert.Equal(0.5 - 120 * 0.20611 * 0.00256 * 2.296964, m.Cover[0].Driest!.Value, 2e-4);
        Assert.Equal(0.5 - 52 * 0.79389 * 0.00256 * 2.296964, m.Cover[1].Driest!.Value, 2e-4);
    }

    [Fact] // 0.2 % from green to ovendry, over 5.808 of 30 %: 635 mm change by 0.25 mm at most.
    public void The_scale_hardly_moves() => Assert.Equal(0.2459, Of(G with { Seasons = Known }).ScaleAtMost, 4);

    [Fact] // Beyond 14 % the coefficient does not hold: 330 mm of walnut from 30 % to 8 %, worked apart by equation 13-3.
    public void Far_from_the_coefficients_range_the_shrinkage_rules()
    {
        var walnut = Woods.Find("black-walnut")!;
        Assert.Equal(-18.876, Moisture.Change(walnut, Grain.Flat, 330, 30, 8)!.Value, 6);
        Assert.Equal(330 * 0.00274 * 3, Moisture.Change(walnut, Grain.Flat, 330, 8, 11)!.Value, 9);
        Assert.Equal(330 * 0.00190 * 3, Moisture.Change(walnut, Grain.Quarter, 330, 8, 11)!.Value, 9);
        Assert.Null(Moisture.Change(Woods.Find("wenge")!, Grain.Flat, 330, 8, 11));
    }

    [Fact] public void A_neck_that_jams_is_found() => Fires.OnlyWhenSpoilt("MOVE-01", G, Living(0.30, 0.85));
    [Fact] public void A_neck_that_stands_loose_is_found() => Fires.OnlyWhenSpoilt("MOVE-02", G, G with { Body = G.Body with { Pocket = G.Body.Pocket with { Clearance = 0.25 } } });
    [Fact] public void Fret_ends_that_stand_out_are_found() => Fires.OnlyWhenSpoilt("MOVE-03", G, G with { Fretboard = G.Fretboard with { Grain = Grain.Flat } });
    [Fact] public void A_cover_that_jams_is_found() => Fires.OnlyWhenSpoilt("MOVE-04", G, Living(0.05, 0.60));

    [Theory]
    [InlineData("WOOD-01")]
    [InlineData("WOOD-02")]
    [InlineData("WOOD-03")]
    public void A_wood_without_figures_is_found(string code)
    {
        var found = Fires.OnlyWhenSpoilt(code, G, G with { Fretboard = G.Fretboard with { Wood = "wenge" } });
        Assert.Contains("wenge", found.Figure, StringComparison.Ordinal);
        Assert.Equal("fretboard", found.Place);
    }

    [Fact]
    public void What_has_no_figures_is_left_out_and_the_rest_worked_out()
    {
        var m = Of(G with { Fretboard = G.Fretboard with { Wood = "ebony" } });
        Assert.Null(m.FretEnds);
        Assert.Null(m.Widths.Single(w => w.What == "fretboard at the nut").Dry);
        Assert.NotNull(m.Pocket!.Driest);
    }

    [Theory]
    [InlineData("driest.humidity = 60", "5,19: the driest air is wetter than the workshop's: wood settles at 11.0 %, in the workshop at 8.5 %")]
    [InlineData("wettest.humidity = 30", "5,20: the wettest air is drier than the workshop's: wood settles at 6.1 %, in the workshop at 8.5 %")]
    [InlineData("built.temperature = 20", "5,21: `seasons.built.temperature` is 20, not a temperature this file can hold")]
    public void Seasons_out_of_order_are_refused(string line, string told)
    {
        var m = Assert.Single(InstrumentFile.Read("units = \"mm\"\nname = \"a\"\nscale = 635\n[seasons]\n" + line + "\n", "a.toml").Mistakes);
        Assert.Equal(told, $"{m.Line},{m.Column}: {m.Wrong}");
    }

    [Fact]
    public void Seasons_are_read_in_either_unit()
    {
        var seasons = InstrumentFile.Read("units = \"mm\"\nname = \"a\"\nscale = 635\n[seasons]\nbuilt.temperature = \"68 F\"\nbuilt.humidity = 40\ndriest.humidity = 20\n[neck]\ngrain = \"quarter\"\n", "a.toml").Good;
        Assert.Equal(20, seasons.Seasons.Built.Temperature, 9);
        Assert.Equal((0.4, 0.2, 0.6), (seasons.Seasons.Built.Humidity, seasons.Seasons.Driest.Humidity, seasons.Seasons.Wettest.Humidity));
        Assert.Equal(Grain.Quarter, seasons.Neck.Grain);
    }
}
