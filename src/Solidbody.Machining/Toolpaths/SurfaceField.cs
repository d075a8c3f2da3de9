using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A surface sampled over a box, for finding where a cutter rests on it.</summary>
internal sealed class SurfaceField
{
    private readonly float[] heights;

    /// <param name="surface">Closed form.</param>
    /// <param name="box">Where it is sampled.</param>
    /// <param name="cell">Side of a cell, mm.</param>
    /// <param name="within">Only cells whose middle lies inside carry the cutter; everywhere when null.</param>
    public SurfaceField(IHeight surface, Box2 box, double cell, Region? within = null)
    {
        Grid = Grid.Over(box, cell);
        heights = new float[Grid.Count];
        Parallel.For(0, Grid.Rows, () => new List<double>(), (row, _, crossings) =>
        {
            var line = heights.AsSpan(row * Grid.Columns, Grid.Columns);
            var y = Grid.Y(row);
            if (within is null)
            {
                for (var c = 0; c < line.Length; c++) line[c] = (float)surface.Z(Grid.X(c), y);
                return crossings;
            }
            line.Fill(float.NegativeInfinity);
            within.Crossings(y, crossings);
            for (var k = 0; k + 1 < crossings.Count; k += 2)
            {
                var first = Math.Max(0, (int)Math.Ceiling((crossings[k] - Grid.X0) / cell - 0.5));
                var last = Math.Min(Grid.Columns - 1, (int)Math.Floor((crossings[k + 1] - Grid.X0) / cell - 0.5));
                for (var c = first; c <= last; c++) line[c] = (float)surface.Z(Grid.X(c), y);
            }
            return crossings;
        }, _ => { });
    }

    public Grid Grid { get; }
    public float this[int column, int row] => heights[row * Grid.Columns + column];

    /// <summary>Tip height at which the cutter rests on the samples, and the cell that carries it (−∞, −1 for none).</summary>
    public (float Height, int Cell) Rest(double x, double y, in CutterForm form) =>
        ContactKernel.Highest(heights, Grid.Columns, (float)((x - Grid.X0) / Grid.Cell - 0.5), (float)((y - Grid.Y0) / Grid.Cell - 0.5), (float)Grid.Cell, form);

    /// <summary>The samples in leaves and tiles, for a cutter of some reach in cells.</summary>
    public HeightPyramid Pyramid(int reach) => new(heights, Grid.Columns, reach);

    /// <summary>Whether a cell and its eight neighbours all carry the cutter.</summary>
    public bool IsInner(int cell)
    {
        var (c, r) = (cell % Grid.Columns, cell / Grid.Columns);
        if (c < 1 || r < 1 || c + 1 >= Grid.Columns || r + 1 >= Grid.Rows) return false;
        for (var dr = -1; dr <= 1; dr++)
            for (var dc = -1; dc <= 1; dc++)
                if (float.IsNegativeInfinity(heights[(r + dr) * Grid.Columns + c + dc])) return false;
        return true;
    }
}
