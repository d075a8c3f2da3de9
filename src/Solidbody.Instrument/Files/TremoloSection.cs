using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[body.tremolo]</c>: a bridge on a pivot, by its own measures. Defaults from memory: measure the bridge in hand.</summary>
static class TremoloSection
{
    public static TremoloDefinition? Read(TableReader tremolo)
    {
        var fitted = tremolo.Flag("fitted", false, "true for a bridge whose block goes through the body to springs");
        var definition = new TremoloDefinition(
            tremolo.Length("opening_from", -60, 40, -9, "opening in the front: its front edge from the scale line"),
            tremolo.Length("opening_to", -30, 90, 13, "opening in the front: its rear edge from the scale line"),
            tremolo.Length("opening_width", 20, 140, 74, "opening in the front, across"),
            tremolo.Length("swing", 0, 40, 12, "how much further the block's well reaches in the back"),
            tremolo.Length("springs_from", -180, -40, -110, "spring cavity in the back: the wall that takes the claw's screws"),
            tremolo.Length("springs_width", 20, 140, 58, "spring cavity, across"),
            tremolo.Length("depth", 8, 30, 16, "of spring cavity and well, from the back"),
            tremolo.Length("claw_screws_apart", 10, 80, 24, "the claw's two screws"),
            tremolo.Length("claw_pilot", 1.5, 6, 3, "holes for them, by hand"),
            tremolo.Length("claw_depth", 15, 70, 35, "of those, toward the neck"),
            tremolo.Length("ledge_width", 4, 25, 9, "what the cover lies on, all round"),
            tremolo.Length("ledge_depth", 0, 6, 0, "of a ledge from the back; 0 lets the cover lie on the back itself"),
            CoverSection.Read(tremolo.Table("cover"), 6));
        // Opened once, the table stays known; a person who describes one without fitting it is told.
        if (fitted && !(definition.OpeningTo - definition.OpeningFrom >= 6))
            tremolo.Refuse("opening_to", "the opening is less than 6 mm long", "at least 6 mm behind opening_from", "move one of its edges");
        return fitted ? definition : null;
    }
}
