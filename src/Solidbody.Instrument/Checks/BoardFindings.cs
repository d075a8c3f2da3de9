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
}
