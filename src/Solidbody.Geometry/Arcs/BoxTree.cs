using System.Numerics;

namespace Solidbody.Geometry.Arcs;

/// <summary>Segments in a balanced tree of boxes, halves over halves in their order along the path: neighbours on a path are neighbours in the plan.</summary>
internal sealed class BoxTree
{
    /// <summary>Depth of the search never passes this: 2³⁰ leaves.</summary>
    private const int Deepest = 64;

    private readonly Segment[] segments;
    private readonly Box2[] boxes;   // node 1 is the root, node k holds 2k and 2k + 1; leaves from `leaves` on
    private readonly int leaves;

    public BoxTree(ReadOnlySpan<Segment> segments)
    {
        this.segments = segments.ToArray();
        leaves = (int)BitOperations.RoundUpToPowerOf2((uint)Math.Max(1, segments.Length));
        boxes = new Box2[2 * leaves];
        for (var i = 0; i < leaves; i++) boxes[leaves + i] = i < segments.Length ? segments[i].Bounds : Box2.Empty;
        for (var k = leaves - 1; k >= 1; k--)
        {
            ref readonly var a = ref boxes[2 * k];
            ref readonly var b = ref boxes[2 * k + 1];
            boxes[k] = new(Math.Min(a.X0, b.X0), Math.Min(a.Y0, b.Y0), Math.Max(a.X1, b.X1), Math.Max(a.Y1, b.Y1));
        }
    }

    public Box2 Bounds => boxes[1];
    public ReadOnlySpan<Segment> Segments => segments;

    /// <summary>Distance to the nearest segment, mm; +∞ when none is nearer than <paramref name="within"/>. May stop at the first one nearer than <paramref name="enough"/>.</summary>
    public double Distance(Point2 p, double within, double enough = 0)
    {
        var best = within;
        Span<int> open = stackalloc int[Deepest];
        var n = 0;
        open[n++] = 1;
        while (n > 0)
        {
            var k = open[--n];
            if (Away(boxes[k], p) >= best * best) continue;
            if (k >= leaves)
            {
                best = Math.Min(best, segments[k - leaves].DistanceTo(p));
                if (best < enough) return best;
                continue;
            }
            var (near, far) = Away(boxes[2 * k], p) <= Away(boxes[2 * k + 1], p) ? (2 * k, 2 * k + 1) : (2 * k + 1, 2 * k);
            open[n++] = far;
            open[n++] = near;
        }
        return best < within ? best : double.PositiveInfinity;
    }

    /// <summary>How often the level line through a point meets the segments to its left.</summary>
    public int CrossingsLeftOf(Point2 p)
    {
        var count = 0;
        Span<int> open = stackalloc int[Deepest];
        var n = 0;
        open[n++] = 1;
        while (n > 0)
        {
            var k = open[--n];
            ref readonly var box = ref boxes[k];
            if (!(box.Y0 <= p.Y && p.Y <= box.Y1 && box.X0 <= p.X)) continue;
            if (k >= leaves)
            {
                count += segments[k - leaves].CrossingsLeftOf(p);
                continue;
            }
            open[n++] = 2 * k;
            open[n++] = 2 * k + 1;
        }
        return count;
    }

    /// <summary>Segments after <paramref name="index"/> whose box comes within <paramref name="reach"/> of that segment's box, appended.</summary>
    public void After(int index, double reach, List<int> found)
    {
        var box = boxes[leaves + index].Grown(reach);
        Span<int> open = stackalloc int[Deepest];
        var n = 0;
        open[n++] = 1;
        while (n > 0)
        {
            var k = open[--n];
            if (!boxes[k].Touches(box)) continue;
            if (k >= leaves)
            {
                if (k - leaves > index) found.Add(k - leaves);
                continue;
            }
            if (LastLeaf(2 * k) > index) open[n++] = 2 * k;
            open[n++] = 2 * k + 1;
        }
    }

    /// <summary>Index of the last leaf under a node.</summary>
    private int LastLeaf(int node)
    {
        var depth = BitOperations.Log2((uint)leaves) - BitOperations.Log2((uint)node);
        return ((node + 1) << depth) - 1 - leaves;
    }

    private static double Away(in Box2 box, Point2 p)
    {
        var dx = Math.Max(0, Math.Max(box.X0 - p.X, p.X - box.X1));
        var dy = Math.Max(0, Math.Max(box.Y0 - p.Y, p.Y - box.Y1));
        return dx * dx + dy * dy;
    }
}
