using System.Numerics;
using System.Runtime.CompilerServices;
using Solidbody.Geometry;

namespace Solidbody.Proof.Cutting;

/// <summary>What is done with the swept heights of one run of columns.</summary>
internal interface IColumnWork
{
    /// <summary>One vector of columns from <paramref name="first"/> on: <paramref name="swept"/> is the height left, +∞ where nothing passes.</summary>
    void Do(int first, Vector<float> swept);
}

/// <summary>A cutter's surface in vectors: where its contact lies, and how high it is. d2 and w2 are squares.</summary>
internal interface IWideProfile
{
    Vector<float> Contact(Vector<float> w2);
    Vector<float> Height(Vector<float> d2);
}

/// <summary>Sweeps one straight piece over the columns of a few rows: exact, without gaps, and only over the columns whose contact can lie on it.</summary>
/// <remarks>The formulas are <see cref="SweptHeight"/>'s. Every column that is looked at gets the true height of the whole piece, so looking at
/// too many is only slow: runs need no mask at their ends, as long as a row has room for one vector more than its columns.</remarks>
internal static class SweepKernel
{
    /// <summary>Columns this far beyond the rim still count as under the cutter, mm: a metre from a piece's start, floats are 6e-5 mm apart, and a
    /// sloping flat cutter touches with its rim, where rounding must not drop a column.</summary>
    private const double RimSlack = 1e-4;

    /// <param name="m">The piece.</param>
    /// <param name="c">The cutter.</param>
    /// <param name="lift">Added to the piece's z: 0 for the cutter itself, the flutes' length for its shank.</param>
    /// <param name="grid">The columns.</param>
    /// <param name="stride">Floats per row, at least <c>Columns + Vector.Count − 1</c>.</param>
    /// <param name="firstRow">First row to look at.</param>
    /// <param name="endRow">First row not to look at.</param>
    /// <param name="work">What to do.</param>
    public static void Sweep<TWork>(in CutSegment m, in CutterProfile c, double lift, in Grid grid, int stride, int firstRow, int endRow, ref TWork work)
        where TWork : struct, IColumnWork
    {
        var g = m.PlanLength < CutSegment.PlungeLength ? 0 : (m.Z1 - m.Z0) / m.PlanLength;
        switch (c.Shape)
        {
            case ProfileShape.Ball: Sweep(m, c, lift, grid, stride, firstRow, endRow, new WideBall(c, g), ref work); break;
            case ProfileShape.Cone: Sweep(m, c, lift, grid, stride, firstRow, endRow, new WideCone(c, g), ref work); break;
            case ProfileShape.Hollow: Sweep(m, c, lift, grid, stride, firstRow, endRow, new WideHollow(c), ref work); break;
            default:
                if (g == 0) Sweep(m, c, lift, grid, stride, firstRow, endRow, default(WideLevelFlat), ref work);
                else Sweep(m, c, lift, grid, stride, firstRow, endRow, new WideFlat(c, g), ref work);
                break;
        }
    }

    private static void Sweep<TProfile, TWork>(in CutSegment m, in CutterProfile c, double lift, in Grid grid, int stride, int firstRow, int endRow, TProfile profile, ref TWork work)
        where TProfile : struct, IWideProfile
        where TWork : struct, IColumnWork
    {
        var length = m.PlanLength;
        var plunge = length < CutSegment.PlungeLength;
        if (plunge) length = 0;
        var (ux, uy) = plunge ? (1.0, 0.0) : ((m.X1 - m.X0) / length, (m.Y1 - m.Y0) / length);
        var z0 = new Vector<float>((float)((plunge ? m.LowestZ : m.Z0) + lift));
        var g = new Vector<float>((float)(plunge ? 0 : (m.Z1 - m.Z0) / length));
        var end = new Vector<float>((float)length);
        // Only a flat cutter: where a hollow's rim grazes a column, the slack would stretch its reach along a steep path by a multiple.
        var rim = c.Radius + (c.Shape == ProfileShape.Flat ? RimSlack : 0);
        var r2 = new Vector<float>((float)(rim * rim));
        var ds = new Vector<float>((float)(grid.Cell * ux));
        var dw = new Vector<float>((float)(-grid.Cell * uy));
        var beyond = new Vector<float>(float.PositiveInfinity);
        var lanes = Vector<float>.Count;

        // Half a cell more at each end, so that no column falls between two neighbours by rounding.
        var (sLow, sHigh) = (-m.Behind - grid.Cell / 2, length + m.Ahead + grid.Cell / 2);
        var rowLow = Math.Max(firstRow, (int)Math.Ceiling((Math.Min(m.Y0, m.Y1) - c.Radius - grid.Y0) / grid.Cell - 0.5));
        var rowHigh = Math.Min(endRow - 1, (int)Math.Floor((Math.Max(m.Y0, m.Y1) + c.Radius - grid.Y0) / grid.Cell - 0.5));
        for (var row = rowLow; row <= rowHigh; row++)
        {
            var dy = grid.Y(row) - m.Y0;
            var (low, high) = (Math.Min(m.X0, m.X1) - c.Radius - m.X0, Math.Max(m.X0, m.X1) + c.Radius - m.X0);
            if (!Clip(ux, dy * uy, sLow, sHigh, ref low, ref high)) continue;
            if (!Clip(-uy, dy * ux, -c.Radius, c.Radius, ref low, ref high)) continue;
            var first = Math.Max(0, (int)Math.Ceiling((m.X0 + low - grid.X0) / grid.Cell - 0.5));
            var last = Math.Min(grid.Columns - 1, (int)Math.Floor((m.X0 + high - grid.X0) / grid.Cell - 0.5));
            if (first > last) continue;

            var dx = grid.X(first) - m.X0;
            var s0 = new Vector<float>((float)(dx * ux + dy * uy));
            var w0 = new Vector<float>((float)(dy * ux - dx * uy));
            var index = Vector<float>.Indices;
            var at = row * stride + first;
            for (var left = last - first + 1; left > 0; left -= lanes, at += lanes, index += new Vector<float>(lanes))
            {
                var s = s0 + index * ds;
                var w = w0 + index * dw;
                var w2 = w * w;
                var t = Vector.Min(Vector.Max(s - profile.Contact(w2), Vector<float>.Zero), end);
                var u = s - t;
                var d2 = w2 + u * u;
                var z = z0 + g * t + profile.Height(d2);
                work.Do(at, Vector.ConditionalSelect(Vector.LessThanOrEqual(d2, r2), z, beyond));
            }
        }
    }

    /// <summary>Narrows [low, high] to where least ≤ a x + b ≤ most; false when nothing is left.</summary>
    private static bool Clip(double a, double b, double least, double most, ref double low, ref double high)
    {
        const double level = 1e-9;   // below this the bound moves less than a micrometre over a metre
        if (Math.Abs(a) < level) return b >= least - 1e-6 && b <= most + 1e-6 && low <= high;
        var (p, q) = ((least - b) / a, (most - b) / a);
        low = Math.Max(low, Math.Min(p, q));
        high = Math.Min(high, Math.Max(p, q));
        return low <= high;
    }
}

/// <summary>Lowers columns to what the cutter leaves.</summary>
internal readonly struct Lowering(float[] heights) : IColumnWork
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Do(int first, Vector<float> swept)
    {
        ref var at = ref heights[first];
        Vector.Min(Vector.LoadUnsafe(ref at), swept).StoreUnsafe(ref at);
    }
}

/// <summary>Finds how deep a swept body reaches into the wood as it stands, and over which column, without cutting.</summary>
internal struct Reaching(float[] heights, float[] underside) : IColumnWork
{
    public float Deepest { get; private set; } = 0;
    public int Index { get; private set; } = -1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Do(int first, Vector<float> swept)
    {
        // Wood of a column lies between −underside and heights; an empty column gives a negative reach by itself.
        var reach = Vector.LoadUnsafe(ref heights[first]) - Vector.Max(swept, -Vector.LoadUnsafe(ref underside[first]));
        if (!Vector.GreaterThanAny(reach, new Vector<float>(Deepest))) return;
        for (var i = 0; i < Vector<float>.Count; i++)
            if (reach[i] > Deepest) (Deepest, Index) = (reach[i], first + i);
    }
}
