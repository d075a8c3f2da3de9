using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with the body's rooms, holes and hardware.</summary>
public static class BodyFindings
{
    public static Finding ThinFront(double floor) =>
        new("CONTROL-01", Severity.Warns, "body, control cavity", $"{Say.Mm(floor)} of wood before the floor", Say.AtLeast(Limits.UnderControls), Limits.Practice, "raise the floor.") { Title = "little wood before the control cavity" };

    public static Finding ShaftOutside(string shaft, Point2 at) =>
        new("CONTROL-02", Severity.Stops, $"body, {shaft} at {Say.At(at)}", "its hole is not wholly over the control cavity", "inside the cavity by its radius and 1 mm", Limits.Practice, "move the shaft inward.") { Title = "a control's hole misses the cavity" };

    public static Finding CoverIntoAir(double left) =>
        new("CONTROL-03", Severity.Stops, "body, control cavity", $"{Say.Mm(left)} of wood between ledge and cavity floor", Say.AtLeast(Limits.UnderControls), Limits.Practice, "lessen the ledge depth or the floor.") { Title = "the cover's ledge leaves no cavity" };

    public static Finding BridgeOffBody(double wall) =>
        new("BRIDGE-01", wall > 0 ? Severity.Warns : Severity.Stops, "body, bridge plate", $"{Say.Mm(wall)} from plate to edge", Say.AtLeast(Limits.ToEdge), Limits.Practice, "lengthen or widen the body, or take a smaller plate.") { Title = "the bridge stands too near the body's edge" };

    public static Finding BridgeScrewTooLong(double left) =>
        new("BRIDGE-02", Severity.Stops, "body, bridge screws", $"{Say.Mm(left)} of wood beyond the pilots' tips", Say.AtLeast(Limits.BeyondScrew), Limits.Practice, "lessen the screw depth.") { Title = "the bridge's screws come through the back" };

    public static Finding FerruleTooDeep(double depth, double most) =>
        new("BRIDGE-03", Severity.Stops, "body, string ferrules", $"{Say.Mm(depth)} deep", Say.AtMost(most), Limits.Practice, "lessen the ferrule depth.") { Title = "the ferrules' seats go through half the body" };

    public static Finding PickupBesideStrings(string pickup, double inside) =>
        new("PICKUP-01", Severity.Warns, $"body, {pickup}", $"the outer strings run {Say.Mm(inside)} inside its cavity's ends", Say.AtLeast(Limits.StringInPickup), Limits.Practice, "lengthen the cavity across the strings, or check the pickup's pole spread.") { Title = "the strings reach beyond a pickup" };

    public static Finding ThinUnderPickup(string pickup, double floor) =>
        new("PICKUP-02", floor > 0 ? Severity.Warns : Severity.Stops, $"body, {pickup}", $"{Say.Mm(floor)} of wood under its cavity", Say.AtLeast(Limits.UnderPickup), Limits.Practice, "lessen the cavity's depth.") { Title = "little wood under a pickup" };

    public static Finding PickupUnderBridge(string pickup, double overlap) =>
        new("PICKUP-03", Severity.Warns, $"body, {pickup}", $"its cavity reaches {Say.Mm(overlap)} under the bridge plate", "none", Limits.Practice, "move the pickup toward the neck.") { Title = "a pickup's cavity lies under the bridge" };

    public static Finding ScrewOnJoint(string hole, double y) =>
        new("JOINT-01", Severity.Warns, $"body, {hole}", $"{Say.Mm(y)} from the joint of the two pieces", "its radius and " + Say.Mm(Limits.ScrewToJoint), Limits.Practice, "choose a hole pattern that straddles the joint.") { Title = "a screw stands on the joint" };

    public static Finding NoFrontPath(double width) =>
        new("EDGE-01", Severity.Warns, "body, front edge", $"an edge {Say.Mm(width)} wide reaches the neck pocket's mouth everywhere", "an edge that stops beside the mouth", Limits.Practice, "take a smaller front edge: this one stays sharp.") { Title = "the front edge cannot be shaped" };

    public static Finding EdgesMeet(double left, Point2 at) =>
        new("EDGE-02", Severity.Warns, $"body, edges, {Say.At(at)}", $"{Say.Mm(left)} of upright side left between the shaped edges", Say.AtLeast(Limits.UnderControls), Limits.Practice, "take smaller edges, or flatten a contour that lies there.") { Title = "the shaped edges leave no side" };
}
