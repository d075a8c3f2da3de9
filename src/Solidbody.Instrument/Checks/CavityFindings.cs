using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with the deeper ends and the screws of a pickup's cavity.</summary>
public static class CavityFindings
{
    public static Finding ThinUnderLegs(string pickup, double floor) =>
        new("CAVITY-01", floor > 0 ? Severity.Warns : Severity.Stops, $"body, {pickup}, legs", $"{Say.Mm(floor)} of wood under them", Say.AtLeast(Limits.UnderPickup), Limits.Practice, "lessen legs_depth: a pickup's legs can be cut shorter.") { Title = "little wood under a pickup's legs" };

    public static Finding LegsInside(string pickup, double across, double cavity) =>
        new("CAVITY-02", Severity.Stops, $"body, {pickup}, legs", $"{Say.Mm(across)} over both", $"more than the cavity itself, {Say.Mm(cavity)}", Limits.OwnFile, "measure over both legs, or write legs_across = 0.") { Title = "a pickup's legs do not reach out of its cavity" };

    public static Finding ScrewTooLong(string pickup, double left) =>
        new("CAVITY-03", Severity.Stops, $"body, {pickup}, screws", $"{Say.Mm(left)} of wood beyond their tips", Say.AtLeast(Limits.BeyondScrew), Limits.Practice, "lessen screw_depth.") { Title = "a pickup's screws come through the back" };

    public static Finding ScrewAtWall(string pickup, Point2 at, double wood) =>
        new("CAVITY-04", Severity.Warns, $"body, {pickup}, screw at {Say.At(at)}", $"{Say.Mm(wood)} from its pilot to the cavity's wall", Say.AtLeast(Limits.ScrewToWall), Limits.Practice, "check screws_apart against the pickup in hand, or lengthen the cavity.") { Title = "a pickup's screw stands on its cavity's wall" };
}
