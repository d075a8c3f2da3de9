using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument;

/// <summary>The wood over one point of a finished part, part frame, mm.</summary>
/// <param name="Bottom">Lower face: wood below it is left over.</param>
/// <param name="Top">Upper face: wood above it is left over.</param>
/// <param name="BottomDeepest">Highest a cut from below may reach (above Bottom only under a drill's cone).</param>
/// <param name="TopDeepest">Lowest a cut from above may reach (below Top only under a drill's cone).</param>
public readonly record struct DesignColumn(double Bottom, double Top, double BottomDeepest, double TopDeepest)
{
    /// <summary>Outside the outline, or in a room that goes through.</summary>
    public static DesignColumn Empty => new(double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity);
    public bool IsEmpty => !(Top > Bottom);

    internal DesignColumn CutFromTop(double to, double deepest) => this with { Top = Math.Min(Top, to), TopDeepest = Math.Min(TopDeepest, deepest) };
    internal DesignColumn CutFromBottom(double to, double deepest) => this with { Bottom = Math.Max(Bottom, to), BottomDeepest = Math.Max(BottomDeepest, deepest) };
}

/// <summary>Evaluates a part exactly, anywhere: the one place where faces, rooms, holes, slots and edges become wood or air. Thread-safe.</summary>
public sealed class PartShape
{
    private readonly ImmutableArray<(ShapedEdge Edge, PathDistance Distance)> edges;

    public PartShape(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        Part = part;
        edges = [.. part.Edges.Select(e => (e, new PathDistance(e.Path, e.Closed, e.Form.Width)))];
    }

    public Part Part { get; }

    /// <summary>The wood over one point; exact up to the flattening of the part's regions.</summary>
    public DesignColumn At(Point2 p)
    {
        if (!Part.Outline.Contains(p)) return DesignColumn.Empty;
        var column = Faces(p);
        foreach (var pocket in Part.Pockets)
            if (pocket.Region.Contains(p)) column = Cut(column, pocket, p);
        foreach (var ledge in Part.Ledges)
            if (!ledge.Inside.Contains(p)) column = Cut(column, ledge);
        foreach (var slot in Part.Slots) column = Cut(column, slot, p);
        foreach (var hole in Part.Holes) column = Cut(column, hole, p);
        return column.IsEmpty ? DesignColumn.Empty : column;
    }

    /// <summary>The wood over every cell of a grid: the same numbers as <see cref="At"/>, row by row, the rows in parallel.</summary>
    /// <param name="columns">Row-major as the grid; exactly <see cref="Grid.Count"/> long.</param>
    /// <exception cref="ArgumentException">The span's length is not the grid's count.</exception>
    public void Sample(Grid grid, Span<DesignColumn> columns)
    {
        if (columns.Length != grid.Count) throw new ArgumentException($"{grid.Count} columns are needed, {columns.Length} were given.", nameof(columns));
        // A span cannot cross threads: bands of rows are worked out side by side, then copied.
        const int bandRows = 64;
        var bands = (grid.Rows + bandRows - 1) / bandRows;
        var group = Math.Max(1, Environment.ProcessorCount);
        var buffers = new DesignColumn[group][];
        for (var first = 0; first < bands; first += group)
        {
            var count = Math.Min(group, bands - first);
            var start = first;
            Parallel.For(0, count, k =>
            {
                var buffer = buffers[k] ??= new DesignColumn[bandRows * grid.Columns];
                var crossings = new List<double>();
                var row0 = (start + k) * bandRows;
                for (var row = row0; row < Math.Min(grid.Rows, row0 + bandRows); row++)
                    SampleRow(grid, row, buffer.AsSpan((row - row0) * grid.Columns, grid.Columns), crossings);
            });
            for (var k = 0; k < count; k++)
            {
                var row0 = (start + k) * bandRows;
                var cells = (Math.Min(grid.Rows, row0 + bandRows) - row0) * grid.Columns;
                buffers[k].AsSpan(0, cells).CopyTo(columns[(row0 * grid.Columns)..]);
            }
        }
    }

    /// <summary>The wood over one row of a grid: the same numbers as <see cref="At"/>, without any room of its own.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="row">Which row.</param>
    /// <param name="columns">One place a column; exactly <see cref="Grid.Columns"/> long.</param>
    /// <exception cref="ArgumentException">The span's length is not the grid's number of columns.</exception>
    public void SampleRow(Grid grid, int row, Span<DesignColumn> columns)
    {
        if (columns.Length != grid.Columns) throw new ArgumentException($"{grid.Columns} columns are needed, {columns.Length} were given.", nameof(columns));
        SampleRow(grid, row, columns, []);
    }

    private void SampleRow(Grid grid, int row, Span<DesignColumn> cells, List<double> crossings)
    {
        cells.Fill(DesignColumn.Empty);
        var y = grid.Y(row);
        foreach (var (from, to) in Inside(Part.Outline, y, grid, crossings))
            for (var c = from; c < to; c++) cells[c] = Faces(new(grid.X(c), y));
        foreach (var pocket in Part.Pockets)
            foreach (var (from, to) in Inside(pocket.Region, y, grid, crossings))
                for (var c = from; c < to; c++)
                    if (cells[c].Top > double.NegativeInfinity) cells[c] = Cut(cells[c], pocket, new(grid.X(c), y));
        foreach (var ledge in Part.Ledges)
        {
            var done = 0;
            foreach (var (from, to) in Inside(ledge.Inside, y, grid, crossings).Append((grid.Columns, grid.Columns)))
            {
                for (var c = done; c < from; c++)
                    if (cells[c].Top > double.NegativeInfinity) cells[c] = Cut(cells[c], ledge);
                done = to;
            }
        }
        foreach (var slot in Part.Slots)
        {
            var box = Box2.Around([slot.A, slot.B]).Grown(slot.Width);
            if (y < box.Y0 || y > box.Y1) continue;
            var (from, to) = Columns(grid, box.X0, box.X1);
            for (var c = from; c < to; c++)
                if (cells[c].Top > double.NegativeInfinity) cells[c] = Cut(cells[c], slot, new(grid.X(c), y));
        }
        foreach (var hole in Part.Holes)
        {
            if (Math.Abs(y - hole.Centre.Y) > hole.Diameter / 2) continue;
            var (from, to) = Columns(grid, hole.Centre.X - hole.Diameter / 2, hole.Centre.X + hole.Diameter / 2);
            for (var c = from; c < to; c++)
                if (cells[c].Top > double.NegativeInfinity) cells[c] = Cut(cells[c], hole, new(grid.X(c), y));
        }
        for (var c = 0; c < cells.Length; c++)
            if (cells[c].IsEmpty) cells[c] = DesignColumn.Empty;
    }

    /// <summary>Runs of columns whose middles lie inside a region on the level line y: first column, one past the last.</summary>
    private static List<(int From, int To)> Inside(Region region, double y, Grid grid, List<double> crossings)
    {
        var runs = new List<(int, int)>();
        if (y < region.Bounds.Y0 || y > region.Bounds.Y1) return runs;
        region.Crossings(y, crossings);
        for (var i = 0; i + 1 < crossings.Count; i += 2)
        {
            var (from, to) = (FirstAtOrAfter(grid, crossings[i]), FirstAtOrAfter(grid, crossings[i + 1]));
            if (from < to) runs.Add((from, to));
        }
        return runs;
    }

    /// <summary>First column whose middle is at or after x, decided by the middles themselves, as <see cref="At"/> would.</summary>
    private static int FirstAtOrAfter(Grid grid, double x)
    {
        var c = (int)Math.Clamp(Math.Ceiling((x - grid.X0) / grid.Cell - 0.5), 0, grid.Columns);
        while (c > 0 && grid.X(c - 1) >= x) c--;
        while (c < grid.Columns && grid.X(c) < x) c++;
        return c;
    }

    private static (int From, int To) Columns(Grid grid, double x0, double x1) =>
        (Math.Max(0, FirstAtOrAfter(grid, x0) - 1), Math.Min(grid.Columns, FirstAtOrAfter(grid, x1) + 1));

    private DesignColumn Faces(Point2 p)
    {
        var (top, bottom) = (Part.Front.Z(p.X, p.Y), Part.Back.Z(p.X, p.Y));
        // The edge follows its face, planed or carved: where a contour lies lower, so does the edge.
        foreach (var (edge, distance) in edges)
        {
            var taken = edge.Form.TakenAt(distance.From(p));
            if (edge.From == Side.Front) top -= taken; else bottom += taken;
        }
        return new(bottom, top, bottom, top);
    }

    private static DesignColumn Cut(DesignColumn column, Pocket pocket, Point2 p)
    {
        if (pocket.Through) return DesignColumn.Empty;
        var floor = pocket.Floor.Z(p.X, p.Y);
        return pocket.From == Side.Front ? column.CutFromTop(floor, floor) : column.CutFromBottom(floor, floor);
    }

    private static DesignColumn Cut(DesignColumn column, Ledge ledge) =>
        ledge.From == Side.Front ? column.CutFromTop(ledge.Floor, ledge.Floor) : column.CutFromBottom(ledge.Floor, ledge.Floor);

    private DesignColumn Cut(DesignColumn column, Slot slot, Point2 p)
    {
        if (Segments.SquaredDistance(p, slot.A, slot.B) >= slot.Width * slot.Width / 4) return column;
        var floor = Part.Front.Z(p.X, p.Y) - slot.Depth;
        return column.CutFromTop(slot.Scribed ? double.PositiveInfinity : floor, floor);
    }

    private static DesignColumn Cut(DesignColumn column, Hole hole, Point2 p)
    {
        var (v, r) = (p - hole.Centre, hole.Diameter / 2);
        if (v.Dot(v) >= r * r) return column;
        if (hole.Through) return DesignColumn.Empty;
        return hole.From == Side.Front ? column.CutFromTop(hole.Reach, hole.Tip) : column.CutFromBottom(hole.Reach, hole.Tip);
    }
}
