using System.Globalization;
using CsCheck;
using Solidbody.Instrument.Files;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Tests.Fretboards;

/// <summary>Nut, frets, board's ends and scale line on single scales and fans.</summary>
public class FretLayoutTests
{
    private static InstrumentDefinition Read(string more) =>
        InstrumentFile.Read($"units = \"mm\"\nname = \"fan\"\n{more}", "fan.toml").Good;

    private static FretLayout Fan(double bass, double treble, double square, int strings, int frets) => FretLayout.Of(Read(string.Create(CultureInfo.InvariantCulture,
        $"scale_bass = {bass}\nscale_treble = {treble}\nperpendicular_fret = {square}\nstrings = {strings}\nfrets = {frets}\n")));

    private static readonly Gen<FretLayout> AnyFan = Gen.Select(Gen.Double[620, 900], Gen.Double[0, 60], Gen.Double[0, 14], Gen.Int[4, 9], Gen.Int[12, 29])
        .Select((bass, less, square, strings, frets) => Fan(Math.Round(bass, 3), Math.Round(bass - less, 3), Math.Round(square, 2), strings, frets));

    // d_n = L (1 − 2^(−n/12)) of every string's own length: twelve-tone equal temperament (reference tables: FretTableTests).
    [Fact]
    public void Every_string_crosses_every_straight_fret_at_its_own_twelve_tone_place() => AnyFan.Sample(layout =>
    {
        for (var fret = 0; fret <= layout.Frets; fret++)
        {
            var line = layout.Fret(fret);
            for (var i = 0; i < layout.Strings.Count; i++)
            {
                // Where string and fret meet, found as the crossing of two straight lines.
                var (nut, run) = (layout.Strings.Nut(i), layout.Strings.Saddle(i) - layout.Strings.Nut(i));
                var t = (line.X(nut.Y) - nut.X) / (run.X - line.Slope * run.Y);
                var length = layout.Strings.Length(i);
                Assert.Equal(FretTable.Position(length, fret), t * length, 1e-9);
            }
        }
    }, iter: 40);

    [Fact]
    public void Outer_scales_are_the_two_given_and_the_chosen_fret_stands_square()
    {
        var layout = Fan(686, 648, 7, 7, 24);
        Assert.Equal(686, layout.Strings.ScaleOf(0), 1e-9);
        Assert.Equal(648, layout.Strings.ScaleOf(6), 1e-9);
        Assert.Equal(667, layout.Strings.ScaleOf(3), 1e-9);
        Assert.Equal(0, layout.Fret(7).Slope, 1e-15);
        Assert.True(layout.Fret(0).Slope > 0 && layout.ScaleLine.Slope < 0, "the bass string begins nearer the tip and ends nearer the tail");
        // Oracle: reference table's d_12 = L/2 and d_24 = 3L/4, at the two outer strings.
        foreach (var (i, scale) in ((int, double)[])[(0, 686), (6, 648)])
        {
            Assert.Equal(scale / 2, layout.Strings.At(i, 0.5).X - layout.Strings.Nut(i).X, 1e-9);
            Assert.Equal(0.75 * scale, layout.Fret(24).X(layout.Strings.At(i, 0.75).Y) - layout.Strings.Nut(i).X, 1e-9);
        }
    }

    [Fact]
    public void Two_equal_scales_are_a_single_scale() =>
        Assert.Equal(Designer.Design(Read("scale = 648\n")).Part("fretboard").Slots, Designer.Design(Read("scale_bass = 648\nscale_treble = 648\n")).Part("fretboard").Slots);

    // Oracle: docs of the trade's linear spread, spread 35 mm at the nut and 52.5 mm at the bridge: 43.75 at fret 12, 47.5892285 at fret 22, 48.125 at fret 24
    // (worked out apart with python3: 35 + 17.5 (1 − 2^(−n/12))).
    [Theory]
    [InlineData(12, 43.75)]
    [InlineData(22, 47.5892285)]
    [InlineData(24, 48.125)]
    public void Strings_spread_evenly_toward_the_bridge(int fret, double spread)
    {
        var strings = new Strings(6, 647.7, 35, 52.5);
        Assert.Equal(spread, strings.Spread(FretTable.Position(647.7, fret)), 5e-8);
    }

    // Oracle: python3 -c "print(L*(1-2**(-n/12)))" for L = 647.7 (25.5 in), n = 24, 27, 29; formula as in FretTableTests.
    [Theory]
    [InlineData(24, 485.7750)]
    [InlineData(27, 511.5378)]
    [InlineData(29, 526.3933)]
    public void Frets_beyond_two_octaves_stand_where_the_formula_says(int fret, double x) => Assert.Equal(x, FretTable.Position(647.7, fret), 5e-5);

    [Fact]
    public void Slots_end_on_both_sides_beyond_the_edge_or_as_far_inside_as_asked() => AnyFan.Sample(layout =>
    {
        foreach (var side in (int[])[-1, 1])
            for (var fret = 0; fret <= layout.Frets; fret++)
            {
                Assert.Equal(0, layout.ToEdge(layout.AtEdge(layout.Fret(fret), side), side), 1e-9);
                Assert.Equal(2.5, layout.ToEdge(layout.InsideEdge(layout.Fret(fret), side, 2.5), side), 1e-9);
            }
    }, iter: 20);

    [Fact]
    public void Gaps_between_strings_are_equal_when_asked()
    {
        var gauges = (double[])[1.07, 0.81, 0.61, 0.43, 0.33, 0.25];
        var tuning = new TuningDefinition(440, [.. gauges.Select(g => new StringDefinition(new(40), g))]);
        var d = Workshop.Guitar with { Tuning = tuning, Nut = Workshop.Guitar.Nut with { Spacing = NutSpacing.Gaps } };
        var strings = Strings.Of(d);
        Assert.Equal(-d.Nut.StringSpread / 2, strings.NutY(0), 1e-12);
        Assert.Equal(d.Nut.StringSpread / 2, strings.NutY(5), 1e-9);
        var gaps = Enumerable.Range(0, 5).Select(i => strings.NutY(i + 1) - gauges[i + 1] / 2 - strings.NutY(i) - gauges[i] / 2).ToArray();
        Assert.All(gaps, g => Assert.Equal(gaps[0], g, 1e-9));
        // 35.5 less all of four strings and half of the outer two, over five gaps: by hand 35.5 − 2.84 = 32.66, 6.532 each.
        Assert.Equal(6.532, gaps[0], 1e-9);
    }
}
