using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with controls, switches and the jack's plate.</summary>
public static class ControlFindings
{
    public static Finding TooNear(string a, string b, double apart, double least) =>
        new("CONTROL-04", Severity.Warns, $"body, {a} and {b}", $"{Say.Mm(apart)} apart", $"at least both rooms, {Say.Mm(least)}", Limits.OwnFile, $"move {a} and {b} apart, or measure the parts in hand and give their room.") { Title = "two controls stand too near each other" };

    public static Finding FrontTooThick(double floor) =>
        new("CONTROL-05", Severity.Warns, "body, control cavity", $"{Say.Mm(floor)} of wood before the floor", Say.AtMost(Limits.FrontForBush), Limits.Practice, "lessen the floor, or take controls with long bushes.") { Title = "the front is too thick for a control's bush" };

    public static Finding NoRoom(string shaft, Point2 at, double toWall, double room) =>
        new("CONTROL-06", Severity.Warns, $"body, {shaft} at {Say.At(at)}", $"{Say.Mm(toWall)} from its middle to the cavity's wall", $"its room, {Say.Mm(room)}", Limits.OwnFile, "move the shaft inward, widen the cavity, or measure the part in hand and give its room.") { Title = "a control does not fit beside the cavity's wall" };

    public static Finding PlateTooWide(double width, double side) =>
        new("JACK-02", Severity.Warns, "body, jack plate", $"{Say.Mm(width)} wide on {Say.Mm(side)} of upright side", "no wider than the side", Limits.OwnFile, "take a narrower plate, smaller edge radii, or a thicker body.") { Title = "the jack's plate is wider than the body's side" };

    public static Finding SideBows(double bow, double ledge) =>
        new("JACK-03", Severity.Warns, "body, jack plate", $"the side falls back by {Say.Mm(bow)} over the plate's length", Say.AtMost(ledge) + ", the ledge's depth", Limits.OwnFile, "let the plate in deeper, take a shorter one, or move the jack to a straighter stretch.") { Title = "the jack's plate does not lie on the curved side" };
}
