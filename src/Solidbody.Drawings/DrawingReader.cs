using System.Collections.Immutable;
using Solidbody.Drawings.Dxf;
using Solidbody.Drawings.Loops;
using Solidbody.Drawings.Svg;
using Solidbody.Findings;

namespace Solidbody.Drawings;

/// <summary>Reads a drawing somebody made elsewhere, SVG or DXF, strictly: closed loops in mm, or every mistake with its place.</summary>
public static class DrawingReader
{
    /// <summary>The loops of a drawing.</summary>
    /// <returns>The drawing with notes of what was mended, or the mistakes; <c>docs/drawings.md</c> says what is read.</returns>
    public static Result<Drawing> Read(DrawingFile file, DrawingWish wish)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(wish);
        var log = new ReadingLog(file.Name);
        try
        {
            var loops = LoopsOf(file, wish, log);
            return log.IsClean ? new(new(loops, log.Notes), []) : new(null, log.Mistakes);
        }
        catch (DrawingRefusal)
        {
            return new(null, log.Mistakes);
        }
    }

    /// <summary>The one loop a drawing holds.</summary>
    /// <returns>A drawing of exactly one loop, or the mistakes: no loop, one inside another, several side by side.</returns>
    public static Result<Drawing> ReadOutline(DrawingFile file, DrawingWish wish)
    {
        var drawing = Read(file, wish);
        if (!drawing.IsGood) return drawing;
        var log = new ReadingLog(file.Name);
        OneLoop.Ask(drawing.Good, log);
        return log.IsClean ? drawing : new(null, log.Mistakes);
    }

    private static ImmutableArray<DrawnLoop> LoopsOf(DrawingFile file, DrawingWish wish, ReadingLog log)
    {
        if (file.Content.Length > DrawingLimits.Bytes)
            throw log.Stop(new(1, 1), $"the drawing has {file.Content.Length} bytes", $"at most {DrawingLimits.Bytes}", "keep the outline alone in a file of its own: pictures and text make a drawing large");
        var pen = new Pen(log);
        if (file.IsSvg) SvgDrawing.Draw(file, wish, pen, log);
        else if (file.IsDxf) DxfDrawing.Draw(file, wish, pen, log);
        else throw log.Stop(new(1, 1), $"{file.Name} is neither an SVG nor a DXF", "a name that ends in .svg or .dxf", "save the drawing as one of the two");
        if (!log.IsClean) return [];
        var loops = Chaining.Close(pen.Pieces, wish.Gap, log);
        return log.IsClean ? LoopRules.Check(loops, log) : [];
    }
}
