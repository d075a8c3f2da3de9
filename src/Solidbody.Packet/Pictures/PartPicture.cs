using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Packet.Drawing;

namespace Solidbody.Packet.Pictures;

/// <summary>A part as designed, true size: shaded and as lines, from the front and from the back.</summary>
public static class PartPicture
{
    private const double Margin = 12;
    private const double Caption = 14;
    private const double Letters = 6;
    private const int WidestRaster = 700;

    /// <summary>The picture as SVG, its view box in millimetres of the part.</summary>
    public static string Svg(Part part, string instrument)
    {
        ArgumentNullException.ThrowIfNull(part);
        var shown = part.Outline.Bounds.Grown(2);
        var each = shown.Height + Caption;
        var height = Margin + 4 * each + Margin + Letters;
        var svg = new Svg(shown.Width + 2 * Margin, height, $"{instrument}, {part.Name}");
        var y = Margin;
        foreach (var (seen, shaded) in new[] { (Side.Front, true), (Side.Front, false), (Side.Back, true), (Side.Back, false) })
        {
            var view = new PictureView(seen, shown, new(Margin, y + Caption - 4));
            svg.Text(new(Margin, y + Letters * 0.7), $"{Name(part)}, {view.Words}{(shaded ? "" : ", lines")}", Letters, weight: 700);
            if (shaded) Relief.Draw(svg, view, part, WidestRaster);
            foreach (var line in PartLines.Seen(part, seen))
                svg.Loop(line.Loop.Points.Select(view.At), line.Role switch { LineRole.Outline => 0.7, LineRole.Feature => 0.35, _ => 0.2 });
            if (!shaded) svg.Line(view.At(new(shown.X0 - 6, 0)), view.At(new(shown.X1 + 6, 0)), 0.2, Palette.SecondInk);
            y += each;
        }
        var bounds = part.Bounds;
        svg.Text(new(Margin, height - Margin), $"{instrument}: {Written.Millimetres(bounds.Length)} × {Written.Millimetres(bounds.Width)} × {Written.Millimetres(bounds.Thickness)} mm", Letters, colour: Palette.SecondInk);
        return svg.ToString();
    }

    private static string Name(Part part) => char.ToUpperInvariant(part.Name[0]) + part.Name[1..];
}
