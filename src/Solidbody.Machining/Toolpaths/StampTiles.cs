namespace Solidbody.Machining.Toolpaths;

/// <summary>A tile near a block of samples.</summary>
/// <param name="Column">Tiles from the block's own.</param>
/// <param name="Row">Likewise.</param>
/// <param name="Place">Where the cutter's height over its first cell lies in the stamp, for the block's first sample.</param>
/// <param name="Lowest">Lowest height of the cutter over it, for any sample of the block.</param>
internal readonly record struct StampTile(int Column, int Row, int Place, float Lowest);

/// <summary>The tiles under a cutter on one row of a tile, for each place of a block of samples in its tile.</summary>
internal sealed class StampTiles
{
    private readonly StampTile[] tiles;
    private readonly float[] leaves;
    private readonly int[] starts;

    public StampTiles(CutterStamp stamp, int row)
    {
        const int side = HeightPyramid.TileSide, leaf = HeightPyramid.LeafSide, blocks = side / CutterStamp.Block;
        var found = new List<StampTile>();
        var heights = new List<float>();
        starts = new int[blocks + 1];
        var span = stamp.Reach / side + 2;
        Span<float> lows = stackalloc float[HeightPyramid.TileLeaves];
        for (var block = 0; block < blocks; block++)
        {
            for (var y = -span; y <= span; y++)
                for (var x = -span; x <= span; x++)
                {
                    var (column0, row0) = (x * side - block * CutterStamp.Block, y * side - row);
                    var lowest = float.PositiveInfinity;
                    for (var i = 0; i < lows.Length; i++)
                    {
                        lows[i] = stamp.LowestOver(column0 + i % 4 * leaf, row0 + i / 4 * leaf);
                        lowest = MathF.Min(lowest, lows[i]);
                    }
                    if (float.IsPositiveInfinity(lowest)) continue;
                    found.Add(new(x, y, stamp.At(column0, row0), lowest));
                    heights.AddRange(lows);
                }
            starts[block + 1] = found.Count;
        }
        (tiles, leaves, LeafRow) = ([.. found], [.. heights], leaf * stamp.Width);
        Most = Enumerable.Range(0, blocks).Max(b => starts[b + 1] - starts[b]);
    }

    /// <summary>Floats of the stamp from one row of leaves to the next.</summary>
    public int LeafRow { get; }

    /// <summary>Greatest count of tiles for one block.</summary>
    public int Most { get; }

    /// <param name="block">The block's place in its tile, 0 to 7.</param>
    public ReadOnlySpan<StampTile> Of(int block) => tiles.AsSpan(starts[block]..starts[block + 1]);

    /// <summary>Lowest heights over the leaves of the tiles of a block, sixteen a tile, in their order.</summary>
    public ReadOnlySpan<float> LeavesOf(int block) =>
        leaves.AsSpan((starts[block] * HeightPyramid.TileLeaves)..(starts[block + 1] * HeightPyramid.TileLeaves));
}
