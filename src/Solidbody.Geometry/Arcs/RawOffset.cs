namespace Solidbody.Geometry.Arcs;

/// <summary>Every segment of a region moved to its left by the same distance, with an arc about every joint where the moved ones part: a superset of the true offset.</summary>
internal sealed class RawOffset
{
    /// <summary>No segment there.</summary>
    public const int None = -1;

    /// <summary>The moved segments and the joining arcs.</summary>
    public List<Segment> Segments { get; } = [];
    /// <summary>Index of the segment that goes on from the end of each, or <see cref="None"/>.</summary>
    public List<int> Next { get; } = [];
    /// <summary>Index of the segment that leads to the start of each, or <see cref="None"/>.</summary>
    public List<int> Previous { get; } = [];

    /// <param name="region">The source.</param>
    /// <param name="left">Distance to the left, into the region, mm; negative moves outward.</param>
    /// <param name="join">Ends nearer than this are joined as they are, mm.</param>
    public RawOffset(ArcRegion region, double left, double join)
    {
        foreach (var loop in region.Loops) Move(loop, left, join);
    }

    private void Move(ArcLoop loop, double left, double join)
    {
        var (count, first) = (loop.Segments.Length, None);
        var before = None;
        for (var i = 0; i < count; i++)
        {
            var moved = Add(loop.Segments[i].Beside(left));
            if (i == 0) first = moved;
            else Joint(loop.Segments[i - 1], loop.Segments[i], before, moved, left, join);
            before = moved;
        }
        Joint(loop.Segments[^1], loop.Segments[0], before, first, left, join);
    }

    private int Add(Segment? segment)
    {
        if (segment is not { } s) return None;
        Segments.Add(s);
        Next.Add(None);
        Previous.Add(None);
        return Segments.Count - 1;
    }

    /// <summary>Links two moved neighbours where they meet, or by an arc about their joint where they part.</summary>
    private void Joint(in Segment a, in Segment b, int before, int after, double left, double join)
    {
        var vertex = b.From;
        var (from, to) = (vertex + left * a.Direction(1).Left, vertex + left * b.Direction(0).Left);
        var gap = from.DistanceTo(to);
        if (gap <= join)
        {
            Link(before, after);
            return;
        }
        if (before != None && after != None && gap * gap <= 2 * Math.Abs(left) * Flat && 2 * gap <= Math.Min(Segments[before].Length, Segments[after].Length))
        {
            var middle = 0.5 * (from + to);
            Segments[before] = Segments[before].Between(Segments[before].From, middle);
            Segments[after] = Segments[after].Between(middle, Segments[after].To);
            Link(before, after);
            return;
        }
        var turn = Turn(a, b);
        if (turn * left > 0) return;
        var arc = Add(Segment.About(vertex, from, turn));
        Link(before, arc);
        Link(arc, after);
    }

    private void Link(int a, int b)
    {
        if (a == None || b == None) return;
        Next[a] = b;
        Previous[b] = a;
    }

    /// <summary>Angle by which the path turns at a joint, radians, positive to the left, size up to π.</summary>
    private static double Turn(in Segment a, in Segment b)
    {
        var (u, v) = (a.Direction(1), b.Direction(0));
        var turn = Math.Atan2(u.Cross(v), u.Dot(v));
        if (Math.Abs(turn) < Math.PI - NearlyBack) return turn;
        // A cusp: which side it turns to shows a little way off the joint.
        var reach = Math.Min(a.Length, b.Length) / 2;
        var (back, on) = (a.At(1 - reach / a.Length), b.At(reach / b.Length));
        return (b.From - back).Cross(on - back) >= 0 ? Math.Abs(turn) : -Math.Abs(turn);
    }

    /// <summary>Two ends g apart on the circle of radius d about their joint may meet in their middle when that moves them by g²/8d, and the curves by no more than this off their distance, mm.</summary>
    private const double Flat = 1e-7;

    /// <summary>Turns this near to half a turn are taken for cusps, radians.</summary>
    private const double NearlyBack = 1e-3;
}
