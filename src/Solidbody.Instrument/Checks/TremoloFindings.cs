using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with a tremolo's rooms.</summary>
public static class TremoloFindings
{
    private const string Place = "body, tremolo";

    public static Finding OpeningShows(double beside) =>
        new("TREM-01", Severity.Warns, Place, $"its opening reaches {Say.Mm(beside)} beyond the bridge's plate", "under the plate", Limits.OwnFile, "measure plate and block again: opening_from, opening_to, opening_width, plate_from, plate_to.") { Title = "the tremolo's opening is not covered by its plate" };

    public static Finding StringsThroughBody() =>
        new("TREM-02", Severity.Stops, Place, "strings through the body behind a bridge that moves", "strings held by the bridge", Limits.Practice, "write string_through = false in [body.bridge].") { Title = "a tremolo's strings cannot pass the body" };

    public static Finding NoRoomForSprings(double length) =>
        new("TREM-03", Severity.Warns, Place, $"{Say.Mm(length)} from the claw's wall to the opening", Say.AtLeast(Limits.SpringRoom), Limits.PracticeRemembered, "move springs_from toward the neck.") { Title = "the spring cavity is too short for its springs" };

    public static Finding ThinFront(double left) =>
        new("TREM-04", left > 0 ? Severity.Warns : Severity.Stops, Place, $"{Say.Mm(left)} of wood before the spring cavity", Say.AtLeast(Limits.UnderPickup), Limits.Practice, "lessen the depth.") { Title = "little wood before the spring cavity" };

    public static Finding SpringsBesideBlock(double springs, double opening) =>
        new("TREM-05", Severity.Warns, Place, $"spring cavity {Say.Mm(springs)} wide at an opening of {Say.Mm(opening)}", "no wider than the opening: the block carries the springs", Limits.Practice, "check springs_width and opening_width against the bridge in hand.") { Title = "the springs lie wider than their block" };
}
