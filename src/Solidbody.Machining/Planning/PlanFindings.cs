using System.Globalization;
using Solidbody.Findings;

namespace Solidbody.Machining.Planning;

/// <summary>What the plan itself has to say.</summary>
internal static class PlanFindings
{
    public static Finding FloorNotLevel(string place) => new("PLAN-01", Severity.Stops, place, "a floor that is not level", "a level floor",
        "a flat cutter makes level floors: along an upright wall it would leave a strip up to its radius times the slope", "give the room a level floor; a neck leans on a wedge, `angle_by = \"wedge\"`")
    { Title = "No program cuts a room whose floor is not level" };

    public static Finding FewTabs(string part, int found) => new("PLAN-02", Severity.Warns, part, $"{found} tabs", $"at least {PlanPractice.TabsLeast} on straight long grain",
        PlanPractice.Source, "hold the part with tape under its middle as well")
    { Title = "The outline has few places for a tab" };

    public static Finding OutlineInHalves(string part, double frontDepth) => new("PLAN-03", Severity.Notes, part,
        Say($"outline cut {frontDepth:0.0} mm from the front and the rest from the back"), Say($"halves overlap {PlanPractice.HalvesOverlap} mm"),
        PlanPractice.Source, "sand the line where the halves meet, or add an outline cutter that reaches through")
    { Title = "No cutter reaches through: the outline is cut from both sides" };

    public static Finding ZoneEdge(string place, Solidbody.Geometry.Point2 at, double off) => new("PLAN-04", Severity.Stops, Say($"{place} at x {at.X:0.0}, y {at.Y:0.0}"),
        Say($"{off:0.00} mm from the planed face"), "level with it, falling away", "a ball-end runs a carved zone out into its face, no wall and no hollow",
        "carve the zone so far that it ends level with the face")
    { Title = "A carved zone does not run out into its face" };

    public static Finding Scarfed(string part) => new("PLAN-05", Severity.Stops, part, "a blank glued up at an angle", "a blank with two level faces",
        "programs lay a blank flat on the bed", "plan the neck in one piece (scarf = false), or make this neck by hand from the joint's figures and the drawings")
    { Title = "No program cuts a neck with a scarf joint" };

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
