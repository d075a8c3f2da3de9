using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with the nut and its slots.</summary>
public static class NutFindings
{
    public static Finding ThinOutside(string side, double wood) =>
        new("NUT-01", wood > 0 ? Severity.Warns : Severity.Stops, $"nut, {side} side", $"{Say.Mm(wood)} of nut outside the outer string's slot", Say.AtLeast(Limits.NutOutside), Limits.Practice, "widen the nut, or bring the strings together.") { Title = "the nut is thin outside its outer slot" };

    public static Finding NoGauges() =>
        new("NUT-02", Severity.Stops, "nut", "equal gaps between strings whose gauges are not given", "a gauge for each string", Limits.OwnFile, "describe the strings in [tuning], or space them by equal centres.") { Title = "equal gaps need the strings' gauges" };

    public static Finding SlotsClose(int lower, double gap, double least, string measured) =>
        new("NUT-03", gap > 0 ? Severity.Warns : Severity.Stops, $"nut, strings {lower} and {lower + 1}", $"{Say.Mm(gap)} {measured}", Say.AtLeast(least), Limits.Practice, "spread the strings, or take fewer.") { Title = "two strings lie close together at the nut" };
}
