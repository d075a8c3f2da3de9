using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Packet.Pictures;

/// <summary>The shaded solid: light from over the reader's left shoulder, two tones of the part's wood, no cast shadow, steep steps in ink.</summary>
internal static class Relief
{
    private const double Ambient = 0.34;
    private const double Direct = 0.66;
    /// <summary>How much the closeness of higher wood within 10 mm darkens.</summary>
    private const double Closeness = 0.55;
    private static readonly double[] Rings = [2, 5, 9];   // mm
    private const int Directions = 8;
    /// <summary>A step between neighbouring cells above this, mm per mm, is an edge.</summary>
    private const double EdgeSlope = 7;
    /// <summary>Toward the light: right, up on the picture, toward the reader.</summary>
    private static readonly (double X, double Y, double Z) Light = Unit(-0.45, 0.75, 0.55);

    /// <summary>Draws the part's surface as it is designed into the view.</summary>
    public static void Draw(Svg svg, PictureView view, Part part, int widest)
    {
        var cell = Math.Max(0.25, view.Shown.Width / widest);
        var grid = Grid.Over(view.Shown, cell);
        var columns = new DesignColumn[grid.Count];
        new PartShape(part).Sample(grid, columns);
        var (dark, light) = Palette.Wood(part.Name);
        var front = view.Seen == Side.Front;
        double? Height(int c, int r)
        {
            if (c < 0 || c >= grid.Columns || r < 0 || r >= grid.Rows) return null;
            var column = columns[(front ? grid.Rows - 1 - r : r) * grid.Columns + c];
            return column.IsEmpty ? null : front ? column.Top : -column.Bottom;
        }
        var box = new Box2(view.At(new(grid.X0, 0)).X, view.Box.Centre.Y - grid.Rows * cell / 2, view.At(new(grid.X0 + grid.Columns * cell, 0)).X, view.Box.Centre.Y + grid.Rows * cell / 2);
        svg.Raster(box, grid.Columns, grid.Rows, (c, r) =>
        {
            if (Height(c, r) is not { } here) return null;
            var dx = Slope(Height(c - 1, r), here, Height(c + 1, r), cell);
            var dy = Slope(Height(c, r + 1), here, Height(c, r - 1), cell);
            if (Math.Max(Math.Abs(dx), Math.Abs(dy)) > EdgeSlope) return Palette.Ink;
            var tone = Ambient + Direct * Math.Max(0, (-dx * Light.X - dy * Light.Y + Light.Z) / Math.Sqrt(1 + dx * dx + dy * dy));
            return Tint.Between(dark, light, tone * (1 - Closeness * Closed(c, r, here)));
        });

        // The sine of the rise to the wood around, averaged: 0 in the open, towards 1 at the foot of a wall.
        double Closed(int c, int r, double here)
        {
            var sum = 0.0;
            foreach (var ring in Rings)
                for (var k = 0; k < Directions; k++)
                {
                    var step = ring / cell * Point2.Polar(2 * Math.PI * k / Directions);
                    if (Height(c + (int)Math.Round(step.X), r + (int)Math.Round(step.Y)) is { } there && there > here)
                        sum += (there - here) / Math.Sqrt((there - here) * (there - here) + ring * ring);
                }
            return sum / (Rings.Length * Directions);
        }
    }

    /// <summary>Rise from one neighbour to the other over their distance; one-sided at the part's edge.</summary>
    private static double Slope(double? before, double here, double? after, double cell) => (before, after) switch
    {
        ({ } b, { } a) => (a - b) / (2 * cell),
        ({ } b, null) => (here - b) / cell,
        (null, { } a) => (a - here) / cell,
        _ => 0,
    };

    private static (double, double, double) Unit(double x, double y, double z)
    {
        var length = Math.Sqrt(x * x + y * y + z * z);
        return (x / length, y / length, z / length);
    }
}
