using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Solidbody.Machining.Toolpaths;

/// <summary>The highest of surface height less cutter height under a cutter, for samples one cell apart along a row of a field.</summary>
/// <remarks>
/// Four samples at a time. Two leaves are looked at first: the one that carried the sample before, and the next along the line. What they give is
/// a bound; only leaves whose highest cell, under the lowest part of the cutter that comes over them, lies above it are looked at after.
/// Nothing is lost: h ≤ M and E ≥ e give fl(h − E) ≤ fl(M − e), since rounding is monotone.
/// </remarks>
internal static class LineKernel
{
    private const int Block = CutterStamp.Block, Leaf = HeightPyramid.LeafSide, Side = HeightPyramid.TileSide;

    /// <summary>What four samples have found so far, and which leaf carried the last of them.</summary>
    private struct Found
    {
        public Vector256<float> First, Second, Third, Last;
        public Vector256<int> Carrier;
    }

    /// <summary>Tip heights over cells of one row.</summary>
    /// <param name="field">The heights; its margin holds the stamp's reach.</param>
    /// <param name="stamp">The cutter.</param>
    /// <param name="row">Row of the samples, in the field.</param>
    /// <param name="first">Column of the first sample, in the field.</param>
    /// <param name="tips">A sample each, mm; −∞ where nothing is under the cutter.</param>
    /// <remarks>Same numbers, bit for bit, as <see cref="RestPlainly"/>. Allocates nothing once the stamp has met the row's place in its tile.</remarks>
    public static void Rest(HeightPyramid field, CutterStamp stamp, int row, int first, Span<float> tips)
    {
        Check(field, row, first, tips.Length);
        var (r, c, end) = (row + field.Margin * Side, first + field.Margin * Side, first + field.Margin * Side + tips.Length);
        var tiles = stamp.Tiles(r % Side);
        Span<(int Leaf, int Place)> leaves = stackalloc (int, int)[Math.Max(2, tiles.Most * HeightPyramid.TileLeaves)];
        var seed = (Column: c / Leaf, Row: r / Leaf);
        for (var at = c & -Block; at < end; at += Block)
        {
            var found = new Found
            {
                First = Vector256.Create(float.NegativeInfinity),
                Second = Vector256.Create(float.NegativeInfinity),
                Third = Vector256.Create(float.NegativeInfinity),
                Last = Vector256.Create(float.NegativeInfinity),
                Carrier = Vector256.Create(-1),
            };
            var n = Seeds(field, stamp, seed, r, at, leaves);
            var (one, two) = (n > 0 ? leaves[0].Leaf : -1, n > 1 ? leaves[1].Leaf : -1);
            Look(field, stamp, leaves[..n], ref found);
            var bound = MathF.Min(MathF.Min(Highest(found.First), Highest(found.Second)), MathF.Min(Highest(found.Third), Highest(found.Last)));
            Look(field, stamp, leaves[..Above(bound, field, tiles, r, at, one, two, leaves)], ref found);

            var last = Highest(found.Last);
            if (at >= c && at + Block <= end)
            {
                var four = tips.Slice(at - c, Block);
                (four[0], four[1], four[2], four[3]) = (Highest(found.First), Highest(found.Second), Highest(found.Third), last);
            }
            else
            {
                ReadOnlySpan<float> four = [Highest(found.First), Highest(found.Second), Highest(found.Third), last];
                for (var k = 0; k < Block; k++)
                    if (at + k >= c && at + k < end) tips[at + k - c] = four[k];
            }
            seed = float.IsNegativeInfinity(last) ? (Math.Min(at + Block, end) / Leaf, r / Leaf) : Place(field, found.Carrier[Lane(found.Last, last)]);
        }
    }

    /// <summary>The plain statement of <see cref="Rest"/>.</summary>
    public static void RestPlainly(ReadOnlySpan<float> field, int columns, CutterStamp stamp, int row, int first, Span<float> tips)
    {
        var rows = field.Length / columns;
        for (var i = 0; i < tips.Length; i++)
        {
            var best = float.NegativeInfinity;
            for (var r = Math.Max(0, row - stamp.Reach); r <= Math.Min(rows - 1, row + stamp.Reach); r++)
            {
                var (low, high) = stamp.Span(r - row);
                var (from, to) = (Math.Max(0, first + i + low), Math.Min(columns - 1, first + i + high));
                if (from > to) continue;
                var heights = field.Slice(r * columns + from, to - from + 1);
                var cutter = stamp.Heights.AsSpan(stamp.At(from - first - i, r - row), heights.Length);
                for (var k = 0; k < heights.Length; k++)
                    if (heights[k] - cutter[k] > best) best = heights[k] - cutter[k];
            }
            tips[i] = best;
        }
    }

    private static void Check(HeightPyramid field, int row, int first, int count)
    {
        if (row < 0 || row >= field.FieldRows) throw new ArgumentOutOfRangeException(nameof(row), row, $"Rows run from 0 to {field.FieldRows - 1}.");
        if (first < 0 || first + count > field.Columns) throw new ArgumentOutOfRangeException(nameof(first), first, $"{count} samples from here leave the {field.Columns} columns.");
    }

    private static int Seeds(HeightPyramid field, CutterStamp stamp, (int Column, int Row) seed, int row, int at, Span<(int Leaf, int Place)> leaves)
    {
        var n = 0;
        for (var k = 0; k < 2; k++)
        {
            var (column0, row0) = ((seed.Column + k) * Leaf - at, seed.Row * Leaf - row);
            if (stamp.Covers(column0, row0)) leaves[n++] = (field.Leaf(seed.Column + k, seed.Row), stamp.At(column0, row0));
        }
        return n;
    }

    /// <summary>Collects the leaves that may lie above the bound, but for two that were looked at.</summary>
    private static int Above(float bound, HeightPyramid field, StampTiles tiles, int row, int at, int one, int two, Span<(int Leaf, int Place)> leaves)
    {
        var own = row / Side * field.TileColumns + at / Side;
        var block = at % Side / Block;
        ref var lows = ref MemoryMarshal.GetReference(tiles.LeavesOf(block));
        ref var tops = ref MemoryMarshal.GetArrayDataReference(field.LeafTops);
        ref var into = ref MemoryMarshal.GetReference(leaves);
        var (n, leafRow) = (0, tiles.LeafRow);
        var limit = Vector512.Create(bound);
        var near = tiles.Of(block);
        for (var k = 0; k < near.Length; k++)
        {
            ref readonly var tile = ref near[k];
            var index = own + tile.Row * field.TileColumns + tile.Column;
            if (!(field.TileTops[index] - tile.Lowest > bound)) continue;
            var leaf = index * HeightPyramid.TileLeaves;
            var above = Vector512.GreaterThan(Vector512.LoadUnsafe(ref tops, (nuint)leaf) - Vector512.LoadUnsafe(ref lows, (nuint)(k * HeightPyramid.TileLeaves)), limit);
            for (var bits = (uint)above.ExtractMostSignificantBits(); bits != 0; bits &= bits - 1)
            {
                var i = BitOperations.TrailingZeroCount(bits);
                Unsafe.Add(ref into, n) = (leaf + i, tile.Place + (i >> 2) * leafRow + (i & 3) * Leaf);
                n += leaf + i != one && leaf + i != two ? 1 : 0;
            }
        }
        return n;
    }

    /// <summary>Looks at every cell of some leaves, for all four samples.</summary>
    private static void Look(HeightPyramid field, CutterStamp stamp, ReadOnlySpan<(int Leaf, int Place)> leaves, ref Found found)
    {
        var (first, second, third, last, carrier) = (found.First, found.Second, found.Third, found.Last, found.Carrier);
        ref var cells = ref MemoryMarshal.GetArrayDataReference(field.Heights);
        ref var cutter = ref MemoryMarshal.GetArrayDataReference(stamp.Heights);
        var width = stamp.Width;
        foreach (var (leaf, place) in leaves)
        {
            var here = Vector256.Create(float.NegativeInfinity);
            ref var line = ref Unsafe.Add(ref cells, leaf * HeightPyramid.LeafCells);
            ref var under = ref Unsafe.Add(ref cutter, place);
            for (var r = 0; r < Leaf; r++)
            {
                var heights = Vector256.LoadUnsafe(ref line);
                first = Vector256.MaxNative(first, heights - Vector256.LoadUnsafe(ref under));
                second = Vector256.MaxNative(second, heights - Vector256.LoadUnsafe(ref Unsafe.Add(ref under, -1)));
                third = Vector256.MaxNative(third, heights - Vector256.LoadUnsafe(ref Unsafe.Add(ref under, -2)));
                here = Vector256.MaxNative(here, heights - Vector256.LoadUnsafe(ref Unsafe.Add(ref under, -3)));
                line = ref Unsafe.Add(ref line, Leaf);
                under = ref Unsafe.Add(ref under, width);
            }
            carrier = Vector256.ConditionalSelect(Vector256.GreaterThan(here, last).AsInt32(), Vector256.Create(leaf), carrier);
            last = Vector256.MaxNative(last, here);
        }
        (found.First, found.Second, found.Third, found.Last, found.Carrier) = (first, second, third, last, carrier);
    }

    private static (int Column, int Row) Place(HeightPyramid field, int leaf)
    {
        var (tile, within) = (leaf / HeightPyramid.TileLeaves, leaf % HeightPyramid.TileLeaves);
        var (row, column) = Math.DivRem(tile, field.TileColumns);
        return (column * 4 + within % 4, row * 4 + within / 4);
    }

    private static int Lane(Vector256<float> lanes, float height) =>
        BitOperations.TrailingZeroCount(Vector256.Equals(lanes, Vector256.Create(height)).ExtractMostSignificantBits());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static float Highest(Vector256<float> lanes)
    {
        var four = Vector128.MaxNative(lanes.GetLower(), lanes.GetUpper());
        var two = Vector128.MaxNative(four, Vector128.Shuffle(four, Vector128.Create(2, 3, 0, 1)));
        return Vector128.MaxNative(two, Vector128.Shuffle(two, Vector128.Create(1, 0, 3, 2))).ToScalar();
    }
}
