using System.Collections.Immutable;

namespace Solidbody.Geometry;

/// <summary>The edges of a region in square buckets, for distances, and in rows, for crossings.</summary>
internal sealed class SegmentIndex
{
    private readonly Point2[] from, to;
    private readonly Box2 bounds;
    private readonly double cell;
    private readonly int columns, rows;
    private readonly int[][] buckets;   // by cell, segments whose box touches it
    private readonly int[][] byRow;     // by row of cells, segments whose y range touches it

    public SegmentIndex(ImmutableArray<Loop> loops, Box2 around)
    {
        var count = loops.Sum(l => l.Points.Length);
        from = new Point2[count];
        to = new Point2[count];
        var n = 0;
        foreach (var points in loops.Select(l => l.Points))
            for (var i = 0; i < points.Length; i++, n++)
                (from[n], to[n]) = (points[i], points[(i + 1) % points.Length]);
        bounds = around;
        // About one segment a cell: area over count, kept between a thousandth and a twentieth of the longer side.
        var side = Math.Max(Math.Max(around.Width, around.Height), Tolerances.Geometry);
        cell = Math.Clamp(Math.Sqrt(Math.Max(around.Width * around.Height, side * side * 1e-4) / count), side / 400, side / 8);
        columns = (int)(around.Width / cell) + 1;
        rows = (int)(around.Height / cell) + 1;
        var lists = new List<int>?[columns * rows];
        var rowLists = new List<int>?[rows];
        for (var s = 0; s < count; s++)
        {
            var (c0, c1) = (Column(Math.Min(from[s].X, to[s].X)), Column(Math.Max(from[s].X, to[s].X)));
            var (r0, r1) = (Row(Math.Min(from[s].Y, to[s].Y)), Row(Math.Max(from[s].Y, to[s].Y)));
            for (var r = r0; r <= r1; r++)
            {
                (rowLists[r] ??= []).Add(s);
                for (var c = c0; c <= c1; c++) (lists[r * columns + c] ??= []).Add(s);
            }
        }
        buckets = [.. lists.Select(l => l?.ToArray() ?? [])];
        byRow = [.. rowLists.Select(l => l?.ToArray() ?? [])];
    }

    private int Column(double x) => Math.Clamp((int)((x - bounds.X0) / cell), 0, columns - 1);
    private int Row(double y) => Math.Clamp((int)((y - bounds.Y0) / cell), 0, rows - 1);

    public int CrossingsLeftOf(Point2 p)
    {
        var count = 0;
        foreach (var s in byRow[Row(p.Y)])
            if (Crosses(s, p.Y) && CrossingX(s, p.Y) <= p.X) count++;
        return count;
    }

    public void Crossings(double y, List<double> xs)
    {
        if (y < bounds.Y0 || y > bounds.Y1) return;
        foreach (var s in byRow[Row(y)])
            if (Crosses(s, y)) xs.Add(CrossingX(s, y));
    }

    /// <summary>Half-open in y, so that a vertex on the line counts once.</summary>
    private bool Crosses(int s, double y) => (from[s].Y <= y) != (to[s].Y <= y);
    private double CrossingX(int s, double y) => from[s].X + (y - from[s].Y) / (to[s].Y - from[s].Y) * (to[s].X - from[s].X);

    /// <summary>Distance to the nearest segment, searched in growing rings; +∞ when none is nearer than <paramref name="within"/>.</summary>
    public double Distance(Point2 p, double within)
    {
        // Outside the bounds nothing can be nearer than the bounds themselves.
        var outside = Math.Sqrt(Square(Math.Max(0, Math.Max(bounds.X0 - p.X, p.X - bounds.X1))) + Square(Math.Max(0, Math.Max(bounds.Y0 - p.Y, p.Y - bounds.Y1))));
        if (outside >= within) return double.PositiveInfinity;
        var (column, row) = (Column(p.X), Row(p.Y));
        var best = within < double.PositiveInfinity ? within * within : double.PositiveInfinity;
        var rings = Math.Max(columns, rows);
        for (var ring = 0; ring <= rings; ring++)
        {
            // Cells of this ring are at least (ring − 1) cells away from a point inside the bounds; more when it lies outside.
            var gap = Math.Max(0, ring - 1) * cell;
            if (gap * gap > best) break;
            for (var r = Math.Max(0, row - ring); r <= Math.Min(rows - 1, row + ring); r++)
            {
                var whole = r == row - ring || r == row + ring;
                for (var c = Math.Max(0, column - ring); c <= Math.Min(columns - 1, column + ring); c++)
                {
                    if (!whole && c != column - ring && c != column + ring) { c = Math.Max(c, Math.Min(columns - 1, column + ring) - 1); continue; }
                    foreach (var s in buckets[r * columns + c]) best = Math.Min(best, SquaredDistance(s, p));
                }
            }
        }
        return best < double.PositiveInfinity && best < within * within ? Math.Sqrt(best) : double.PositiveInfinity;
    }

    private double SquaredDistance(int s, Point2 p)
    {
        var (ex, ey) = (to[s].X - from[s].X, to[s].Y - from[s].Y);
        var (px, py) = (p.X - from[s].X, p.Y - from[s].Y);
        var along = Math.Clamp((px * ex + py * ey) / (ex * ex + ey * ey), 0, 1);
        return Square(px - along * ex) + Square(py - along * ey);
    }

    private static double Square(double v) => v * v;
}
