using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Packet.Pictures;

/// <summary>The shaded solid: light from over the reader's left shoulder, two tones of the part's wood, no cast shadow.</summary>
internal static class Relief
{
    private const double Ambient = 0.34;
    private const double Direct = 0.66;
    /// <summary>How much the closeness of higher wood within 10 mm darkens.</summary>
    private const double Closeness = 0.55;
    private static readonly double[] Rings = [2, 5, 9];   // mm
    private const int Directions = 8;
    /// <summary>A step between neighbouring cells above this, mm per mm, is a wall seen edge on: it has no tone of its own, the part's lines draw it.</summary>
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
        var heights = new double[grid.Count];   // toward the reader, row 0 on top, NaN where there is no wood
        for (var i = 0; i < heights.Length; i++)
        {
            var column = columns[front ? (grid.Rows - 1 - i / grid.Columns) * grid.Columns + i % grid.Columns : i];
            heights[i] = column.IsEmpty ? double.NaN : front ? column.Top : -column.Bottom;
        }
        double? Height(int c, int r) => c < 0 || c >= grid.Columns || r < 0 || r >= grid.Rows || double.IsNaN(heights[r * grid.Columns + c]) ? null : heights[r * grid.Columns + c];
        var around = Rings.SelectMany(ring => Enumerable.Range(0, Directions).Select(k => ring / cell * Point2.Polar(2 * Math.PI * k / Directions)).Select(s => (X: (int)Math.Round(s.X), Y: (int)Math.Round(s.Y), Ring: ring))).ToArray();
        var box = new Box2(view.At(new(grid.X0, 0)).X, view.Box.Centre.Y - grid.Rows * cell / 2, view.At(new(grid.X0 + grid.Columns * cell, 0)).X, view.Box.Centre.Y + grid.Rows * cell / 2);
        svg.Raster(box, grid.Columns, grid.Rows, (c, r) =>
        {
            if (Height(c, r) is not { } here) return null;
            var dx = Slope(Height(c - 1, r), here, Height(c + 1, r), cell);
            var dy = Slope(Height(c, r + 1), here, Height(c, r - 1), cell);
            if (Math.Max(Math.Abs(dx), Math.Abs(dy)) > EdgeSlope) (dx, dy) = (0, 0);
            var tone = Ambient + Direct * Math.Max(0, (-dx * Light.X - dy * Light.Y + Light.Z) / Math.Sqrt(1 + dx * dx + dy * dy));
            return Tint.Between(dark, light, tone * (1 - Closeness * Closed(c, r, here)));
        });

        // The sine of the rise to the wood around, averaged: 0 in the open, towards 1 at the foot of a wall.
        double Closed(int c, int r, double here)
        {
            var sum = 0.0;
            foreach (var (x, y, ring) in around)
                if (Height(c + x, r + y) is { } there && there > here)
                    sum += (there - here) / Math.Sqrt((there - here) * (there - here) + ring * ring);
            return sum / around.Length;
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
