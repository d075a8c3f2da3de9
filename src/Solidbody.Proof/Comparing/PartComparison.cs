using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Comparing;

/// <summary>One place where the wood is farther from the part than its neighbourhood.</summary>
/// <param name="At">Plan, part frame.</param>
/// <param name="Face">The face it is seen from.</param>
/// <param name="Deviation">mm: + wood left, − cut too deep.</param>
internal readonly record struct Spot(Point2 At, Side Face, double Deviation);

/// <summary>Compares all the wood of a part with its exact shape.</summary>
/// <param name="Front">Map seen from the front.</param>
/// <param name="Back">Map seen from the back.</param>
/// <param name="Spots">The deepest gouge and the most wood left in every tile of the plan and on every fine line, by face.</param>
/// <remarks>Bounds first, for every column; then each tile's largest are worked out exactly until the next bound is no larger than what has been
/// found. A sound part has few large bounds (slivers of its walls), a spoilt one is settled by a few columns a tile.</remarks>
internal sealed record PartComparison(DeviationMap Front, DeviationMap Back, IReadOnlyList<Spot> Spots)
{
    /// <param name="field">The wood left.</param>
    /// <param name="programs">What cut it, in order.</param>
    /// <param name="shape">What it should be.</param>
    /// <param name="tabs">What may stand outside.</param>
    /// <param name="threads">Threads to use; the result does not depend on them.</param>
    /// <param name="cancel">Stops the work.</param>
    public static PartComparison Of(ColumnField field, IReadOnlyList<CutProgram> programs, PartShape shape, TabAllowance tabs, int threads, CancellationToken cancel)
    {
        var grid = field.Grid;
        var front = new DeviationMap(grid, new float[grid.Count]);
        var back = new DeviationMap(grid, new float[grid.Count]);
        var comparer = new ColumnComparer(shape, tabs);
        var how = new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancel };
        Bound(field, shape, comparer, front, back, how);
        var tiles = new TileRefiner(field, shape, comparer);
        return new(front, back,
            [.. tiles.Refine(front, Side.Front, how), .. tiles.Refine(back, Side.Back, how), .. FineLineComparison.Of(programs, programs[0].SetUp.Blank, shape, comparer, how)]);
    }

    /// <summary>Fills both maps with bounds. Each thread keeps one row of the design's columns, no more.</summary>
    private static void Bound(ColumnField field, PartShape shape, ColumnComparer comparer, DeviationMap front, DeviationMap back, ParallelOptions how)
    {
        var grid = field.Grid;
        Parallel.For(0, grid.Rows, how, () => new DesignColumn[grid.Columns], (int row, ParallelLoopState _, DesignColumn[] design) =>
        {
            shape.SampleRow(grid, row, design);
            var first = row * grid.Columns;
            for (var column = 0; column < grid.Columns; column++)
            {
                var deviation = comparer.Compare(grid.Centre(column, row), design[column], field.Bottom(column, row), field.Top(column, row), exact: false);
                (front.Values[first + column], back.Values[first + column]) = ((float)deviation.Front, (float)deviation.Back);
            }
            return design;
        }, _ => { });
    }
}
