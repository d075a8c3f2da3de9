using Solidbody.Findings;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Playing;

/// <summary>What can be wrong with the strings' pull.</summary>
public static class TensionFindings
{
    public static Finding NotDescribed() =>
        new("TENSION-01", Severity.Notes, "strings", "no [[tuning.strings]]", "one for each string, from the lowest", Limits.OwnFile, "give note and gauge of each string, and the unit mass of a wound one: then tension, neck bending and saddle places are worked out too.") { Title = "the strings are not described" };
}
