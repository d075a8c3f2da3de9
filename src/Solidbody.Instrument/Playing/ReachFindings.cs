using System.Globalization;
using Solidbody.Findings;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Playing;

/// <summary>What keeps the hand from the highest frets.</summary>
public static class ReachFindings
{
    public static Finding OverBody(Reach reach, int most)
    {
        ArgumentNullException.ThrowIfNull(reach);
        return new("REACH-01", Severity.Notes, $"body, {reach.Name} side of the neck", string.Create(CultureInfo.InvariantCulture, $"{reach.FretsOverBody} frets over the body, the last {Say.Mm(reach.BehindBottom)} behind the cutaway's bottom"),
            $"at most {most} frets", Limits.Practice, "cut away more of the body on that side, or take fewer frets.")
        { Title = "many frets lie over the body" };
    }

    public static Finding ThickAtLastFret(Reach reach, double most)
    {
        ArgumentNullException.ThrowIfNull(reach);
        return new("REACH-02", Severity.Notes, $"heel at the last fret, {reach.Name} side", $"{Say.Mm(reach.Thickness)} of wood for the hand to pass", Say.AtMost(most), Limits.Practice, "take a thinner body, sink the neck deeper, or round the heel's corner of the body by hand.")
        { Title = "the heel is thick where the hand must pass" };
    }

    public static Finding NarrowCutaway(Reach reach, double room, double least)
    {
        ArgumentNullException.ThrowIfNull(reach);
        return new("REACH-03", Severity.Warns, $"cutaway, {reach.Name} side", $"{Say.Mm(room)} between the neck's side and the horn", Say.AtLeast(least), Limits.Practice, "widen the cutaway: move the horn out, or lessen its lean toward the neck.")
        { Title = "the cutaway is too narrow for a hand" };
    }
}
