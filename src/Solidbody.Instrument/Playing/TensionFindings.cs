using System.Globalization;
using Solidbody.Findings;
using Solidbody.Instrument.Checks;
using Solidbody.Materials;

namespace Solidbody.Instrument.Playing;

/// <summary>What can be wrong with the strings' pull.</summary>
public static class TensionFindings
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static Finding NotDescribed() =>
        new("TENSION-01", Severity.Notes, "strings", "no [[tuning.strings]]", "one for each string, from the lowest", Limits.OwnFile, "give note and gauge of each string, and the unit mass of a wound one: then tension, neck bending and saddle places are worked out too.") { Title = "the strings are not described" };

    public static Finding Breaks(StringTension s, string where) =>
        new("TENSION-02", Severity.Stops, s.Name + where, Stress(s), string.Create(Plain, $"below {s.Strength?.Least:0} N/mm²"), MusicWire.Source, "tune it lower, or shorten the scale: a thicker plain string breaks at the same pitch.") { Title = "the string breaks before it is at pitch" };

    public static Finding NearBreaking(StringTension s, string where, double mostShare) =>
        new("TENSION-03", Severity.Warns, s.Name + where, $"{Stress(s)}, {Share(s.Share)} of its wire's least strength", $"at most {Share(mostShare)}", $"a bend by a whole tone; {MusicWire.Source}", "tune it lower, or shorten the scale; else do not bend it.") { Title = "a bend by a whole tone may break the string" };

    public static Finding OutsideTable(IReadOnlyList<StringTension> strings) =>
        new("TENSION-04", Severity.Notes, Names(strings), string.Create(Plain, $"wire of {string.Join(", ", strings.Select(s => s.Pull.CoreDiameter?.ToString("0.000", Plain)))} mm"), string.Create(Plain, $"{MusicWire.Thinnest:0.000} mm to {MusicWire.Thickest:0.000} mm"), MusicWire.Source, "ask the maker of the string what it bears: its margin is not worked out.") { Title = "the wire's strength is not in the table" };

    public static Finding CoreUnknown(IReadOnlyList<StringTension> strings) =>
        new("TENSION-05", Severity.Notes, Names(strings), "wound, no core given", "the core's diameter", Limits.OwnFile, "give `core` if you know it: without it stress and margin of these strings are not worked out.") { Title = "a wound string's stress is unknown" };

    public static Finding Jump(StringTension loose, StringTension tight, double most) =>
        new("TENSION-06", Severity.Warns, $"{loose.Name} and {tight.Name}", string.Create(Plain, $"{loose.Pull.Tension:0.0} N beside {tight.Pull.Tension:0.0} N"), string.Create(Plain, $"at most {most:0.0} times its neighbour's"), Limits.Practice, "take another gauge for one of the two; look at the unit mass of a wound one.") { Title = "a string is much tighter than its neighbour" };

    public static Finding TotalHigh(double total, string where, double most) =>
        new("TENSION-07", Severity.Warns, "strings" + where, string.Create(Plain, $"{total:0} N together"), string.Create(Plain, $"at most {most:0} N"), Limits.Practice, "take lighter strings or a lower tuning, or ask the maker of bridge and tuners what they bear.") { Title = "the strings pull harder than instruments are usually loaded" };

    public static Finding Slack(StringTension s, string where, double least) =>
        new("TENSION-08", Severity.Warns, s.Name + where, string.Create(Plain, $"{s.Pull.Tension:0.0} N"), string.Create(Plain, $"at least {least:0} N"), Limits.Practice, "take a heavier string, or tune it higher: a slack one buzzes and sounds sharp when struck.") { Title = "the string is slack" };

    private static string Stress(StringTension s) => string.Create(Plain, $"{s.Pull.Stress:0} N/mm² at {s.Pull.Pitch:0.0} Hz");
    private static string Share(double? share) => string.Create(Plain, $"{100 * share:0} %");
    private static string Names(IReadOnlyList<StringTension> strings) => strings.Count == 1 ? strings[0].Name : "strings " + string.Join(", ", strings.Select(s => $"{NoteName.Of(s.String.Note)} ({s.Number})"));
}
