using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Outlines;

/// <summary>Distance to a path, as long as it is shorter than a reach; square buckets, each with every segment within reach of it.</summary>
internal sealed class PathDistance
{
    private readonly (Point2 From, Point2 To)[] segments;
    private readonly int[][] buckets;
    private readonly double x0, y0, cell, reach;
    private readonly int columns, rows;

    public PathDistance(ImmutableArray<Point2> path, bool closed, double reach)
    {
        this.reach = reach;
        var count = closed ? path.Length : path.Length - 1;
        segments = [.. Enumerable.Range(0, count).Select(i => (path[i], path[(i + 1) % path.Length]))];
        var box = Box2.Around(path).Grown(reach);
        cell = Math.Max(reach / 2, 1);
        (x0, y0) = (box.X0, box.Y0);
        (columns, rows) = ((int)(box.Width / cell) + 1, (int)(box.Height / cell) + 1);
        var lists = new List<int>?[columns * rows];
        for (var s = 0; s < segments.Length; s++)
        {
            var (a, b) = segments[s];
            for (var r = Row(Math.Min(a.Y, b.Y) - reach); r <= Row(Math.Max(a.Y, b.Y) + reach); r++)
                for (var c = Column(Math.Min(a.X, b.X) - reach); c <= Column(Math.Max(a.X, b.X) + reach); c++)
                    (lists[r * columns + c] ??= []).Add(s);
        }
        buckets = [.. lists.Select(l => l?.ToArray() ?? [])];
    }

    /// <summary>Distance from p to the path, mm; the reach where it is further away.</summary>
    public double From(Point2 p)
    {
        var (column, row) = ((p.X - x0) / cell, (p.Y - y0) / cell);
        if (!(column >= 0 && row >= 0 && column < columns && row < rows)) return reach;
        var best = reach * reach;
        foreach (var s in buckets[(int)row * columns + (int)column]) best = Math.Min(best, Segments.SquaredDistance(p, segments[s].From, segments[s].To));
        return Math.Sqrt(best);
    }

    private int Column(double x) => Math.Clamp((int)((x - x0) / cell), 0, columns - 1);
    private int Row(double y) => Math.Clamp((int)((y - y0) / cell), 0, rows - 1);
}
