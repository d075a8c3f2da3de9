using System.Numerics;
using System.Runtime.CompilerServices;

namespace Solidbody.Machining.Toolpaths;

/// <summary>The highest of surface height less cutter height under a cutter, over a field of heights.</summary>
internal static class ContactKernel
{
    /// <summary>Finds the cell that carries the cutter.</summary>
    /// <param name="field">Heights, row-major, mm; −∞ where nothing carries.</param>
    /// <param name="columns">Cells a row.</param>
    /// <param name="column">Column of the axis, in cells, counted from the middle of column 0.</param>
    /// <param name="row">Row of the axis, likewise.</param>
    /// <param name="cell">Side of a cell, mm.</param>
    /// <param name="form">The cutter.</param>
    /// <returns>Tip height and the cell's index, the lowest of equals; (−∞, −1) when nothing is under the cutter.</returns>
    /// <remarks>Same numbers, bit for bit, as <see cref="HighestPlainly"/>.</remarks>
    public static (float Height, int Cell) Highest(ReadOnlySpan<float> field, int columns, float column, float row, float cell, in CutterForm form)
    {
        var lanes = Vector<float>.Count;
        var best = new Vector<float>(float.NegativeInfinity);
        var cells = new Vector<int>(-1);
        var (tail, tailCell) = (float.NegativeInfinity, -1);
        var (first, last) = Rows(field.Length / columns, row, cell, form);
        for (var r = first; r <= last; r++)
        {
            var dy = (r - row) * cell;
            var (c0, c1) = Columns(columns, column, cell, dy, form);
            var c = c0;
            for (; c + lanes - 1 <= c1; c += lanes)
            {
                var dx = (Vector.ConvertToSingle(Vector<int>.Indices + new Vector<int>(c)) - new Vector<float>(column)) * cell;
                var heights = new Vector<float>(field.Slice(r * columns + c, lanes)) - Height(dx * dx + new Vector<float>(dy * dy), form);
                var higher = Vector.GreaterThan(heights, best);
                best = Vector.ConditionalSelect(higher, heights, best);
                cells = Vector.ConditionalSelect(higher, new Vector<int>(r * columns + c) + Vector<int>.Indices, cells);
            }
            for (; c <= c1; c++) Plain(field, columns, column, cell, form, r, c, dy, ref tail, ref tailCell);
        }
        for (var i = 0; i < lanes; i++)
            if (best[i] > tail || (best[i] == tail && cells[i] >= 0 && cells[i] < tailCell)) (tail, tailCell) = (best[i], cells[i]);
        return (tail, tailCell);
    }

    /// <summary>The plain statement of <see cref="Highest"/>.</summary>
    public static (float Height, int Cell) HighestPlainly(ReadOnlySpan<float> field, int columns, float column, float row, float cell, in CutterForm form)
    {
        var (best, bestCell) = (float.NegativeInfinity, -1);
        var (first, last) = Rows(field.Length / columns, row, cell, form);
        for (var r = first; r <= last; r++)
        {
            var dy = (r - row) * cell;
            var (c0, c1) = Columns(columns, column, cell, dy, form);
            for (var c = c0; c <= c1; c++) Plain(field, columns, column, cell, form, r, c, dy, ref best, ref bestCell);
        }
        return (best, bestCell);
    }

    private static void Plain(ReadOnlySpan<float> field, int columns, float column, float cell, in CutterForm form, int r, int c, float dy, ref float best, ref int bestCell)
    {
        var dx = (c - column) * cell;
        var height = field[r * columns + c] - form.Height(dx * dx + dy * dy);
        if (height > best) (best, bestCell) = (height, r * columns + c);
    }

    private static (int, int) Rows(int rows, float row, float cell, in CutterForm form)
    {
        var reach = form.Radius / cell;
        return (Math.Max(0, (int)MathF.Ceiling(row - reach)), Math.Min(rows - 1, (int)MathF.Floor(row + reach)));
    }

    private static (int, int) Columns(int columns, float column, float cell, float dy, in CutterForm form)
    {
        var reach = MathF.Sqrt(MathF.Max(0, form.Radius * form.Radius - dy * dy)) / cell;
        return (Math.Max(0, (int)MathF.Ceiling(column - reach)), Math.Min(columns - 1, (int)MathF.Floor(column + reach)));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<float> Height(Vector<float> r2, in CutterForm form)
    {
        var ball = new Vector<float>(form.Ball) - Vector.SquareRoot(Vector.Max(Vector<float>.Zero, new Vector<float>(form.Ball * form.Ball) - r2));
        var cone = new Vector<float>(form.Start) + (Vector.SquareRoot(r2) - new Vector<float>(form.Touch)) * form.Slope;
        return Vector.ConditionalSelect(Vector.LessThanOrEqual(r2, new Vector<float>(form.Touch * form.Touch)), ball, cone);
    }
}
