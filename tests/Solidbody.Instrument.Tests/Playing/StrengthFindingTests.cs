using Solidbody.Findings;
using Solidbody.Materials;

namespace Solidbody.Instrument.Tests.Playing;

/// <summary>Each finding about the neck's strength fires when one figure of the strung band guitar is spoilt, and only then.</summary>
public class StrengthFindingTests
{
    private static InstrumentDefinition G => Workshop.Strung;
    private static InstrumentDefinition Rod(Func<RodDefinition, RodDefinition> change) => G with { Neck = G.Neck with { Rod = change(G.Neck.Rod) } };
    private static InstrumentDefinition Bars(Func<BarsDefinition, BarsDefinition> change) => G with { Neck = G.Neck with { Bars = change(new(2, 3, 8, 0, 10.5, 15, 400, NeckIron.Carbon)) } };
    private static InstrumentDefinition Maple(Func<Wood, Wood> change) => G with { Woods = [new(change(Woods.Find("sugar-maple")!))] };

    private static readonly (string Code, InstrumentDefinition Spoilt)[] Spoilt =
    [
        ("STRENGTH-01", G with { Neck = G.Neck with { Wood = "wenge" } }),
        ("STRENGTH-02", G with { Tuning = Workshop.SixStrings with { Strings = [.. Workshop.SixStrings.Strings.Select(s => s with { UnitMass = 0.008 * Math.Pow(2, (40 - s.Note.Number) / 6.0) * 3 })] } }),
        ("STRENGTH-03", Rod(r => r with { Capacity = 200 })),
        ("STRENGTH-04", Rod(r => r with { Kind = RodKind.SingleAction }) with { Action = G.Action with { Relief = 0.9 } }),
        ("STRENGTH-05", Maple(w => w with { BendingStrength = new(20, Known.Given, "test") })),
        ("STRENGTH-06", Maple(w => w with { BendingStrength = null })),
        ("STRENGTH-07", Bars(b => b with { Height = 11 })),
        ("STRENGTH-07", Bars(b => b with { End = 461 })),
        ("STRENGTH-08", Bars(b => b with { Offset = 5.5 })),
        ("STRENGTH-08", Bars(b => b with { Offset = 16, End = 440 })),
        ("STRENGTH-09", Rod(r => r with { Diameter = 9.5 })),
        ("STRENGTH-10", Rod(r => r with { Diameter = 5.5 })),
    ];

    public static TheoryData<int> Places => [.. Enumerable.Range(0, Spoilt.Length)];

    [Theory, MemberData(nameof(Places))]
    public void A_spoilt_figure_is_found(int place) => Fires.OnlyWhenSpoilt(Spoilt[place].Code, G, Spoilt[place].Spoilt);

    [Fact]
    public void Neither_the_strung_guitar_nor_good_bars_are_at_fault() =>
        Assert.All([G, Bars(b => b)], d => Assert.DoesNotContain(Designer.Design(d).Findings, f => f.Code.StartsWith("STRENGTH", StringComparison.Ordinal)));

    /// <summary>One bar can only pull: more relief than the strings give it cannot make. Two can push.</summary>
    [Fact]
    public void Two_bars_can_bend_the_neck_forward() =>
        Assert.DoesNotContain(Designer.Design(G with { Action = G.Action with { Relief = 0.9 } }).Findings, f => f.Code is "STRENGTH-04");

    [Fact]
    public void What_is_missing_of_a_wood_is_a_note_not_a_fault() =>
        Assert.All(((string[])["wenge", "ebony", "padauk"]).Select(w => Designer.Design(G with { Neck = G.Neck with { Wood = w } })), d => Assert.Equal(Severity.Notes, d.Findings.Single(f => f.Code == "STRENGTH-01").Severity));

    [Fact]
    public void Bars_are_channels_of_the_neck_with_measures_of_their_own()
    {
        var neck = Designer.Design(Bars(b => b with { Below = 1 })).Part("neck");
        Assert.Equal(["bass bar channel", "treble bar channel"], neck.Pockets.Select(p => p.Name).Where(n => n.Contains("bar channel", StringComparison.Ordinal)));
        Assert.Equal(4, neck.Measures.Count(m => m.Name.Contains("bar channel", StringComparison.Ordinal)));
        Assert.All([-10.5, 10.5], y => Assert.Equal(-9, new PartShape(neck).At(new(200, y)).Top, 12));
    }
}
