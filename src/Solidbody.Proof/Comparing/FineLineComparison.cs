using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Comparing;

/// <summary>Looks along lines with columns of 0.02 mm, for what falls between the columns of the whole part: an upright wall that stands off by
/// less than a cell where it runs along the grid, a fin or a groove thinner than a cell.</summary>
/// <remarks>On such a line a wall is a jump and a fin a ridge of the wood's own heights. Only there the wood is held against the part: everywhere
/// else the columns of the whole part do.</remarks>
internal static class FineLineComparison
{
    /// <summary>Side of a column, mm: well below the gouge and leftover limits.</summary>
    private const double Fine = 0.02;

    /// <summary>A step between neighbours that counts as a wall, mm.</summary>
    private const float Jump = 0.1f;

    /// <summary>How much a ridge stands over the wood on both sides, or a groove lies under it, mm.</summary>
    private const float Rise = 0.02f;

    /// <summary>Half the width of a ridge looked for, columns: 0.3 mm, wider than a cell of the whole part.</summary>
    private const int Beside = 15;

    /// <summary>The deepest gouge and the most wood left on every line, by face, in the lines' order.</summary>
    public static IReadOnlyList<Spot> Of(IReadOnlyList<CutProgram> programs, Box3 blank, PartShape shape, ColumnComparer comparer, ParallelOptions how)
    {
        var lines = FineLine.Over(shape.Part);
        var spots = new List<Spot>[lines.Count];
        Parallel.For(0, lines.Count, how, i => spots[i] = Along(lines[i], programs, blank, shape, comparer));
        return [.. spots.SelectMany(s => s)];
    }

    private static List<Spot> Along(in FineLine line, IReadOnlyList<CutProgram> programs, Box3 blank, PartShape shape, ColumnComparer comparer)
    {
        var wood = new ColumnField(new Grid(0, -Fine / 2, Fine, Math.Max(1, (int)(line.Length / Fine)), 1), blank.Z0, blank.Z1);
        foreach (var program in programs) LineCutter.Cut(wood, program, line.From, line.Along);
        var count = wood.Grid.Columns;
        var (fronts, backs) = (wood.Surface(Side.Front), wood.Surface(Side.Back));
        var worst = new Worst();
        for (var i = 0; i < count; i++)
        {
            if (!IsEdge(fronts, i, count) && !IsEdge(backs, i, count)) continue;
            var p = line.From + wood.Grid.X(i) * line.Along;
            if (!blank.Plan.Contains(p)) continue;
            var design = shape.At(p);
            var bound = comparer.Compare(p, design, wood.Bottom(i, 0), wood.Top(i, 0), exact: false);
            if (!worst.MayTake(bound)) continue;
            worst.Take(p, comparer.Compare(p, design, wood.Bottom(i, 0), wood.Top(i, 0), exact: true));
        }
        return worst.Spots;
    }

    private static bool IsEdge(ReadOnlySpan<float> heights, int i, int count)
    {
        var here = heights[i];
        var (before, after) = (heights[Math.Max(0, i - 1)], heights[Math.Min(count - 1, i + 1)]);
        if (Math.Abs(here - before) > Jump || Math.Abs(here - after) > Jump) return true;
        if (i < Beside || i >= count - Beside) return false;
        var (left, right) = (heights[i - Beside], heights[i + Beside]);
        return (here >= before && here >= after && here - Math.Max(left, right) > Rise)
            || (here <= before && here <= after && Math.Min(left, right) - here > Rise);
    }

    /// <summary>The worst places of one line so far: too deep and left over, front and back.</summary>
    private sealed class Worst
    {
        private readonly Spot?[] spots = new Spot?[4];

        public List<Spot> Spots => [.. spots.OfType<Spot>()];

        public bool MayTake(CellDeviation bound) => IsWorse(bound.Front, Side.Front) || IsWorse(bound.Back, Side.Back);

        public void Take(Point2 p, CellDeviation exact)
        {
            foreach (var face in (ReadOnlySpan<Side>)[Side.Front, Side.Back])
                if (IsWorse(exact.On(face), face)) spots[Place(exact.On(face), face)] = new(p, face, exact.On(face));
        }

        private bool IsWorse(double deviation, Side face) => Math.Abs(deviation) > Math.Max(ColumnComparer.Plain, Math.Abs(spots[Place(deviation, face)]?.Deviation ?? 0));
        private static int Place(double deviation, Side face) => (face == Side.Front ? 0 : 2) + (deviation < 0 ? 0 : 1);
    }
}
