using Solidbody.Findings;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Checks;

internal static class BoardChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part board)
    {
        var (face, strings) = (FretboardMaker.Face(d), Strings.Of(d));
        for (var n = 1; n <= d.Frets; n++)
        {
            var x = FretTable.Position(d.Scale, n);
            var left = face.Z(x, FretboardMaker.HalfWidth(d, x)) - d.Fretboard.SlotDepth;
            if (!(left >= Limits.UnderSlot)) { yield return BoardFindings.SlotThrough(n, left); break; }
        }
        foreach (var dot in board.Holes)
        {
            if (!(dot.Reach >= Limits.UnderDot)) yield return BoardFindings.DotThrough(dot.Name, dot.Reach);
            var gap = board.Slots.Min(s => Math.Abs(s.A.X - dot.Centre.X)) - d.Fretboard.SlotWidth / 2 - dot.Diameter / 2;
            if (!(gap >= Limits.DotToSlot)) yield return BoardFindings.DotAtSlot(dot.Name, gap);
        }
        foreach (var (where, x) in ((string, double)[])[("the nut", 0), ("the last fret", FretTable.Position(d.Scale, d.Frets))])
            if (FretboardMaker.HalfWidth(d, x) - strings.Spread(x) / 2 is var gap && !(gap >= Limits.StringToEdge)) yield return BoardFindings.StringAtEdge(where, gap);
    }
}
