using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with the neck pocket.</summary>
public static class PocketFindings
{
    private const string Place = "body, neck pocket";

    public static Finding TooDeep(double above) =>
        new("POCKET-01", Severity.Stops, Place, $"the neck's glue plane stands {Say.Mm(above)} above the body", Say.AtLeast(0), Limits.Practice, "lessen the pocket's depth, or thicken the heel.") { Title = "the pocket is deeper than the heel is thick" };

    public static Finding ThinFloor(double floor) =>
        new("POCKET-02", Severity.Warns, Place, $"{Say.Mm(floor)} of wood under the floor", Say.AtLeast(Limits.UnderPocket), Limits.Practice, "take a thicker body, or a shallower pocket.") { Title = "little wood under the neck pocket" };

    public static Finding ThinWall(string side, double x, double wall) =>
        new("POCKET-03", Severity.Warns, $"{Place}, {side} wall at x {Say.Mm(x)}", $"{Say.Mm(wall)} of wood", Say.AtLeast(Limits.ToEdge), Limits.Practice, "raise the shoulder margin.") { Title = "the wall beside the neck pocket is thin" };

    public static Finding CornerTooLarge(double radius, double most) =>
        new("POCKET-04", Severity.Stops, Place, $"corner radius {Say.Mm(radius)}", Say.AtMost(most), Limits.OwnShapes, "take a smaller corner radius for pocket and heel.") { Title = "the heel is too small for its corner radius" };
}
