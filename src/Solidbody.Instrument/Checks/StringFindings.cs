using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with the strings over bridge and pickups.</summary>
public static class StringFindings
{
    public static Finding SpreadOutOfBridge(double spread, double? least, double? most) =>
        new("STRING-02", Severity.Stops, "bridge", $"strings spread over {Say.Mm(spread)} along it", (least, most) switch { ({ } a, { } b) => $"{Say.Mm(a)} to {Say.Mm(b)}", ({ } a, _) => Say.AtLeast(a), (_, { } b) => Say.AtMost(b), _ => "any" },
            Limits.OwnFile, "spread the strings as this bridge can, or take another bridge.")
        { Title = "the bridge cannot be set to the strings' spread" };

    public static Finding SaddleOffBridge(int text, double at, double from, double to) =>
        new("STRING-03", Severity.Stops, $"bridge, saddle {text}", $"its place on the fan lies {Say.Mm(at)} behind the bridge's own scale line", $"{Say.Mm(from)} to {Say.Mm(to)}", Limits.OwnFile, "let the bridge follow the fan, take single bridges with that travel, or bring the scales nearer to each other.") { Title = "a saddle cannot reach its place on the fan" };

    public static Finding OffThePole(string pickup, int text, double off) =>
        new("PICKUP-04", Severity.Warns, $"body, {pickup}, string {text}", $"{Say.Mm(off)} beside its pole", Say.AtMost(Limits.StringToPole), Limits.Practice, "take a pickup whose poles spread as the strings do there, or move it along the strings.") { Title = "a string runs beside its pole" };
}
