using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Solidbody.Geometry;
using Solidbody.Packet.Fonts;

namespace Solidbody.Packet.Sheets;

/// <summary>Where a text's given point lies on its baseline.</summary>
internal enum Align { Left, Middle, Right }

/// <summary>A line on paper: its width and its dashes, mm.</summary>
internal sealed record Stroke(double Width, params double[] Dashes)
{
    public static Stroke Outline { get; } = new(0.5);
    public static Stroke Frame { get; } = new(0.35);
    public static Stroke Thin { get; } = new(0.25);
    public static Stroke Fine { get; } = new(0.18);
    public static Stroke Hidden { get; } = new(0.25, 3, 1.2);
    public static Stroke Centre { get; } = new(0.18, 6, 1, 0.8, 1);
}

/// <summary>One page in millimetres, x to the right, y down from the upper left corner: black lines and text on white.</summary>
internal sealed class Paper(PdfPage page) : IDisposable
{
    private readonly XGraphics graphics = XGraphics.FromPdfPage(page, XGraphicsUnit.Millimeter);
    private readonly Dictionary<Lettering, XFont> fonts = [];

    public void Dispose() => graphics.Dispose();

    public void Line(Point2 a, Point2 b, Stroke stroke) => graphics.DrawLine(Pen(stroke), a.X, a.Y, b.X, b.Y);

    public void Rectangle(Box2 box, Stroke? stroke, bool white = false) =>
        graphics.DrawRectangle(stroke is null ? null : Pen(stroke), white ? XBrushes.White : null, box.X0, box.Y0, box.Width, box.Height);

    public void Circle(Point2 centre, double radius, Stroke stroke, bool white = true) =>
        graphics.DrawEllipse(Pen(stroke), white ? XBrushes.White : null, centre.X - radius, centre.Y - radius, 2 * radius, 2 * radius);

    public void Polygon(IEnumerable<Point2> points, Stroke? stroke, bool white = false, bool black = false) =>
        graphics.DrawPolygon(stroke is null ? null : Pen(stroke), black ? XBrushes.Black : white ? XBrushes.White : null,
            [.. points.Select(p => new XPoint(p.X, p.Y))], XFillMode.Alternate);

    public void Polyline(IEnumerable<Point2> points, Stroke stroke) =>
        graphics.DrawLines(Pen(stroke), [.. points.Select(p => new XPoint(p.X, p.Y))]);

    /// <summary>A filled arrowhead, about 1 to 3, its tip at <paramref name="tip"/>.</summary>
    public void Arrow(Point2 tip, Point2 direction)
    {
        var d = direction.Unit;
        Polygon([tip, tip - 2.4 * d + 0.42 * d.Left, tip - 2.4 * d - 0.42 * d.Left], null, black: true);
    }

    /// <summary>Lines at 45° every <paramref name="spacing"/> mm, only inside the polygons (even-odd).</summary>
    public void Hatch(IReadOnlyCollection<Point2[]> polygons, double spacing, Stroke stroke)
    {
        if (polygons.Count == 0) return;
        var box = Box2.Around(polygons.SelectMany(p => p));
        var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (var polygon in polygons)
            path.AddPolygon([.. polygon.Select(p => new XPoint(p.X, p.Y))]);
        var state = graphics.Save();
        graphics.IntersectClip(path);
        for (var x = box.X0 - box.Height; x < box.X1; x += spacing * Math.Sqrt(2))
            Line(new(x, box.Y1), new(x + box.Height, box.Y0), stroke);
        graphics.Restore(state);
    }

    /// <summary>One line of text; signs the text face lacks come from the signs' own.</summary>
    /// <param name="at">The point on the baseline that <paramref name="align"/> names, mm.</param>
    /// <param name="turn">Quarter turns to the left: 1 reads from the right edge.</param>
    public void Text(Point2 at, string text, Lettering lettering, Align align = Align.Left, int turn = 0)
    {
        var width = Width(text, lettering);
        var x = align switch { Align.Left => 0, Align.Middle => -width / 2, _ => -width };
        var state = graphics.Save();
        graphics.TranslateTransform(at.X, at.Y);
        if (turn != 0) graphics.RotateTransform(-90 * turn);
        foreach (var (run, face) in Runs(text, lettering))
        {
            graphics.DrawString(run, Font(face), XBrushes.Black, x, 0, XStringFormats.BaseLineLeft);
            x += graphics.MeasureString(run, Font(face)).Width;
        }
        graphics.Restore(state);
    }

    /// <summary>Width of a line of text, mm.</summary>
    public double Width(string text, Lettering lettering) => Runs(text, lettering).Sum(r => graphics.MeasureString(r.Text, Font(r.Lettering)).Width);

    /// <summary>Breaks text into lines no wider than given; a single word that is too long is broken inside.</summary>
    public List<string> Wrap(string text, Lettering lettering, double width)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (Width(longer, lettering) <= width) { line = longer; continue; }
            if (line.Length > 0) lines.Add(line);
            line = word;
            while (Width(line, lettering) > width && line.Length > 1)
            {
                var keep = line.Length - 1;
                while (keep > 1 && Width(line[..keep], lettering) > width) keep--;
                lines.Add(line[..keep]);
                line = line[keep..];
            }
        }
        if (line.Length > 0) lines.Add(line);
        return lines;
    }

    private static IEnumerable<(string Text, Lettering Lettering)> Runs(string text, Lettering lettering)
    {
        var start = 0;
        for (var i = 1; i <= text.Length; i++)
        {
            if (i < text.Length && IsSign(text[i]) == IsSign(text[start])) continue;
            yield return (text[start..i], IsSign(text[start]) ? lettering with { Face = Face.Signs } : lettering);
            start = i;
        }
    }

    private static bool IsSign(char c) => SheetFonts.Signs.Contains(c, StringComparison.Ordinal);

    private XFont Font(Lettering lettering)
    {
        if (fonts.TryGetValue(lettering, out var font)) return font;
        return fonts[lettering] = new(SheetFonts.FileOf(lettering.Face), lettering.Size, XFontStyleEx.Regular);
    }

    private static XPen Pen(Stroke stroke)
    {
        var pen = new XPen(XColors.Black, stroke.Width) { LineJoin = XLineJoin.Round };
        if (stroke.Dashes.Length > 0) pen.DashPattern = [.. stroke.Dashes.Select(d => d / stroke.Width)];
        return pen;
    }
}
