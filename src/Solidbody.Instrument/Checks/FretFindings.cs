using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with the frets' places.</summary>
public static class FretFindings
{
    public static Finding TooSteep(string line, double degrees) =>
        new("FRET-01", degrees <= Limits.SteepestFan ? Severity.Warns : Severity.Stops, $"fretboard, {line}", $"{Say.Degrees(degrees)} from square", "at most " + Say.Degrees(Limits.SteepFan), Limits.Practice, "bring the two scales nearer to each other, or let a fret nearer to this end stand square.") { Title = "the fan is steep" };

    public static Finding TooClose(string fret, double gap, double least, bool meets) =>
        new("FRET-02", meets ? Severity.Stops : Severity.Warns, $"fretboard, {fret}", $"{Say.Mm(gap)} to the fret before", Say.AtLeast(least), Limits.Practice, "take fewer frets, or a longer scale.") { Title = "two frets stand close together" };

    public static Finding BlindTooShort(string fret, string side, double beyond) =>
        new("FRET-03", beyond > 0 ? Severity.Warns : Severity.Stops, $"fretboard, {fret}, {side} side", $"the slot ends {Say.Mm(beyond)} outside the outer string", Say.AtLeast(Limits.SlotBeyondString), Limits.Practice, "end the slots nearer to the edge, or widen the board.") { Title = "a blind slot ends too near the outer string" };

    public static Finding OffTheString(int text, int fret, double cents) =>
        new("FRET-04", Severity.Warns, $"fretboard, fret {fret} under string {text}", $"{Say.Cents(cents)} beside the string's own place", "at most " + Say.Cents(Limits.FretCents), Limits.Practice, "on a fan space the nut by equal centres, or the bridge as the nut: only strings in the same shares of both cross straight frets truly.") { Title = "a straight fret misses a string's own place" };
}
