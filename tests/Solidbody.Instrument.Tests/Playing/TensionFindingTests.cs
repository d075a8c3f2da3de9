namespace Solidbody.Instrument.Tests.Playing;

/// <summary>Each finding about the strings' pull fires when one figure of the strung band guitar is spoilt, and only then.</summary>
public class TensionFindingTests
{
    private static InstrumentDefinition G => Workshop.Strung;

    private static readonly Dictionary<string, InstrumentDefinition> Spoilt = new()
    {
        ["TENSION-01"] = G with { Tuning = null },
    };

    public static TheoryData<string> Codes => [.. Spoilt.Keys];

    [Theory, MemberData(nameof(Codes))]
    public void A_spoilt_figure_is_found(string code) => Fires.OnlyWhenSpoilt(code, G, Spoilt[code]);
}
