using Solidbody.Geometry;

namespace Solidbody.Drawings.Loops;

/// <summary>An outline is one loop: every other one is refused with what it is.</summary>
internal static class OneLoop
{
    public static void Ask(Drawing drawing, ReadingLog log)
    {
        if (drawing.Loops.IsEmpty)
        {
            log.Refuse(new(1, 1), "the drawing holds no closed line", "one closed line: the outline", "draw the outline as a closed path or polyline; a hidden or switched-off one is not read");
            return;
        }
        var outline = drawing.Loops.MaxBy(l => l.Loop.SignedArea)!;
        var region = new Region(outline.Loop);
        foreach (var other in drawing.Loops)
        {
            if (ReferenceEquals(other, outline)) continue;
            var inside = region.Contains(other.Loop.Points[0]);
            log.Refuse(other.At, $"{other.Name} is a second loop {(inside ? "inside" : "beside")} {outline.Name} (line {outline.At.Line})", "one closed line: the outline",
                "remove it, or choose the outline alone by its id or layer; rooms and holes have tables of their own in the instrument file");
        }
    }
}
