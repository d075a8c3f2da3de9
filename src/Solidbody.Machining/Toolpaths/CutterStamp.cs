using System.Numerics;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A cutter's height over its tip at every cell round a sample that lies a fixed part of a cell off the cells' middles; +∞ beyond its rim.</summary>
internal sealed class CutterStamp
{
    /// <summary>Samples of a line that are looked at together.</summary>
    public const int Block = 4;

    /// <summary>Room round the reach: a leaf that touches the rim of any sample of a block, and a vector more.</summary>
    private const int Room = 2 * HeightPyramid.LeafSide;

    private readonly float[] lowest;
    private readonly (int First, int Last)[] spans;
    private readonly StampTiles?[] tiles = new StampTiles?[HeightPyramid.TileSide];

    /// <param name="form">The cutter.</param>
    /// <param name="cell">Side of a cell, mm.</param>
    /// <param name="column">How far samples lie after the middles of their cells along a row, in cells, 0 ≤ column &lt; 1.</param>
    /// <param name="row">How far across the rows, likewise.</param>
    public CutterStamp(in CutterForm form, float cell, float column, float row)
    {
        Reach = ReachOf(form, cell);
        Origin = Reach + Room;
        Width = 2 * Origin + Room;
        Heights = new float[Width * (2 * Origin + 1)];
        Heights.AsSpan().Fill(float.PositiveInfinity);
        spans = new (int, int)[2 * Reach + 1];
        for (var r = -Reach; r <= Reach; r++)
        {
            var (first, last) = (1, 0);
            for (var c = -Reach; c <= Reach; c++)
            {
                var (dx, dy) = ((c - column) * cell, (r - row) * cell);
                var r2 = dx * dx + dy * dy;
                if (r2 > form.Radius * form.Radius) continue;
                Heights[At(c, r)] = form.Height(r2);
                (first, last) = (first > last ? c : first, c);
            }
            spans[r + Reach] = (first, last);
        }
        lowest = LowestOfWindows();
    }

    /// <summary>Cells from a sample that may lie under the cutter.</summary>
    public int Reach { get; }
    /// <summary>Floats a row of <see cref="Heights"/>.</summary>
    public int Width { get; }
    public float[] Heights { get; }
    private int Origin { get; }

    /// <summary>Cells that a cutter reaches from a sample up to one cell off a middle.</summary>
    public static int ReachOf(in CutterForm form, double cell) => (int)Math.Ceiling(form.Radius / cell) + 1;

    /// <summary>Index of the cell (column, row) away from the sample's.</summary>
    public int At(int column, int row) => (row + Origin) * Width + column + Origin;

    /// <summary>Columns under the cutter on a row away from the sample's; the first after the last when there are none.</summary>
    public (int First, int Last) Span(int row) => spans[row + Reach];

    /// <summary>Whether a leaf that begins there from a block's first sample has its heights in the table.</summary>
    public bool Covers(int column, int row) =>
        Math.Abs(column + HeightPyramid.LeafSide / 2) <= Reach + HeightPyramid.LeafSide && row > -Reach - HeightPyramid.LeafSide && row <= Reach;

    /// <summary>The tiles round samples of a row, by what part of the cutter lies over them.</summary>
    /// <param name="row">The row's place in its tile, 0 to 31.</param>
    public StampTiles Tiles(int row) => tiles[row] ??= new(this, row);

    /// <summary>Lowest cutter height over a leaf, for any sample of a block whose first one lies (column, row) before the leaf's first cell.</summary>
    public float LowestOver(int column, int row)
    {
        if (!Covers(column, row)) return float.PositiveInfinity;
        var least = float.PositiveInfinity;
        for (var r = 0; r < HeightPyramid.LeafSide; r++) least = MathF.Min(least, lowest[At(column - (Block - 1), row + r)]);
        return least;
    }

    /// <summary>At every cell the lowest height from it on over a leaf's side and the samples of a block.</summary>
    private float[] LowestOfWindows()
    {
        const int window = HeightPyramid.LeafSide + Block - 1;
        var least = new float[Heights.Length];
        least.AsSpan().Fill(float.PositiveInfinity);
        var lanes = Vector<float>.Count;
        var i = 0;
        for (; i + lanes + window <= Heights.Length; i += lanes)
        {
            var low = new Vector<float>(Heights, i);
            for (var k = 1; k < window; k++) low = Vector.Min(low, new Vector<float>(Heights, i + k));
            low.CopyTo(least, i);
        }
        return least;
    }
}
