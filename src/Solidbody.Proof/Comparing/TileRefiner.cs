using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Proof.Comparing;

/// <summary>Turns a map of bounds into exact figures where they matter, tile by tile, and finds each tile's worst places.</summary>
internal sealed class TileRefiner(ColumnField field, PartShape shape, ColumnComparer comparer)
{
    /// <summary>Side of a tile, mm: places nearer than this are told as one.</summary>
    private const double Tile = 12;
    /// <summary>Twice any limit, mm: past it a figure need only be right within <see cref="Near"/>.</summary>
    private const double SurelyPast = 0.2;
    private const double Near = 1.05;

    private readonly Grid grid = field.Grid;
    private readonly int side = Math.Max(1, (int)(Tile / field.Grid.Cell));

    /// <summary>The deepest gouge and the most wood left in every tile; the map's largest figures become exact.</summary>
    public IEnumerable<Spot> Refine(DeviationMap map, Side face, ParallelOptions how)
    {
        var across = (grid.Columns + side - 1) / side;
        var tiles = across * ((grid.Rows + side - 1) / side);
        var spots = new (Spot? Deep, Spot? Left)[tiles];
        Parallel.For(0, tiles, how, tile =>
        {
            var (column, row) = (tile % across * side, tile / across * side);
            spots[tile] = (Worst(map, face, column, row, -1), Worst(map, face, column, row, +1));
        });
        return spots.SelectMany(s => new[] { s.Deep, s.Left }).OfType<Spot>();
    }

    /// <summary>The column of a tile that is farthest off in one sense (−1 too deep, +1 left), largest bounds first.</summary>
    private Spot? Worst(DeviationMap map, Side face, int firstColumn, int firstRow, int sense)
    {
        var bounds = new List<(float Bound, int Index)>();
        (double By, int Index) worst = (0, -1);
        for (var row = firstRow; row < Math.Min(firstRow + side, grid.Rows); row++)
            for (var column = firstColumn; column < Math.Min(firstColumn + side, grid.Columns); column++)
            {
                var bound = sense * map.At(column, row);
                if (bound > ColumnComparer.Plain) bounds.Add((bound, row * grid.Columns + column));
                else if (bound > worst.By) worst = (bound, row * grid.Columns + column);
            }
        bounds.Sort((a, b) => a.Bound != b.Bound ? b.Bound.CompareTo(a.Bound) : a.Index.CompareTo(b.Index));
        foreach (var (bound, index) in bounds)
        {
            if (bound <= worst.By || (worst.By > SurelyPast && bound <= worst.By * Near)) break;
            var (column, row) = (index % grid.Columns, index / grid.Columns);
            var p = grid.Centre(column, row);
            var exact = comparer.Compare(p, shape.At(p), field.Bottom(column, row), field.Top(column, row), exact: true).On(face);
            map.Values[index] = (float)exact;
            if (sense * exact > worst.By) worst = (sense * exact, index);
        }
        return worst.Index < 0 ? null : new(grid.Centre(worst.Index % grid.Columns, worst.Index / grid.Columns), face, sense * worst.By);
    }
}
