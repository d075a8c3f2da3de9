using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Packet.Pictures;

/// <summary>Lines of equal height on a face of the part, every 2 mm from its highest: they give a flat map its form.</summary>
internal static class LevelLines
{
    private const double Every = 2;        // mm
    private const double CellsAcross = 500;
    private const double LeastCell = 0.5;  // mm
    /// <summary>Steeper than this, mm per mm, is a wall: the part's own lines show it.</summary>
    private const double Wall = 1.5;

    /// <summary>Pieces of level lines, part frame (marching squares, a cell's saddle cut by its mean).</summary>
    public static List<(Point2 A, Point2 B)> Of(Part part, Side seen)
    {
        var cell = Math.Max(LeastCell, part.Bounds.Length / CellsAcross);
        var grid = Grid.Over(part.Outline.Bounds, cell);
        var columns = new DesignColumn[grid.Count];
        new PartShape(part).Sample(grid, columns);
        var heights = Array.ConvertAll(columns, c => c.IsEmpty ? double.NaN : seen == Side.Front ? c.Top : -c.Bottom);
        var highest = heights.Where(h => !double.IsNaN(h)).DefaultIfEmpty(0).Max();
        var pieces = new List<(Point2, Point2)>();
        for (var r = 0; r + 1 < grid.Rows; r++)
            for (var c = 0; c + 1 < grid.Columns; c++)
            {
                var i = r * grid.Columns + c;
                Span<double> corner = [heights[i], heights[i + 1], heights[i + 1 + grid.Columns], heights[i + grid.Columns]];
                var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
                var bare = false;
                foreach (var h in corner)
                {
                    bare |= double.IsNaN(h);
                    (low, high) = (Math.Min(low, h), Math.Max(high, h));
                }
                if (bare || high - low > Wall * cell) continue;
                // Levels stand half a step off the highest face, so that none lies in a level face.
                for (var n = Math.Ceiling((highest - Every / 2 - high) / Every); highest - Every / 2 - n * Every >= low; n++)
                    Cut(grid, c, r, corner, highest - Every / 2 - n * Every, pieces);
            }
        return pieces;
    }

    private static void Cut(Grid grid, int column, int row, ReadOnlySpan<double> corner, double level, List<(Point2, Point2)> pieces)
    {
        ReadOnlySpan<(int X, int Y)> at = [(0, 0), (1, 0), (1, 1), (0, 1)];
        Span<Point2> crossings = stackalloc Point2[4];
        var n = 0;
        for (var k = 0; k < 4; k++)
        {
            var (a, b) = (corner[k], corner[(k + 1) % 4]);
            if (a > level == b > level) continue;
            var t = (level - a) / (b - a);
            var (from, to) = (at[k], at[(k + 1) % 4]);
            crossings[n++] = new(grid.X(column) + grid.Cell * (from.X + t * (to.X - from.X)), grid.Y(row) + grid.Cell * (from.Y + t * (to.Y - from.Y)));
        }
        if (n == 2) pieces.Add((crossings[0], crossings[1]));
        if (n != 4) return;
        var mean = (corner[0] + corner[1] + corner[2] + corner[3]) / 4;
        var turned = corner[0] > level == mean > level;
        pieces.Add(turned ? (crossings[0], crossings[1]) : (crossings[3], crossings[0]));
        pieces.Add(turned ? (crossings[2], crossings[3]) : (crossings[1], crossings[2]));
    }
}
