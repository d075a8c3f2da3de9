namespace Solidbody.Geometry;

/// <summary>Square cells over a plan, mm; a cell stands for the column over its middle. Row-major, x fastest.</summary>
/// <param name="X0">Left edge of column 0.</param>
/// <param name="Y0">Lower edge of row 0.</param>
/// <param name="Cell">Side of a cell.</param>
/// <param name="Columns">Cells along x.</param>
/// <param name="Rows">Cells along y.</param>
public readonly record struct Grid(double X0, double Y0, double Cell, int Columns, int Rows)
{
    public int Count => Columns * Rows;
    public double X(int column) => X0 + (column + 0.5) * Cell;
    public double Y(int row) => Y0 + (row + 0.5) * Cell;
    public Point2 Centre(int column, int row) => new(X(column), Y(row));

    /// <summary>The fewest cells of the given side that cover a box, centred on it.</summary>
    public static Grid Over(Box2 box, double cell)
    {
        var columns = Math.Max(1, (int)Math.Ceiling(box.Width / cell));
        var rows = Math.Max(1, (int)Math.Ceiling(box.Height / cell));
        return new(box.Centre.X - columns * cell / 2, box.Centre.Y - rows * cell / 2, cell, columns, rows);
    }
}
