using Solidbody.Findings;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Bought;

/// <summary>What can be wrong with a neck or a body that exists, and with what is made for it.</summary>
public static class BoughtFindings
{
    public static Finding MeasuresContradict(int fret, double heelEnd, double fromFret, double apart) =>
        new("BOUGHT-01", Severity.Stops, "bought neck, heel's end", $"{Say.Mm(heelEnd)} from the nut as measured; fret {fret} and what lies beyond it make {Say.Mm(fromFret)}: {Say.Mm(Math.Abs(apart))} apart", Say.AtMost(BoughtLimits.Measuring), Limits.Practice,
            "measure again from the nut's face and from the fret's crown, and check scale and number of frets: the pocket is cut by these.")
        { Title = "the bought neck's measures contradict each other" };

    public static Finding ScaleContradicts(double scale, double fromOctave) =>
        new("BOUGHT-02", Severity.Stops, "bought neck, scale", $"{Say.Mm(scale)} as stated; twice the way to fret 12 is {Say.Mm(fromOctave)}", $"at most {Say.Mm(BoughtLimits.Scale)} apart", Limits.Practice,
            "take twice the measured way from nut to fret 12 for the scale: the bridge stands by the neck, not by its description.")
        { Title = "the bought neck has another scale than the file" };

    public static Finding CornersInTheWay(double pocket, double heel, double wood) =>
        new("BOUGHT-03", Severity.Warns, "body, neck pocket's corners", $"a pocket's corner of {Say.Mm(pocket)} keeps {Say.Mm(wood)} of wood where the heel's corner of {Say.Mm(heel)} goes", "none", "geometry of two round corners",
            "file the heel's corners round or the pocket's square by hand, or take a smaller pocket corner and a thinner cutter.")
        { Title = "the bought neck's heel does not reach into the pocket's corners" };

    public static Finding BridgeOffScale(double off, double beyond) =>
        new("BOUGHT-04", Severity.Stops, "bought body, scale line", $"with the heel at the pocket's end the scale ends {Say.Mm(Math.Abs(off))} {(off > 0 ? "behind" : "in front of")} the body's scale line", Say.AtMost(BoughtLimits.Measuring), Limits.Practice,
            $"set beyond_last_fret to {Say.Mm(beyond)}, or take another scale or number of frets.")
        { Title = "the neck does not bring the scale to the bought body's bridge" };

    public static Finding HeelTooWide(string where, double over) =>
        new("BOUGHT-05", Severity.Stops, $"neck's heel at the pocket's {where}", $"{Say.Mm(over)} wider than the bought body's pocket", Say.AtMost(0), "the instrument file", "narrow the board's end: width_at_end.") { Title = "the heel does not go into the bought body's pocket" };

    public static Finding HeelLoose(string where, double gap) =>
        new("BOUGHT-06", Severity.Warns, $"neck's heel at the pocket's {where}", $"{Say.Mm(gap)} of play a side", Say.AtMost(BoughtLimits.Play), Limits.Practice, "widen the board's end (width_at_end), or shim the pocket's sides with veneer.") { Title = "the heel is loose in the bought body's pocket" };
}
