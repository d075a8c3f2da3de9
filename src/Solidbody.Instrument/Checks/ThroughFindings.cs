using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with a neck that goes through the body.</summary>
public static class ThroughFindings
{
    public static Finding OnGlueLine(string thing, string line, double wood) =>
        new("THROUGH-01", Severity.Warns, $"body, {thing}", wood > 0 ? $"{Say.Mm(wood)} of wood to the {line} glue line" : $"it meets the {line} glue line", Say.AtLeast(Limits.ScrewToJoint), Limits.Practice,
            "move it, or change the core's width: a screw opens a glue line, and a drill wanders along it.")
        { Title = "a screw or a bore runs along a glue line" };

    public static Finding WiderThanCore(string things, double width, double least) =>
        new("THROUGH-02", Severity.Notes, "body, core", $"a core of {Say.Mm(width)} is crossed by {things}", $"{Say.Mm(least)} would hold them all", "the instrument file",
            "nothing has to change: cut rooms and drill holes after the wings are glued on, so that core and wings are cut as one.")
        { Title = "rooms or screws reach from the core into the wings" };

    public static Finding BoardTooSmall(Box3 blank, BoardDefinition board) =>
        new("THROUGH-03", Severity.Warns, "neck and core, blank", $"{Sides(blank.Length, blank.Width, blank.Thickness)} without waste", $"{Sides(board.Length, board.Width, board.Thickness)} on hand", Limits.OwnFile,
            "take a larger board; or glue ears to the headstock's sides and pieces under it by hand, lay the headstock with a scarf joint, or narrow the core.")
        { Title = "neck and core do not come out of the board on hand" };

    public static Finding RoomAtChannel(string room, string channel, double wood) =>
        new("THROUGH-04", Severity.Warns, $"core, {channel} at {room}", wood > 0 ? $"{Say.Mm(wood)} of wood" : "they meet", Say.AtLeast(Limits.BetweenRooms), Limits.Practice, "end the channel sooner, or move the room toward the tail: in a through-neck both lie in one piece of wood.")
        { Title = "a room comes near the rod's channel" };

    public static Finding LittleGlue(string wing, double area) =>
        new("THROUGH-05", Severity.Warns, $"body, {wing}", string.Create(CultureInfo.InvariantCulture, $"{area:0} mm² of glue face"), string.Create(CultureInfo.InvariantCulture, $"at least {Limits.TenonGlue:0} mm²"), Limits.Practice,
            "move rooms off the glue line, or change the core's width.")
        { Title = "little glue holds a wing" };

    public static Finding NarrowWing(string side, double width) =>
        new("THROUGH-06", Severity.Stops, $"body, {side} side", $"{Say.Mm(width)} of body beside the core", Say.AtLeast(Limits.Wing), Limits.Practice, "narrow the core, or widen the body.")
        { Title = "the core leaves no wing" };

    public static Finding BelowBack(double below) =>
        new("THROUGH-07", Severity.Warns, "neck, where it meets the body", $"its back lies {Say.Mm(below)} below the body's back", Say.AtMost(0), Limits.Practice, "take a thinner heel, a thicker body, or let the glue plane stand higher over the front.")
        { Title = "the neck is deeper than the body" };

    private static string Sides(double length, double width, double thickness) => string.Create(CultureInfo.InvariantCulture, $"{length:0.0} × {width:0.0} × {thickness:0.0} mm");
}
