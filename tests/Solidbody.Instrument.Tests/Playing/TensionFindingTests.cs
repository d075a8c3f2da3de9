namespace Solidbody.Instrument.Tests.Playing;

/// <summary>Each finding about the strings' pull fires when one figure of the strung band guitar is spoilt, and only then.</summary>
public class TensionFindingTests
{
    private static InstrumentDefinition G => Workshop.Strung;
    private static InstrumentDefinition String(int number, Func<StringDefinition, StringDefinition> change) =>
        G with { Tuning = Workshop.SixStrings with { Strings = Workshop.SixStrings.Strings.SetItem(number - 1, change(Workshop.SixStrings.Strings[number - 1])) } };

    private static readonly Dictionary<string, InstrumentDefinition> Spoilt = new()
    {
        ["TENSION-01"] = G with { Tuning = null },
        // Plain steel of 0.010 in on 635 mm breaks 5.7 semitones above E4: A#4 is six above.
        ["TENSION-02"] = String(6, s => s with { Note = new(70) }),
        // From two semitones below that on, a bend by a whole tone is too much.
        ["TENSION-03"] = String(6, s => s with { Note = new(68) }),
        ["TENSION-04"] = String(1, s => s with { Core = 0.8 }),
        ["TENSION-05"] = String(2, s => s with { Core = null }),
        ["TENSION-06"] = String(4, s => s with { Gauge = 0.56 }),
        ["TENSION-07"] = String(1, s => s with { UnitMass = 0.04 }),
        ["TENSION-08"] = String(5, s => s with { Gauge = 0.2 }),
    };

    public static TheoryData<string> Codes => [.. Spoilt.Keys];

    [Theory, MemberData(nameof(Codes))]
    public void A_spoilt_figure_is_found(string code) => Fires.OnlyWhenSpoilt(code, G, Spoilt[code]);

    [Fact]
    public void The_strung_guitar_has_no_fault_of_its_strings() =>
        Assert.DoesNotContain(Designer.Design(G).Findings, f => f.Code.StartsWith("TENSION", StringComparison.Ordinal));

    /// <summary>One semitone tells the two apart: five above E4 holds with little margin, six breaks.</summary>
    [Theory, InlineData(67, ""), InlineData(69, "TENSION-03"), InlineData(70, "TENSION-02")]
    public void Margin_is_told_before_the_break(int note, string code) =>
        Assert.Equal(code, string.Join(",", Designer.Design(String(6, s => s with { Note = new(note) })).Findings.Select(f => f.Code).Where(c => c is "TENSION-02" or "TENSION-03")));

    [Fact]
    public void A_tuning_the_file_names_is_judged_too()
    {
        var tuned = G with { Tuning = Workshop.SixStrings with { Also = [new("high", [new(40), new(45), new(50), new(55), new(59), new(71)])] } };
        Assert.Equal("string B4 (6 from the lowest), tuned to high", Fires.OnlyWhenSpoilt("TENSION-02", G, tuned).Place);
    }
}
