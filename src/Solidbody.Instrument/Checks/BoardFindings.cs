using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with the fretboard and the strings over it.</summary>
public static class BoardFindings
{
    public static Finding SlotThrough(string slot, double left) =>
        new("BOARD-01", Severity.Stops, $"fretboard, {slot} at the edge", $"{Say.Mm(left)} of board under the slot", Say.AtLeast(Limits.UnderSlot), Limits.Practice, "take a thicker board, a larger radius or shallower slots.") { Title = "a fret slot comes through the board" };

    public static Finding DotThrough(string dot, double left) =>
        new("BOARD-02", Severity.Stops, $"fretboard, {dot}", $"{Say.Mm(left)} of board under it", Say.AtLeast(Limits.UnderDot), Limits.Practice, "take shallower dots or a thicker board.") { Title = "a dot comes through the board" };

    public static Finding DotAtSlot(string dot, double gap) =>
        new("BOARD-03", Severity.Warns, $"fretboard, {dot}", $"{Say.Mm(gap)} from dot to fret slot", Say.AtLeast(Limits.DotToSlot), Limits.Practice, "take smaller dots, or leave this one out.") { Title = "a dot reaches a fret slot" };

    public static Finding StringAtEdge(string where, double gap) =>
        new("STRING-01", Severity.Warns, $"fretboard at {where}", $"{Say.Mm(gap)} of board outside the outer strings", Say.AtLeast(Limits.StringToEdge), Limits.Practice, "widen the board, or bring the strings together.") { Title = "the outer strings run off the board" };

    public static Finding DeepCrown(string where, double fall, double radius) =>
        new("BOARD-04", Severity.Warns, $"fretboard at {where}", $"a radius of {Say.Mm(radius)} lets the edge lie {Say.Mm(fall)} below the middle", Say.AtMost(Limits.CrownFall), Limits.Practice, "take a larger radius: the wider the board, the flatter its face.") { Title = "the playing face is round for so wide a board" };

    public static Finding OverhangAtPickup(string pickup, double gap) =>
        new("BOARD-05", gap > 0 ? Severity.Warns : Severity.Stops, $"fretboard over {pickup}", $"{Say.Mm(gap)} from the board to its cavity", Say.AtLeast(Limits.OverhangToPickup), Limits.Practice, "shorten the overhang, take fewer frets, or move the pickup toward the bridge.") { Title = "the board reaches over a pickup" };

    public static Finding SlotAtEnd(string slot, double wood) =>
        new("BOARD-06", wood > 0 ? Severity.Warns : Severity.Stops, $"fretboard, {slot}", $"{Say.Mm(wood)} of board from its slot to the board's end", Say.AtLeast(Limits.SlotToEnd), Limits.Practice, "set the nut further back, or leave more board beyond the last fret.") { Title = "an end slot may break out of the board" };

    public static Finding OverhangOnBody(double above) =>
        new("BOARD-07", above >= 0 ? Severity.Warns : Severity.Stops, "fretboard, overhang", $"{Say.Mm(above)} between the board's underside and the body's front", Say.AtLeast(Limits.OverhangAboveBody), Limits.Practice, "take a thicker heel or a shallower pocket, or leave out the overhang.") { Title = "the board's overhang rests on the body" };
}
