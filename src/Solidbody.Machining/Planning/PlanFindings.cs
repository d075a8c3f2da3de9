using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Machining.Planning;

/// <summary>What the plan itself has to say.</summary>
internal static class PlanFindings
{
    /// <param name="place">Part and room.</param>
    /// <param name="room">The room.</param>
    /// <param name="thinnest">Of the flat cutters that fit and reach.</param>
    /// <param name="depth">From the wood's top to the deepest floor, mm.</param>
    public static Finding SlopeTooSteep(string place, SlopedRoom room, Cutter thinnest, double depth)
    {
        var thinner = room.Angle > PlanPractice.SteepestFloor ? "" : Say($"add a flat cutter of {Math.Floor(10 * room.WidestCutter) / 10:0.0} mm or less that gets {depth:0.0} mm deep; or ");
        return new("PLAN-01", Severity.Stops, place, Say($"{Degrees(room.Angle)} of slope: {room.LeftBy(thinnest):0.000} mm would stand along its walls, left by {thinnest.Name}, {thinnest.Diameter:0.##} mm wide"),
            Say($"{PlanPractice.SlopeStrip:0.000} mm, and {Degrees(PlanPractice.SteepestFloor)}"), "a flat cutter touches a slope with its uphill rim: docs/checks/PLAN-01.md",
            Say($"{thinner}keep the floor level and put a wedge under the neck (`angle_by = \"wedge\"`): {room.Wedge:0.00} mm at its thick end, {room.Length:0.0} mm long"))
        { Title = "A sloping floor is too steep for the flat cutters" };
    }

    public static Finding FewTabs(string part, int found) => new("PLAN-02", Severity.Warns, part, $"{found} tabs", $"at least {PlanPractice.TabsLeast} on straight long grain",
        PlanPractice.Source, "hold the part with tape under its middle as well")
    { Title = "The outline has few places for a tab" };

    public static Finding OutlineInHalves(string part, double frontDepth) => new("PLAN-03", Severity.Notes, part,
        Say($"outline cut {frontDepth:0.0} mm from the front and the rest from the back"), Say($"halves overlap {PlanPractice.HalvesOverlap} mm"),
        PlanPractice.Source, "sand the line where the halves meet, or add an outline cutter that reaches through")
    { Title = "No cutter reaches through: the outline is cut from both sides" };

    public static Finding ZoneEdge(string place, Point2 at, double off) => new("PLAN-04", Severity.Stops, Say($"{place} at x {at.X:0.0}, y {at.Y:0.0}"),
        Say($"{off:0.00} mm from the planed face"), "level with it, falling away", "a ball-end runs a carved zone out into its face, no wall and no hollow",
        "carve the zone so far that it ends level with the face")
    { Title = "A carved zone does not run out into its face" };

    public static Finding Scarfed(string part) => new("PLAN-05", Severity.Stops, part, "a blank glued up at an angle", "a blank with two level faces",
        "programs lay a blank flat on the bed", "plan the neck in one piece (scarf = false), or make this neck by hand from the joint's figures and the drawings")
    { Title = "No program cuts a neck with a scarf joint" };

    public static Finding GoesThrough() => new("PLAN-06", Severity.Stops, "neck and body", "one blank as long as the instrument: once core and wings are glued, a carved neck leaves it no level face to lie on", "parts that lie flat on the bed, each by itself",
        "programs lay a blank flat on the bed and turn it over on a level face",
        "build it by hand from this check and `figures`: glue core and wings up square, cut rooms and holes by templates while the blank is still level, carve the neck last. Or glue the neck into a pocket, joint = \"set\": that can be cut, and a copy of the file that says so also makes the program of this same fretboard")
    { Title = "No program cuts a neck that goes through the body" };

    private static string Degrees(double angle) => Say($"{angle * 180 / Math.PI:0.00}°");
    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
