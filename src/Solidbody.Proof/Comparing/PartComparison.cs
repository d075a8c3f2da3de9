using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Proof.Comparing;

/// <summary>One place where the wood is farther from the part than its neighbourhood.</summary>
/// <param name="At">Plan, part frame.</param>
/// <param name="Face">The face it is seen from.</param>
/// <param name="Deviation">mm: + wood left, − cut too deep.</param>
internal readonly record struct Spot(Point2 At, Side Face, double Deviation);

/// <summary>Compares all the wood of a part with its exact shape.</summary>
/// <param name="Front">Map seen from the front.</param>
/// <param name="Back">Map seen from the back.</param>
/// <param name="Spots">The deepest gouge and the most wood left in every tile of the plan, by face.</param>
internal sealed record PartComparison(DeviationMap Front, DeviationMap Back, IReadOnlyList<Spot> Spots)
{
    private const int RowsPerBand = 64;
    /// <summary>Side of a tile, mm: places nearer than this are told as one.</summary>
    private const double Tile = 12;

    public static PartComparison Of(ColumnField field, PartShape shape, TabAllowance tabs, int threads, CancellationToken cancel)
    {
        var grid = field.Grid;
        var front = new DeviationMap(grid, new float[grid.Count]);
        var back = new DeviationMap(grid, new float[grid.Count]);
        var comparer = new ColumnComparer(shape, tabs);
        var bands = (grid.Rows + RowsPerBand - 1) / RowsPerBand;
        var how = new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancel };
        var design = new DesignColumn[bands][];
        for (var first = 0; first < bands; first += threads)
        {
            var end = Math.Min(bands, first + threads);
            for (var band = first; band < end; band++)
            {
                var part = BandOf(grid, band);
                design[band] = new DesignColumn[part.Count];
                shape.Sample(part, design[band]);
            }
            Parallel.For(first, end, how, band =>
            {
                CompareBand(field, comparer, design[band], band * RowsPerBand, front, back);
                design[band] = [];
            });
        }
        return new(front, back, [.. SpotsOf(front, Side.Front), .. SpotsOf(back, Side.Back)]);
    }

    private static Grid BandOf(Grid grid, int band) => grid with
    {
        Y0 = grid.Y0 + band * RowsPerBand * grid.Cell,
        Rows = Math.Min(RowsPerBand, grid.Rows - band * RowsPerBand),
    };

    private static void CompareBand(ColumnField field, ColumnComparer comparer, DesignColumn[] design, int firstRow, DeviationMap front, DeviationMap back)
    {
        var grid = field.Grid;
        // A distance changes no faster than one moves: within half of it, one that is far past every limit speaks for its neighbours.
        var block = Math.Max(1, (int)(IdealSolid.Farthest / 2 / Math.Sqrt(2) / grid.Cell));
        var known = new CellDeviation[grid.Columns / block + 1];
        for (var i = 0; i < design.Length; i++)
        {
            var (row, column) = (firstRow + i / grid.Columns, i % grid.Columns);
            if (column == 0 && (row - firstRow) % block == 0) Array.Clear(known);
            ref var near = ref known[column / block];
            var deviation = comparer.Compare(grid.Centre(column, row), design[i], field.Bottom(column, row), field.Top(column, row), near);
            if (!design[i].IsEmpty) near = near.Or(deviation.AtLeast(IdealSolid.Farthest));
            front.Values[row * grid.Columns + column] = (float)deviation.Front;
            back.Values[row * grid.Columns + column] = (float)deviation.Back;
        }
    }

    private static IEnumerable<Spot> SpotsOf(DeviationMap map, Side face)
    {
        var grid = map.Grid;
        var cells = Math.Max(1, (int)(Tile / grid.Cell));
        for (var row0 = 0; row0 < grid.Rows; row0 += cells)
            for (var column0 = 0; column0 < grid.Columns; column0 += cells)
            {
                var (low, high) = (0f, 0f);
                var (lowAt, highAt) = (default(Point2), default(Point2));
                for (var row = row0; row < Math.Min(row0 + cells, grid.Rows); row++)
                    for (var column = column0; column < Math.Min(column0 + cells, grid.Columns); column++)
                    {
                        var value = map.At(column, row);
                        if (value < low) (low, lowAt) = (value, grid.Centre(column, row));
                        if (value > high) (high, highAt) = (value, grid.Centre(column, row));
                    }
                if (low < 0) yield return new(lowAt, face, low);
                if (high > 0) yield return new(highAt, face, high);
            }
    }
}
