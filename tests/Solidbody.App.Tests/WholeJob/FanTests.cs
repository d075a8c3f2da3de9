using Solidbody.Findings;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>The whole job where nothing is square: a left-handed fanned nine-string with a zero fret, blind slots, and a board that ends along its last fret over the body.</summary>
public sealed class FanTests
{
    private const string Fan = """
        units = "mm"
        name = "Fan nine"
        hand = "left"
        strings = 9
        scale_bass = 720
        scale_treble = 672
        perpendicular_fret = 8
        frets = 29
        nut.zero_fret = true
        fretboard.blind_slots = true
        fretboard.end = "along-last-fret"
        fretboard.overhang = 3

        """;

    private static readonly Lazy<Job> Made = new(() => Job.Of(Fan, AnyInstrument.LargeShop, Job.Coarse));

    [Fact]
    public void It_is_made_and_proved()
    {
        // So long a neck of nine tuners hangs head down, and may say so.
        Assert.DoesNotContain(Made.Value.Findings, f => f.Severity != Severity.Notes && f.Code != "BALANCE-01");
        Assert.True(Made.Value.Proof.Passes && Made.Value.Proof.Parts.Length == 3);
        Programs.StayInside(Made.Value);
    }

    // By hand, from twelve-tone equal temperament: the middle scale is 696, half the difference 24, the square fret 8 at the share s = 1 − 2^(−8/12) = 0.370039.
    // A line at the share r leans by −2 (r − s) 24 / w; spreads 56.8 (8 × 7.1) at the nut and 84 (8 × 10.5) at the bridge give w(0) = 56.8, w(1/2) = 70.4.
    // Fret 12 on a line 28.4 to the bass side: x = 348 + 2 · 0.129961 · 24 · 28.4/70.4 = 350.5165; the nut there: −2 · 0.370039 · 24 · 28.4/56.8 = −8.8809.
    [Theory]
    [InlineData("fret 12 from the nut, 28.4 mm to the bass side", 350.5165 + 8.8809)]
    [InlineData("fret 12 from the nut, 28.4 mm to the treble side", 345.4835 - 8.8809)]
    public void Its_frets_are_measured_on_the_wood_where_the_fan_puts_them(string name, double expected)
    {
        var measure = Made.Value.Proof.Parts.Single(p => p.Part == "fretboard").Measures.Single(m => m.Name == name);
        Assert.Equal(expected, measure.Expected, 0.001);
        Assert.Equal(expected, measure.Measured, 0.1);
    }
}
