using Solidbody.Findings;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Seasons;

/// <summary>What the seasons can do to what fitted when it was built.</summary>
public static class MovementFindings
{
    private const string Source = "Wood Handbook FPL-GTR-190 (2010), equations 13-2 and 13-3, with the woods' figures and the [seasons] of the instrument file; the limit is common practice, no source";

    public static Finding PocketJams(JointPlay joint, double play, string season) =>
        new("MOVE-01", Severity.Warns, $"body, neck pocket, in the {season} air", $"{Say.Mm(-play)} too little room for the heel's width ({Say.Mm(joint.Built)} to spare as built)", Say.AtLeast(0), Source,
            $"raise the pocket's clearance by {Say.Mm(-play / 2)} a side, or choose neck and body sawn to move alike.")
        { Title = "the neck will jam in its pocket" };

    public static Finding PocketLoosens(double play, string season) =>
        new("MOVE-02", Severity.Warns, $"body, neck pocket, in the {season} air", $"{Say.Mm(play)} of play across the heel", Say.AtMost(SeasonLimits.LoosePocket), Source,
            "lessen the pocket's clearance, or choose neck and body sawn to move alike.")
        { Title = "the neck will stand loose in its pocket" };

    public static Finding FretEnds(double standOut) =>
        new("MOVE-03", Severity.Warns, "fretboard, fret ends, in the driest air", $"each stands out by {Say.Mm(standOut)}", Say.AtMost(SeasonLimits.FretEnd), Source,
            "take a quartersawn board, let it dry longer before the frets are dressed, or bind its edges.")
        { Title = "fret ends will stand out of the board" };

    public static Finding TopCups(double rise, double width) =>
        new("MOVE-05", Severity.Warns, "body, top", $"front rises or sinks by up to {Say.Mm(rise)} over a width of {Say.Mm(width)}", Say.AtMost(SeasonLimits.TopCup), Source + "; cupping after S. Timoshenko, J. Opt. Soc. Am. 11 (1925) 233, from memory",
            "take a top and a body that move alike (wood, or saw cut), or a thinner top; finish both faces alike.")
        { Title = "the top will cup the body" };

    public static Finding CoverJams(string what, double play, string season) =>
        new("MOVE-04", Severity.Warns, $"body, {what}, in the {season} air", $"{Say.Mm(-play)} too little room for the plate", Say.AtLeast(0), Source,
            "cut the plate smaller, or take a wood or a saw cut that moves less.")
        { Title = "the cover will jam in its ledge" };
}
