using Solidbody.Findings;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Checks;

internal static class BoardChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part board)
    {
        var (face, layout) = (FretboardMaker.Face(d), FretLayout.Of(d));
        foreach (var slot in board.Slots)
        {
            var left = new[] { slot.A, slot.B }.Min(p => face.Z(p.X, Math.Min(Math.Abs(p.Y), layout.HalfWidth(p.X)))) - slot.Depth;
            if (!(left >= Limits.UnderSlot)) { yield return BoardFindings.SlotThrough(slot.Name, left); break; }
        }
        foreach (var dot in board.Holes)
        {
            if (!(dot.Reach >= Limits.UnderDot)) yield return BoardFindings.DotThrough(dot.Name, dot.Reach);
            var gap = board.Slots.Min(s => Segments.Distance(dot.Centre, s.A, s.B)) - d.Fretboard.SlotWidth / 2 - dot.Diameter / 2;
            if (!(gap >= Limits.DotToSlot)) yield return BoardFindings.DotAtSlot(dot.Name, gap);
        }
        foreach (var (where, line) in ((string, CrossLine)[])[("the nut", layout.NutFace), ("its end", layout.BoardEnd)])
        {
            var edge = new[] { -1, 1 }.Select(side => layout.AtEdge(line, side)).MaxBy(p => Math.Abs(p.Y));
            if (RadiusedFace.Crown(face.Radius(edge.X), edge.Y) is var fall && !(fall <= Limits.CrownFall)) { yield return BoardFindings.DeepCrown(where, fall, face.Radius(edge.X)); break; }
        }
        foreach (var (slot, end) in ((Slot, CrossLine)[])[(board.Slots[0], layout.NutFace), (board.Slots[^1], layout.BoardEnd)])
            if (board.Slots[0] != slot || d.Nut.ZeroFretSetBack is not null)
            {
                var wood = new[] { slot.A, slot.B }.Min(p => Math.Abs(end.X(p.Y) - p.X) * Math.Cos(end.Turn)) - slot.Width / 2;
                if (!(wood >= Limits.SlotToEnd)) yield return BoardFindings.SlotAtEnd(slot.Name, wood);
            }
        foreach (var (where, fret) in ((string, int)[])[("the nut", 0), ("the last fret", d.Frets)])
            if (StringEdges.Least(layout, fret) is var gap && !(gap >= Limits.StringToEdge)) yield return BoardFindings.StringAtEdge(where, gap);
    }
}
