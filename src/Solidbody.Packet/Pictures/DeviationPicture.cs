using System.Globalization;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Packet.Drawing;

namespace Solidbody.Packet.Pictures;

/// <summary>How far the cut wood is from the part, as a map: blue where wood is left, brown where it is cut too deep.</summary>
public static class DeviationPicture
{
    private const double Margin = 12;
    private const double Head = 16;
    private const double Foot = 34;
    private const double Letters = 6;
    private const double Bar = 160;
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
        var width = Math.Max(shown.Width, 2 * Bar) + 2 * Margin;
        var svg = new Svg(width, Head + shown.Height + Foot + Margin, $"{part.Name}, deviation {seen}");
        var view = new PictureView(seen, shown, new(Margin, Head));
        svg.Text(new(Margin, 9), $"{char.ToUpperInvariant(part.Name[0])}{part.Name[1..]} {view.Words}, cut wood against the part: {Share(map.Within)} of the surface within its limits", Letters, weight: 700);

        var end = 1.5 * Math.Max(deepest, leftover);
        var (a, b) = (view.At(new(grid.X0, grid.Y0)), view.At(new(grid.X0 + grid.Columns * grid.Cell, grid.Y0 + grid.Rows * grid.Cell)));
        svg.Raster(Box2.Around([a, b]), map.Columns, map.Rows, (c, r) =>
        {
            var value = map.Worst[(seen == Side.Front ? map.Rows - 1 - r : r) * map.Columns + c];
            return float.IsNaN(value) ? part.Outline.Contains(map.Centre(c, seen == Side.Front ? map.Rows - 1 - r : r)) ? Palette.NotCompared : null : Palette.Deviation(value / end);
        });
        foreach (var line in PartLines.Seen(part, seen))
            svg.Loop(line.Loop.Points.Select(view.At), line.Role == LineRole.Outline ? 0.7 : 0.25);
        foreach (var (at, value) in map.Places)
            Ring(svg, view, at, value);
        Scale(svg, view.Box.Y1 + 12, deepest, leftover, end);
        return svg.ToString();
    }

    /// <summary>Rounded down, so that 100 % is said only when all of it is within.</summary>
    private static string Share(double within) => (Math.Floor(within * 1000) / 10).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    private static void Ring(Svg svg, PictureView view, Point2 at, double value)
    {
        const double radius = 4;
        var centre = view.At(at);
        svg.Circle(centre, radius, 0.6);
        var toLeft = centre.X > view.Box.Centre.X;
        svg.Text(centre + new Point2(toLeft ? -radius - 1.5 : radius + 1.5, 2), Figures.Signed(value), Letters, toLeft ? "end" : "start", 700);
    }

    /// <summary>The bar runs from too deep on the left to wood left on the right, both limits as lines across it.</summary>
    private static void Scale(Svg svg, double y, double deepest, double leftover, double end)
    {
        const int steps = 200;
        var bar = new Box2(Margin, y, Margin + Bar, y + 6);
        double X(double value) => bar.Centre.X + value / end * Bar / 2;
        svg.Raster(bar, steps, 1, (c, _) => Palette.Deviation((c + 0.5) / steps * 2 - 1));
        svg.Rectangle(bar, "none", 0.35);
        foreach (var limit in new[] { -deepest, leftover })
        {
            svg.Line(new(X(limit), bar.Y0 - 2), new(X(limit), bar.Y1 + 2), 0.6);
            svg.Text(new(X(limit), bar.Y1 + 8), Figures.Signed(limit), Letters * 0.85, "middle");
        }
        svg.Line(new(X(0), bar.Y1), new(X(0), bar.Y1 + 1.5), 0.35);
        svg.Text(new(X(0), bar.Y1 + 8), "0", Letters * 0.85, "middle");
        svg.Text(new(bar.X0, bar.Y1 + 15), "cut too deep, mm", Letters * 0.85);
        svg.Text(new(bar.X1, bar.Y1 + 15), "wood left on", Letters * 0.85, "end");
        svg.Text(new(bar.X1 + 8, bar.Y0 + 5), "lines: the limits", Letters * 0.85, colour: Palette.SecondInk);
        svg.Rectangle(new(bar.X1 + 60, bar.Y0, bar.X1 + 66, bar.Y1), Palette.NotCompared.Hex, 0.35);
        svg.Text(new(bar.X1 + 69, bar.Y0 + 5), "not compared", Letters * 0.85, colour: Palette.SecondInk);
    }
}
