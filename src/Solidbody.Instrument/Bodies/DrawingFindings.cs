using System.Globalization;
using Solidbody.Drawings;
using Solidbody.Findings;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Bodies;

/// <summary>What there is to say about an outline that comes from a drawing.</summary>
public static class DrawingFindings
{
    private static string Place(string drawing, DrawingNote note) => $"{drawing}, line {note.At.Line}";

    public static Finding Mended(string drawing, DrawingNote note)
    {
        ArgumentNullException.ThrowIfNull(note);
        return new("DRAWING-01", Severity.Notes, Place(drawing, note), $"{note.Said}: {note.Size.ToString("0.####", CultureInfo.InvariantCulture)} mm", "the gap that the instrument file allows", Limits.OwnFile, "look whether that place is as you want it; join the ends in the drawing to be sure.") { Title = "the drawing was mended" };
    }

    public static Finding Understood(string drawing, DrawingNote note)
    {
        ArgumentNullException.ThrowIfNull(note);
        return new("DRAWING-02", Severity.Notes, Place(drawing, note), note.Said, "lines and curves in a stated unit", "docs/drawings.md", "nothing, when the body's width and length are as you drew them.") { Title = "not everything in the drawing was read" };
    }

    public static Finding MissesMouth(double shoulder, double y, double behind) =>
        new("DRAWING-03", Severity.Stops, $"body outline at the neck pocket's mouth, y {y.ToString("0.#", CultureInfo.InvariantCulture)}",
            double.IsFinite(behind) ? $"the drawn edge lies {Say.Mm(Math.Abs(behind))} {(behind < 0 ? "in front of" : "behind")} the shoulder line at x {Say.Mm(shoulder)}" : "there is no body",
            $"at most {Say.Mm(DrawingChecks.MostInFront)} in front of it and {Say.Mm(DrawingChecks.MostBehind)} behind", Limits.Practice,
            "move the drawing (centre_line, foremost, turn), draw a level shoulder as wide as the heel, or change the length of heel and pocket.")
        { Title = "the drawn outline does not meet the neck" };
}
