using System.Text;
using BigGustave;
using Solidbody.Geometry;
using Solidbody.Packet.Drawing;

namespace Solidbody.Packet.Pictures;

/// <summary>A picture in true millimetres, y down, written as SVG 1.1: vector lines and text, rasters as embedded PNG.</summary>
internal sealed class Svg(double width, double height, string title)
{
    /// <summary>Where the first is missing the others are wider; texts are placed by <see cref="WidestText"/>.</summary>
    private const string FontFamily = "Overpass, 'DejaVu Sans', Verdana, sans-serif";
    /// <summary>Mean advance of the widest of them, DejaVu Sans Bold, in running text, em (measured on the captions here: 0.60 to 0.66).</summary>
    private const double WidestAdvance = 0.68;

    private readonly StringBuilder body = new();

    /// <summary>Room a text needs in the widest face it may be shown in.</summary>
    public static double WidestText(string text, double size) => WidestAdvance * size * text.Length;

    public void Line(Point2 a, Point2 b, double stroke, Tint? colour = null) =>
        body.Append($"<line x1=\"{N(a.X)}\" y1=\"{N(a.Y)}\" x2=\"{N(b.X)}\" y2=\"{N(b.Y)}\" stroke=\"{(colour ?? Palette.Ink).Hex}\" stroke-width=\"{N(stroke)}\"/>\n");

    public void Rectangle(Box2 box, string fill, double stroke) =>
        body.Append($"<rect x=\"{N(box.X0)}\" y=\"{N(box.Y0)}\" width=\"{N(box.Width)}\" height=\"{N(box.Height)}\" fill=\"{fill}\"{Stroke(stroke)}/>\n");

    public void Circle(Point2 centre, double radius, double stroke) =>
        body.Append($"<circle cx=\"{N(centre.X)}\" cy=\"{N(centre.Y)}\" r=\"{N(radius)}\" fill=\"none\"{Stroke(stroke)}/>\n");

    public void Dot(Point2 centre, double radius) =>
        body.Append($"<circle cx=\"{N(centre.X)}\" cy=\"{N(centre.Y)}\" r=\"{N(radius)}\" fill=\"{Palette.Ink.Hex}\"/>\n");

    /// <summary>Open lines of one width on the screen, however large the picture is shown: one path.</summary>
    public void Hairlines(IEnumerable<(Point2 A, Point2 B)> segments, double pixels) =>
        body.Append("<path d=\"").AppendJoin("", segments.Select(s => $"M{N2(s.A.X)} {N2(s.A.Y)}L{N2(s.B.X)} {N2(s.B.Y)}"))
            .Append($"\" fill=\"none\" stroke=\"{Palette.Ink.Hex}\" stroke-width=\"{N(pixels)}\" stroke-linecap=\"round\" vector-effect=\"non-scaling-stroke\"/>\n");

    /// <summary>A closed line without filling.</summary>
    public void Loop(IEnumerable<Point2> points, double stroke) =>
        body.Append("<path d=\"M").AppendJoin('L', points.Select(p => $"{N2(p.X)} {N2(p.Y)}")).Append($"Z\" fill=\"none\" stroke-linejoin=\"round\"{Stroke(stroke)}/>\n");

    /// <summary>Text on its baseline with a halo of paper, so that it reads over lines and maps.</summary>
    public void Text(Point2 at, string text, double size, string anchor = "start", int weight = 400, Tint? colour = null) =>
        body.Append($"<text x=\"{N(at.X)}\" y=\"{N(at.Y)}\" font-size=\"{N(size)}\" font-weight=\"{weight}\" text-anchor=\"{anchor}\" fill=\"{(colour ?? Palette.Ink).Hex}\" stroke=\"{Palette.Sheet.Hex}\" stroke-width=\"{N(size / 3)}\" paint-order=\"stroke\">{Escaped(text)}</text>\n");

    /// <summary>Pixels stretched over a box; row 0 on top. A pixel without a colour shows the paper.</summary>
    public void Raster(Box2 box, int columns, int rows, Func<int, int, Tint?> colourAt)
    {
        var png = PngBuilder.Create(columns, rows, hasAlphaChannel: true);
        for (var r = 0; r < rows; r++)
            for (var c = 0; c < columns; c++)
                png.SetPixel(colourAt(c, r) is { } t ? new Pixel(t.R, t.G, t.B, 255, false) : new Pixel(0, 0, 0, 0, false), c, r);
        using var stream = new MemoryStream();
        png.Save(stream, new PngBuilder.SaveOptions { AttemptCompression = true });
        body.Append($"<image x=\"{N(box.X0)}\" y=\"{N(box.Y0)}\" width=\"{N(box.Width)}\" height=\"{N(box.Height)}\" preserveAspectRatio=\"none\" xlink:href=\"data:image/png;base64,{Convert.ToBase64String(stream.ToArray())}\"/>\n");
    }

    public override string ToString() =>
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"{N(width)}mm\" height=\"{N(height)}mm\" viewBox=\"0 0 {N(width)} {N(height)}\" font-family=\"{FontFamily}\">\n"
        + $"<title>{Escaped(title)}</title>\n<rect width=\"{N(width)}\" height=\"{N(height)}\" fill=\"{Palette.Sheet.Hex}\"/>\n{body}</svg>\n";

    private static string Stroke(double width) => width > 0 ? $" stroke=\"{Palette.Ink.Hex}\" stroke-width=\"{N(width)}\"" : "";
    private static string N(double value) => Written.Plain(value);
    private static string N2(double value) => Written.Plain(Math.Round(value, 2));
    private static string Escaped(string text) => System.Security.SecurityElement.Escape(text);
}
