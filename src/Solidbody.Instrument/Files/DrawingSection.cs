using System.Collections.Immutable;
using Solidbody.Drawings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The keys of <c>[body.outline]</c> that take the outline from a drawing and lay it on the instrument.</summary>
static class DrawingSection
{
    /// <summary>Bodies outside these measures come from a wrong unit or a wrong turn, mm; twice and half of what is built, common practice, no source.</summary>
    const double ShortestBody = 200, LongestBody = 650, NarrowestBody = 120, WidestBody = 520;

    const int LongestName = 60;

    static readonly ImmutableArray<(string, double?)> Units = [("as-drawn", null), ("mm", 1), ("cm", 10), ("in", Geometry.Length.MillimetresPerInch)];

    enum Laying { Fitted, AsDrawn }

    static readonly ImmutableArray<(string, Laying)> Layings = [("fitted", Laying.Fitted), ("as-drawn", Laying.AsDrawn)];

    public const string Key = "drawing";

    /// <param name="drawings">Where drawings lie.</param>
    /// <param name="shoulderX">Where the heel leaves the body, mm from the nut.</param>
    /// <returns>The outline; null, with mistakes, when there is none. What is wrong in the drawing itself is added to the drawings' mistakes.</returns>
    public static DrawnOutline? Read(TableReader outline, DrawingDesk drawings, double shoulderX)
    {
        var name = outline.Text(Key, LongestName, null, "an SVG or DXF beside this file: its one closed line is the body's outline (docs/drawings.md)");
        var pick = outline.Has("pick") ? outline.Text("pick", 200, null, "only what has this id, or lies on this layer; without it all of the drawing") : null;
        var unit = outline.Choice("unit", Units, "as-drawn", "unit of a drawing that does not say its own");
        var gap = outline.Length("gap", 0.001, DrawingWish.MostGap, DrawingWish.UsualGap, "ends this near to each other are joined");
        var turn = outline.Angle("turn", -180, 180, 0, "turns the drawing counter-clockwise until its neck end points left and its treble side up");
        var mirrored = outline.Flag("mirrored", false, "true turns it over then: it was drawn from behind, or for the other hand");
        var laying = outline.Choice("place", Layings, "fitted", "by the two measures below, or with the drawing's origin at the nut on the centre line");
        if (!outline.IsSound || drawings.Open(outline, name, new(pick, unit, gap)) is not var (file, drawing))
        {
            // Known all the same: only the drawing itself is told.
            CentreLine(outline, 0);
            Foremost(outline, 0);
            return null;
        }
        var loop = Lay(outline, OutlinePlacing.Turned(drawing.Loops[0].Loop, turn, mirrored), laying, shoulderX);
        return loop is null ? null : new(file, OutlinePlacing.Divided(loop), drawing.Notes);
    }

    static Loop? Lay(TableReader outline, Loop turned, Laying laying, double shoulderX)
    {
        var box = turned.Bounds;
        if (!(box.Width is >= ShortestBody and <= LongestBody && box.Height is >= NarrowestBody and <= WidestBody))
        {
            outline.Refuse(Key, $"the drawn outline is {outline.Show(Math.Round(box.Width, 2))} long and {outline.Show(Math.Round(box.Height, 2))} wide", $"{ShortestBody} mm to {LongestBody} mm long and {NarrowestBody} mm to {WidestBody} mm wide",
                "check the drawing's unit and `turn`: the length runs along the strings");
            return null;
        }
        if (laying == Laying.AsDrawn)
        {
            outline.RefuseIfGiven("centre_line", "place = \"fitted\" beside it", "remove it, or let the drawing be fitted");
            outline.RefuseIfGiven("foremost", "place = \"fitted\" beside it", "remove it, or let the drawing be fitted");
            return turned;
        }
        var centred = OutlinePlacing.OnCentreLine(turned, CentreLine(outline, Math.Round(box.Height / 2, 3)));
        if (OutlinePlacing.MouthBehindForemost(centred) is not { } mouth)
        {
            outline.Refuse("centre_line", "the centre line passes beside the drawn outline", $"0 mm to {outline.Show(Math.Round(box.Height, 2))}", "measure it from the outline's bass-most point");
            return null;
        }
        return OutlinePlacing.From(centred, Foremost(outline, Math.Round(shoulderX - mouth, 3)));
    }

    static double CentreLine(TableReader outline, double or) => outline.Length("centre_line", 0, WidestBody, or, "from the drawn outline's bass-most point to the centre line; half its width where nothing is said");

    static double Foremost(TableReader outline, double or) =>
        outline.Length("foremost", -100, 900, or, "from the nut to the drawn outline's foremost point; where nothing is said, its edge on the centre line lies where the heel leaves the body");
}
