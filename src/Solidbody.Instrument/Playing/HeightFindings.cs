using Solidbody.Findings;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Playing;

/// <summary>What can be wrong with the height of the strings.</summary>
public static class HeightFindings
{
    private const string Chain = "heights added up from the instrument file, docs/checks/HEIGHT-01.md";

    public static Finding SaddleOutOfRange(int number, double height, double lowest, double highest, string remedy) =>
        new("HEIGHT-01", Severity.Stops, $"bridge, saddle of string {number}", $"{Say.Mm(height)} above the body's front for the action asked for", $"{Say.Mm(lowest)} to {Say.Mm(highest)}", Chain, remedy) { Title = "a saddle cannot go where the action needs it" };

    public static Finding CannotBeMade(FreeMeasure measure, double value)
    {
        var (least, most) = HeightChain.Range(measure);
        return new("HEIGHT-02", Severity.Stops, $"action, {Named(measure)}", double.IsFinite(value) ? $"{Show(measure, value)} would follow from the other measures" : "no value follows from the other measures",
            $"{Show(measure, least)} to {Show(measure, most)}", "the instrument file", "change the heights it follows from, the neck angle or the bridge's range, or solve for another measure.")
        { Title = "the measure left free cannot be made" };
    }

    public static Finding RangeTooShort(int low, int high, double apart, double most) =>
        new("HEIGHT-03", Severity.Stops, $"bridge, saddles of strings {low} and {high}", $"{Say.Mm(apart)} between lowest and highest saddle", Say.AtMost(most), Chain, "take a larger fretboard radius, or a bridge whose saddles have more range.") { Title = "the saddles differ more in height than the bridge allows" };

    public static Finding NutTooLow(int number, double over) =>
        new("HEIGHT-04", Severity.Warns, $"string {number} over fret 1", $"{Say.Mm(over)} of room, open", Say.AtLeast(StringHeight.LeastOverFret1), Limits.Practice, "raise the nut height, or give more relief.") { Title = "an open string lies on fret 1" };

    public static Finding FretsInTheWay(int number, int pressed, int meets, double swing) =>
        new("HEIGHT-05", Severity.Warns, $"string {number}, {(pressed == 0 ? "open" : $"pressed at fret {pressed}")}, over fret {meets}", $"it may swing {Say.Mm(swing)} at its middle",
            Say.AtLeast(StringHeight.LeastSwing), "a soft stroke: common practice, no source; room by the shape of the fundamental", "raise the action or the nut, or change the relief.")
        { Title = "a string meets the frets" };

    public static Finding Follows(FreeMeasure measure, double value)
    {
        var (least, most) = HeightChain.Range(measure);
        return new("HEIGHT-06", Severity.Notes, $"action, {Named(measure)}", $"{Show(measure, value)} brings the saddles to the middle of the bridge's range", $"{Show(measure, least)} to {Show(measure, most)}", Chain,
            "nothing has to change: the parts are drawn with it. Write it into the file to keep it.")
        { Title = "the measure left free" };
    }

    public static Finding Wedge(double angle, double thick, double length) =>
        new("HEIGHT-07", Severity.Notes, "body, neck pocket", $"the neck leans {HeightRemedies.Degrees(angle)} on a wedge", "the pocket's floor stays level", Chain,
            $"make a wedge {Say.Mm(length)} long, from nothing {(angle > 0 ? "at the mouth to" : "at the heel's end to")} {Say.Mm(thick)} {(angle > 0 ? "at the heel's end" : "at the mouth")}, and drill it for the screws.")
        { Title = "a wedge goes under the heel" };

    private static string Show(FreeMeasure measure, double value) => measure == FreeMeasure.Angle ? HeightRemedies.Degrees(value) : Say.Mm(value);

    private static string Named(FreeMeasure measure) => measure switch
    {
        FreeMeasure.Angle => "neck angle",
        FreeMeasure.Depth => "pocket depth",
        FreeMeasure.Heel => "heel thickness",
        FreeMeasure.Shim => "shim",
        FreeMeasure.Bridge => "bridge's base height",
        FreeMeasure.Above => "glue plane above the body's front",
        _ => "saddles",
    };
}
