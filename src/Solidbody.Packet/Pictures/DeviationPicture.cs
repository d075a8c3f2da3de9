using System.Globalization;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Packet.Drawing;

namespace Solidbody.Packet.Pictures;

/// <summary>How far the cut wood is from the part, as a map: blue where wood is left, brown where it is cut too deep.</summary>
public static class DeviationPicture
{
    private const double Margin = 12;
    /// <summary>Letters against the picture's width: a long part is shown smaller, and its words must still be read.</summary>
    private const double LettersToWidth = 1.0 / 62;
    private const double BarToWidth = 0.36;
    private const double LeastWidth = 320;   // mm: the scale's words need it
    private const int WidestRaster = 1200;

    /// <summary>The picture as SVG, its view box in millimetres of the part.</summary>
    /// <param name="part">The part as designed; its lines lie over the map.</param>
    /// <param name="seen">The face the map belongs to.</param>
    /// <param name="grid">The map's cells, part frame.</param>
    /// <param name="deviations">Signed, mm, row-major as the grid: positive is wood left on; NaN is not compared.</param>
    /// <param name="deepest">Limit of a cut too deep, mm &gt; 0.</param>
    /// <param name="leftover">Limit of wood left on, mm &gt; 0.</param>
    /// <exception cref="ArgumentException">The map does not have the grid's number of cells.</exception>
    public static string Svg(Part part, Side seen, Grid grid, ReadOnlySpan<float> deviations, double deepest, double leftover)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (deviations.Length != grid.Count) throw new ArgumentException($"{grid.Count} deviations are needed, {deviations.Length} were given.", nameof(deviations));
        var map = DeviationSummary.Of(grid, deviations, deepest, leftover, WidestRaster);
        var shown = part.Outline.Bounds.Grown(2);
        var width = Math.Max(shown.Width, LeastWidth) + 2 * Margin;
        var letters = width * LettersToWidth;
        var head = Margin + 1.6 * letters;
        var svg = new Svg(width, head + shown.Height + 7.2 * letters, $"{part.Name}, deviation {seen}");
        var view = new PictureView(seen, shown, new(Margin, head));
        svg.Text(new(Margin, Margin + 0.2 * letters), $"{char.ToUpperInvariant(part.Name[0])}{part.Name[1..]} {view.Words}: cut wood against the part, {Share(map.Within)} within both limits", letters, weight: 700);

        var end = 1.5 * Math.Max(deepest, leftover);
        var (a, b) = (view.At(new(grid.X0, grid.Y0)), view.At(new(grid.X0 + grid.Columns * grid.Cell, grid.Y0 + grid.Rows * grid.Cell)));
        svg.Raster(Box2.Around([a, b]), map.Columns, map.Rows, (c, r) =>
        {
            var value = map.Worst[(seen == Side.Front ? map.Rows - 1 - r : r) * map.Columns + c];
            return float.IsNaN(value) ? part.Outline.Contains(map.Centre(c, seen == Side.Front ? map.Rows - 1 - r : r)) ? Palette.NotCompared : null : Palette.Deviation(value / end);
        });
        svg.Hairlines(LevelLines.Of(part, seen).Select(p => (view.At(p.A), view.At(p.B))), 0.6);
        foreach (var line in PartLines.Seen(part, seen))
            svg.Loop(line.Loop.Points.Select(view.At), line.Role == LineRole.Outline ? 0.7 : 0.3);
        foreach (var (at, value) in map.Places)
            Ring(svg, view, at, value, letters);
        Scale(svg, new(Margin, view.Box.Y1 + 3.2 * letters), width, letters, deepest, leftover, end, map);
        return svg.ToString();
    }

    /// <summary>Rounded down, so that 100 % is said only when all of it is within.</summary>
    private static string Share(double within) => Percent(Math.Floor(within * 1000) / 1000);

    /// <summary>Rounded up, so that 0 % is said only when none of it is beyond.</summary>
    private static string Beyond(double share) => Percent(Math.Ceiling(share * 1000) / 1000);

    private static string Percent(double share) => (share * 100).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    private static void Ring(Svg svg, PictureView view, Point2 at, double value, double letters)
    {
        var radius = 0.75 * letters;
        var centre = view.At(at);
        svg.Hairlines(Hatching(centre, radius), 0.8);
        svg.Circle(centre, radius, 0.7);
        var toLeft = centre.X > view.Box.Centre.X;
        svg.Text(centre + new Point2(toLeft ? -1.35 * radius : 1.35 * radius, 0.35 * letters), Written.Signed(value), letters, toLeft ? "end" : "start", 700);
    }

    /// <summary>Chords at 45°.</summary>
    private static IEnumerable<(Point2, Point2)> Hatching(Point2 centre, double radius)
    {
        foreach (var share in new[] { -0.6, 0, 0.6 })
        {
            var half = radius * Math.Sqrt(1 - share * share);
            Point2 along = new(Math.Sqrt(0.5), -Math.Sqrt(0.5));
            var middle = centre + share * radius * along.Left;
            yield return (middle - half * along, middle + half * along);
        }
    }

    /// <summary>The bar runs from too deep on the left to wood left on the right, both limits as lines across it, and how much of the surface is beyond each.</summary>
    private static void Scale(Svg svg, Point2 at, double width, double letters, double deepest, double leftover, double end, DeviationSummary map)
    {
        const int steps = 200;
        var bar = new Box2(at.X, at.Y, at.X + BarToWidth * width, at.Y + letters);
        var small = 0.85 * letters;
        double X(double value) => bar.Centre.X + value / end * bar.Width / 2;
        svg.Raster(bar, steps, 1, (c, _) => Palette.Deviation((c + 0.5) / steps * 2 - 1));
        svg.Rectangle(bar, "none", 0.35);
        foreach (var limit in new[] { -deepest, leftover })
        {
            svg.Line(new(X(limit), bar.Y0 - 0.4 * letters), new(X(limit), bar.Y1 + 0.4 * letters), 0.7);
            svg.Text(new(X(limit), bar.Y1 + 1.5 * letters), Written.Signed(limit), small, "middle");
        }
        svg.Line(new(X(0), bar.Y1), new(X(0), bar.Y1 + 0.3 * letters), 0.35);
        svg.Text(new(X(0), bar.Y1 + 1.5 * letters), "0 mm", small, "middle");
        svg.Text(new(bar.X0, bar.Y0 - 0.7 * letters), "cut too deep", small);
        svg.Text(new(bar.X1, bar.Y0 - 0.7 * letters), "wood left on", small, "end");

        var x = bar.X1 + 2.5 * letters;
        svg.Text(new(x, bar.Y0 + 0.3 * small), $"deeper than {Written.Signed(-deepest)}: {Beyond(map.TooDeep)} of the surface", small);
        svg.Text(new(x, bar.Y0 + 1.7 * small), $"more than {Written.Signed(leftover)}: {Beyond(map.LeftOn)} of the surface", small);
        svg.Text(new(x, bar.Y0 + 3.1 * small), "thin lines: levels, every 2 mm down", small, colour: Palette.SecondInk);
        var right = x + Pictures.Svg.WidestText("thin lines: levels, every 2 mm down  ", small);
        svg.Rectangle(new(right, bar.Y0 - 0.5 * small, right + 1.6 * small, bar.Y0 + 0.4 * small), Palette.NotCompared.Hex, 0.35);
        svg.Text(new(right + 2.2 * small, bar.Y0 + 0.3 * small), "not compared", small);
        svg.Text(new(right, bar.Y0 + 1.7 * small), "rings: the worst places", small);
    }
}
