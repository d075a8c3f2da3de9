using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>Walls of wood that are too thin.</summary>
public static class WallFindings
{
    public static Finding BetweenRooms(Wall w) =>
        new("WALL-01", w.Wood > 0 ? Severity.Warns : Severity.Stops, $"body, between {w.Of} and {w.To}, {Say.At(w.At)}", $"{Say.Mm(w.Wood)} of wood", Say.AtLeast(Limits.BetweenRooms), Limits.Practice, $"move {w.Of} and {w.To} apart.") { Title = "the wall between two rooms is thin" };

    public static Finding ToEdge(Wall w, double least) =>
        new("WALL-02", w.Wood > 0 ? Severity.Warns : Severity.Stops, $"body, {w.Of}, {Say.At(w.At)}", $"{Say.Mm(w.Wood)} of wood to the body's edge", Say.AtLeast(least), Limits.Practice, $"move {w.Of} inward, or make it smaller.") { Title = "a room is too near the body's edge" };

    public static Finding HoleAtRoom(Wall w, double least) =>
        new("WALL-03", Severity.Stops, $"body, {w.Of} at {w.To}, {Say.At(w.At)}", $"{Say.Mm(w.Wood)} of wood", Say.AtLeast(least), Limits.Practice, $"move {w.Of} or {w.To}.") { Title = "a hole meets a room it must not meet" };

    public static Finding BetweenHoles(Wall w) =>
        new("WALL-04", w.Wood > 0 ? Severity.Warns : Severity.Stops, $"body, {w.Of} at {w.To}, {Say.At(w.At)}", $"{Say.Mm(w.Wood)} of wood", Say.AtLeast(Limits.BetweenHoles), Limits.Practice, $"move {w.Of} and {w.To} apart, or shorten one.") { Title = "two holes are too near each other" };

    public static Finding EdgeMeetsMouth(string room, double land, double width) =>
        new("WALL-05", Severity.Warns, $"body, {room}", $"{Say.Mm(land)} of level wood between its mouth and the edge, shaped {Say.Mm(width)} wide", Say.AtLeast(Limits.LandAtEdge), Limits.Practice, $"move {room} inward, or take a smaller edge.") { Title = "a shaped edge reaches a room's mouth" };

    public static Finding BoreAtVoid(Wall w) =>
        new("WALL-06", w.Wood > 0 ? Severity.Warns : Severity.Stops, $"body, {w.Of} at {w.To}, {Say.At(w.At)}", $"{Say.Mm(w.Wood)} of wood", Say.AtLeast(Limits.HoleToRoom), Limits.Practice, $"move {w.Of} or {w.To}.") { Title = "a bore made by hand meets another void" };

    public static Finding ThinOutside(Wall w, double least) =>
        new("WALL-07", w.Wood > 0 ? Severity.Warns : Severity.Stops, $"body, {w.Of}, {Say.At(w.At)}", $"{Say.Mm(w.Wood)} of wood to the {w.To}", Say.AtLeast(least), Limits.Practice, $"move {w.Of} away from the {w.To}.") { Title = "a hole or bore is too near the outside" };
}
