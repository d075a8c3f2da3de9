using Solidbody.Geometry;

namespace Solidbody.Packet.Sheets;

/// <summary>How wide a column of a table is and how its cells are set.</summary>
/// <param name="Name">Its head.</param>
/// <param name="Width">mm.</param>
/// <param name="Align">Of cells and head.</param>
/// <param name="Strong">Whether cells are set strong.</param>
internal sealed record Column(string Name, double Width, Align Align = Align.Left, bool Strong = false);

/// <summary>A table with a box to tick before each row; long cells wrap, long tables go on where the caller says.</summary>
internal sealed class Table(Paper paper, double x, IReadOnlyList<Column> columns)
{
    public const double TickColumn = 7.5;
    private const double TickBox = 3.4;
    private const double CellPadding = 1.5;
    private const double RowPadding = 1.4;

    private double Width => TickColumn + columns.Sum(c => c.Width);

    public static double HeadHeight => Lettering.Small.LineHeight + 1.6;

    public double Head(double y)
    {
        var baseline = y + 0.8 + Lettering.Small.CapHeight;
        Cells((column, at) => paper.Text(at with { Y = baseline }, column.Name, Lettering.Small, column.Align));
        paper.Line(new(x, y + HeadHeight), new(x + Width, y + HeadHeight), Stroke.Frame);
        return y + HeadHeight;
    }

    /// <summary>Height a row needs.</summary>
    public double HeightOf(IReadOnlyList<string> cells) => RowPadding + Lines(cells).Max(l => Math.Max(1, l.Count)) * Lettering.Body.LineHeight;

    /// <summary>Draws a row and the line under it.</summary>
    /// <param name="blanks">How many lines to write on stand in the last column.</param>
    public double Row(double y, IReadOnlyList<string> cells, int blanks = 0)
    {
        var height = HeightOf(cells);
        paper.Rectangle(new Box2(x, y, x + TickBox, y + TickBox) is var b ? new(b.X0, b.Y0 + (height - TickBox) / 2, b.X1, b.Y1 + (height - TickBox) / 2) : default, Stroke.Frame);
        var lines = Lines(cells);
        var i = 0;
        Cells((column, at) =>
        {
            var cell = lines[i++];
            var block = (cell.Count - 1) * Lettering.Body.LineHeight + Lettering.Body.CapHeight;
            var first = y + (height - block) / 2 + Lettering.Body.CapHeight;
            for (var k = 0; k < cell.Count; k++)
                paper.Text(at with { Y = first + k * Lettering.Body.LineHeight }, cell[k], Of(column), column.Align);
        });
        paper.Line(new(x, y + height), new(x + Width, y + height), Stroke.Fine);
        WriteOn(y + height, blanks);
        return y + height;
    }

    private void WriteOn(double y, int blanks)
    {
        if (blanks == 0) return;
        var (to, room) = (x + Width, columns[^1].Width - CellPadding);
        var each = (room - (blanks - 1) * 1.2) / blanks;
        for (var i = 0; i < blanks; i++)
        {
            var from = to - room + i * (each + 1.2);
            paper.Line(new(from, y), new(from + each, y), Stroke.Frame);
        }
    }

    private void Cells(Action<Column, Point2> draw)
    {
        var left = x + TickColumn;
        foreach (var column in columns)
        {
            draw(column, new(column.Align == Align.Right ? left + column.Width - CellPadding : left, 0));
            left += column.Width;
        }
    }

    private List<List<string>> Lines(IReadOnlyList<string> cells) =>
        [.. columns.Select((c, i) => i < cells.Count ? paper.Wrap(cells[i], Of(c), c.Width - CellPadding) : [])];

    private static Lettering Of(Column column) => column.Strong ? Lettering.BodyStrong : Lettering.Body;
}
