using Solidbody.Findings;

namespace Solidbody.Instrument.Tests;

/// <summary>How a finding is tested: silent on the sound instrument, spoken on the spoilt one, and saying all a person needs.</summary>
internal static class Fires
{
    public static Finding OnlyWhenSpoilt(string code, InstrumentDefinition sound, InstrumentDefinition spoilt)
    {
        Assert.DoesNotContain(Designer.Design(sound).Findings, f => f.Code == code);
        var findings = Designer.Design(spoilt).Findings;
        var found = findings.FirstOrDefault(f => f.Code == code);
        Assert.True(found is not null, $"found only: {string.Join("; ", findings)}");
        Assert.All([found.Title, found.Place, found.Figure, found.Limit, found.Source, found.Remedy], text => Assert.False(string.IsNullOrWhiteSpace(text)));
        return found;
    }
}
