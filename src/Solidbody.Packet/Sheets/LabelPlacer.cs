using Solidbody.Geometry;

namespace Solidbody.Packet.Sheets;

/// <summary>Where a label came to stand, and the leader that joins it to its thing, paper mm.</summary>
internal sealed record PlacedLabel(Box2 Box, Point2 LeaderFrom, Point2 LeaderTo);

/// <summary>Finds room for labels on a drawing. Boxes never overlap and leaders never cross a box or another leader; lines under a label,
/// long leaders and wood cost, and the least cost wins. No random numbers: the same drawing gives the same places.</summary>
internal sealed class LabelPlacer
{
    private const double Cell = 0.5;
    private const double Step = 1.5;
    private const double Clear = 1.2;
    private const double ClearOfLeader = 0.4;
    private const double ShortestLeader = 3;
    private const double CostOfLeader = 1.0;      // per mm
    private const double CostOfInk = 12.0;         // per cell of line under the label
    private const double CostOfInkCrossed = 4.0;  // per cell of line under the leader
    private const double CostOfWood = 0.03;       // per cell of wood under the label

    private readonly Box2 room;
    private readonly int columns, rows;
    private readonly int[] ink, wood;
    private readonly List<Box2> boxes = [];
    private readonly List<(Point2 A, Point2 B)> leaders = [];

    public LabelPlacer(Box2 room)
    {
        this.room = room;
        columns = (int)Math.Ceiling(room.Width / Cell) + 1;
        rows = (int)Math.Ceiling(room.Height / Cell) + 1;
        ink = new int[columns * rows];
        wood = new int[columns * rows];
    }

    /// <summary>Says that a line is drawn here.</summary>
    public void Ink(Point2 a, Point2 b)
    {
        foreach (var cell in CellsAlong(a, b)) ink[cell] = 1;
    }

    public void Ink(IReadOnlyList<Point2> closed)
    {
        for (var i = 0; i < closed.Count; i++) Ink(closed[i], closed[(i + 1) % closed.Count]);
    }

    /// <summary>Says that wood lies here.</summary>
    public void Wood(Region region)
    {
        for (var r = 0; r < rows; r++)
            for (var c = 0; c < columns; c++)
                if (region.Contains(new(room.X0 + (c + 0.5) * Cell, room.Y0 + (r + 0.5) * Cell))) wood[r * columns + c] = 1;
    }

    /// <summary>Says that no label may stand here.</summary>
    public void Block(Box2 box) => boxes.Add(box);

    /// <summary>The best place for a label of this size, joined to its anchor by a leader that starts <paramref name="radius"/> away from it.</summary>
    /// <returns>The place, now taken; null when there is none.</returns>
    public PlacedLabel? Place(Point2 anchor, double width, double height, double radius)
    {
        var inkUnder = Sums(ink);
        var woodUnder = Sums(wood);
        PlacedLabel? best = null;
        var least = double.PositiveInfinity;
        for (var y = room.Y0; y + height <= room.Y1; y += Step)
            for (var x = room.X0; x + width <= room.X1; x += Step)
            {
                var box = new Box2(x, y, x + width, y + height);
                var grown = box.Grown(Clear);
                if (grown.Grown(radius).Contains(anchor)) continue;
                var cost = CostOfInk * Under(inkUnder, grown) + CostOfWood * Under(woodUnder, box);
                if (cost >= least || boxes.Any(b => b.Touches(grown))) continue;
                foreach (var end in Ends(box))
                {
                    var from = anchor + radius * (end - anchor).Unit;
                    var whole = cost + CostOfLeader * from.DistanceTo(end);
                    if (whole >= least || from.DistanceTo(end) < ShortestLeader) continue;
                    whole += CostOfInkCrossed * CellsAlong(from, end).Sum(c => ink[c]);
                    if (whole >= least || IsBarred(anchor, from, end)) continue;
                    (best, least) = (new(box, from, end), whole);
                }
            }
        if (best is null) return null;
        boxes.Add(best.Box);
        leaders.Add((best.LeaderFrom, best.LeaderTo));
        Ink(best.LeaderFrom, best.LeaderTo);
        return best;
    }

    /// <summary>Where a leader may end: a little outside the middles of the label's sides.</summary>
    private static Point2[] Ends(Box2 b) =>
        [new(b.X0 - 0.8, b.Centre.Y), new(b.X1 + 0.8, b.Centre.Y), new(b.Centre.X, b.Y0 - 0.8), new(b.Centre.X, b.Y1 + 0.8)];

    /// <summary>Whether a leader would cross another or run through a box; the box its own thing stands in does not count.</summary>
    private bool IsBarred(Point2 anchor, Point2 a, Point2 b) =>
        leaders.Any(l => Segments.Cross(a, b, l.A, l.B)) || boxes.Any(box => !box.Grown(ClearOfLeader).Contains(anchor) && Segments.Crosses(a, b, box.Grown(ClearOfLeader)));

    private IEnumerable<int> CellsAlong(Point2 a, Point2 b)
    {
        var n = Math.Max(1, (int)Math.Ceiling(a.DistanceTo(b) / (Cell / 2)));
        var last = -1;
        for (var i = 0; i <= n; i++)
        {
            var p = a + (double)i / n * (b - a);
            var (c, r) = ((int)Math.Floor((p.X - room.X0) / Cell), (int)Math.Floor((p.Y - room.Y0) / Cell));
            if (c < 0 || r < 0 || c >= columns || r >= rows || r * columns + c == last) continue;
            yield return last = r * columns + c;
        }
    }

    /// <summary>Summed-area table, one row and column of noughts in front.</summary>
    private int[] Sums(int[] cells)
    {
        var sums = new int[(columns + 1) * (rows + 1)];
        for (var r = 0; r < rows; r++)
            for (var (c, run) = (0, 0); c < columns; c++)
            {
                run += cells[r * columns + c];
                sums[(r + 1) * (columns + 1) + c + 1] = sums[r * (columns + 1) + c + 1] + run;
            }
        return sums;
    }

    private int Under(int[] sums, Box2 box)
    {
        int C(double x) => Math.Clamp((int)Math.Round((x - room.X0) / Cell), 0, columns);
        int R(double y) => Math.Clamp((int)Math.Round((y - room.Y0) / Cell), 0, rows);
        var (c0, c1, r0, r1) = (C(box.X0), C(box.X1), R(box.Y0), R(box.Y1));
        return sums[r1 * (columns + 1) + c1] - sums[r0 * (columns + 1) + c1] - sums[r1 * (columns + 1) + c0] + sums[r0 * (columns + 1) + c0];
    }
}
