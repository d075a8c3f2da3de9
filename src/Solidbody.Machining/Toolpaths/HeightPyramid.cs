namespace Solidbody.Machining.Toolpaths;

/// <summary>A field of heights in leaves of 8 × 8 cells and tiles of 4 × 4 leaves, with the highest of each: what a cutter need not look at.</summary>
/// <remarks>A margin of −∞ lies round the field, so that a cutter over any cell looks only at what is there.</remarks>
internal sealed class HeightPyramid
{
    public const int LeafSide = 8, LeafCells = LeafSide * LeafSide, TileLeaves = 16, TileSide = 32;

    /// <param name="field">Row-major, mm; −∞ where nothing carries; neither +∞ nor NaN.</param>
    /// <param name="columns">Cells a row.</param>
    /// <param name="reach">Cells a cutter reaches from its axis.</param>
    public HeightPyramid(ReadOnlySpan<float> field, int columns, int reach)
    {
        (Columns, FieldRows) = (columns, field.Length / columns);
        // A block of samples, and the leaves that reach into it, look further than one sample does.
        Margin = (reach + 2 * LeafSide + TileSide - 1) / TileSide;
        TileColumns = Tiles(columns) + 2 * Margin;
        var tiles = TileColumns * (Tiles(FieldRows) + 2 * Margin);
        Heights = new float[tiles * TileLeaves * LeafCells];
        LeafTops = new float[tiles * TileLeaves];
        TileTops = new float[tiles];
        Heights.AsSpan().Fill(float.NegativeInfinity);
        for (var row = 0; row < FieldRows; row++) Lay(field.Slice(row * columns, columns), row);
        for (var leaf = 0; leaf < LeafTops.Length; leaf++) LeafTops[leaf] = Highest(Heights.AsSpan(leaf * LeafCells, LeafCells));
        for (var tile = 0; tile < tiles; tile++) TileTops[tile] = Highest(LeafTops.AsSpan(tile * TileLeaves, TileLeaves));
    }

    public int Columns { get; }
    public int FieldRows { get; }
    /// <summary>Tiles round the field on every side.</summary>
    public int Margin { get; }
    public int TileColumns { get; }

    /// <summary>Leaf after leaf, each row by row; a tile's leaves together.</summary>
    public float[] Heights { get; }
    public float[] LeafTops { get; }
    public float[] TileTops { get; }

    /// <summary>Where a leaf lies in <see cref="LeafTops"/>; leaf columns and rows are counted with the margin.</summary>
    public int Leaf(int leafColumn, int leafRow) =>
        ((leafRow >> 2) * TileColumns + (leafColumn >> 2)) * TileLeaves + (leafRow & 3) * 4 + (leafColumn & 3);

    private static int Tiles(int cells) => (cells + TileSide - 1) / TileSide;

    private void Lay(ReadOnlySpan<float> line, int row)
    {
        var r = row + Margin * TileSide;
        for (var c = 0; c < line.Length; c += LeafSide)
        {
            var leaf = Leaf((c + Margin * TileSide) / LeafSide, r / LeafSide);
            var cells = line.Slice(c, Math.Min(LeafSide, line.Length - c));
            cells.CopyTo(Heights.AsSpan(leaf * LeafCells + r % LeafSide * LeafSide));
        }
    }

    private static float Highest(ReadOnlySpan<float> heights)
    {
        var highest = float.NegativeInfinity;
        foreach (var h in heights) highest = h > highest ? h : highest;
        return highest;
    }
}
