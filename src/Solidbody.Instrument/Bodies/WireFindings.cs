using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Bodies;

/// <summary>What can keep a wire from its way.</summary>
public static class WireFindings
{
    private const string Practice = "common practice, no source";
    private static string Mm(double v) => v.ToString("0.##", CultureInfo.InvariantCulture) + " mm";

    /// <summary>WIRE-01: the room leaves no height for the bore with wood to both faces.</summary>
    public static Finding NoHeight(WireWayDefinition way, string room, double needed) =>
        new("WIRE-01", Severity.Stops, $"body, from {way.From} to {way.To}", $"{room} leaves no room for a {Mm(way.Diameter)} bore", $"the bore and 5 mm of wood to front and back: {Mm(needed)}", Practice,
            "deepen the room, or take a thinner bore.")
        { Title = "a wire way finds no height inside its room" };

    /// <summary>WIRE-02: too little wood between the way and a hole it passes.</summary>
    public static Finding AtHole(Wall w) =>
        new("WIRE-02", Severity.Warns, $"body, {w.Of} at {w.To}, {Say.At(w.At)}", $"{Say.Mm(w.Wood)} of wood", Say.AtLeast(Limits.HoleToRoom), Limits.Practice, "move the hole, or lead the wire through another room.")
        { Title = "a wire way meets a screw or a string" };

    /// <summary>WIRE-04: no chain of rooms and bores.</summary>
    public static Finding NotConnected(string from, string to) =>
        new("WIRE-04", Severity.Warns, $"body, {from}", $"no way for its wire to {to}", "rooms and bores in an unbroken chain", Practice,
            $"add a [[body.wire_ways]] from {from}, or make the one that cannot be made passable.")
        { Title = "a wire has no way to the controls" };

    /// <summary>WIRE-05: the drill on hand cannot lie so.</summary>
    public static Finding DrillDoesNotFit(WireWayDefinition way, string whyNot) =>
        new("WIRE-05", Severity.Warns, $"body, from {way.From} to {way.To}", whyNot, "a drill that clears the edges and arrives inside the room", "plane geometry of the drill, docs/checks/WIRE-05.md",
            "plough the way before the glue-up (made = \"ploughed\"), deepen the room it misses, name another room to go through, or take a longer drill.")
        { Title = "a drill cannot be laid for a wire way" };

    /// <summary>WIRE-06: a groove has no face to lie in.</summary>
    public static Finding NoJoint(WireWayDefinition way) =>
        new("WIRE-06", Severity.Warns, $"body, from {way.From} to {way.To}", "no mating edge meets both rooms at one height", "two pieces, and both rooms across their joint", Practice,
            "drill the way (made = \"drilled\"), or lead the wire through a room on the joint.")
        { Title = "a wire way cannot be ploughed before the glue-up" };

    /// <summary>WIRE-03: a way starts or ends in a room that does not exist.</summary>
    public static Finding NoSuchRoom(WireWayDefinition way, string room) =>
        new("WIRE-03", Severity.Stops, $"body, from {way.From} to {way.To}", $"no room is called {room}", "a pickup's name, neck pocket, controls or bridge", "the instrument file",
            "name a room that the file describes.")
        { Title = "a wire way ends nowhere" };

    /// <summary>JACK-01: the jack's bore starts beside the body.</summary>
    public static Finding JackOffBody(JackDefinition jack) =>
        new("JACK-01", Severity.Stops, "body, jack", $"x {Mm(jack.X)} lies beside the body", "a place on the treble edge", "the instrument file", "move the jack onto the body.") { Title = "the jack's bore does not reach the control cavity" };

    /// <summary>JACK-01: the jack's bore passes the control cavity.</summary>
    public static Finding JackMisses(JackDefinition jack, Point2 edge) =>
        new("JACK-01", Severity.Stops, $"body, jack at x {Mm(edge.X)}, y {Mm(edge.Y)}", $"at {Mm(double.RadiansToDegrees(jack.Angle))[..^3]} degrees the bore passes the control cavity", "a bore into the control cavity", "the instrument file",
            "turn the bore toward the cavity, or move the jack along the edge.")
        { Title = "the jack's bore does not reach the control cavity" };
}
