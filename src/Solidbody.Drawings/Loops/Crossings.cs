using Solidbody.Geometry;

namespace Solidbody.Drawings.Loops;

/// <summary>Where loops cross or touch themselves or one another.</summary>
internal static class Crossings
{
    /// <summary>Directions tried for the sweep: strokes side by side keep apart along one of them, however they slant.</summary>
    private const int Directions = 16;

    /// <summary>A place where two edges meet that are not neighbours, or where neighbours fold back on each other.</summary>
    internal readonly record struct Meeting(int Loop, int Other, Point2 At);

    /// <summary>An edge of a loop, and the room it takes along the sweep's direction and across it.</summary>
    private readonly record struct Edge(Point2 A, Point2 B, int Loop, int Index, double Low, double High, double Left, double Right);

    /// <summary>Meetings up to a number: a sweep over the edges in order of where they begin.</summary>
    /// <param name="near">Edges that come this near to each other touch, mm.</param>
    public static List<Meeting> Of(IReadOnlyList<Chain> loops, int most, double near = Tolerances.Geometry)
    {
        var edges = Sorted(loops);
        var found = new List<Meeting>();
        for (var i = 0; i < edges.Length; i++)
        {
            ref readonly var a = ref edges[i];
            var (end, left, right) = (a.High + near, a.Left - near, a.Right + near);
            for (var j = i + 1; j < edges.Length && edges[j].Low <= end; j++)
            {
                ref readonly var b = ref edges[j];
                if (b.Right < left || b.Left > right || LieApart(a, b, near)) continue;
                if (Meet(a, b, loops[a.Loop].Points.Count, near) is not { } at) continue;
                found.Add(new(a.Loop, b.Loop, at));
                if (found.Count == most) return found;
            }
        }
        return found;
    }

    private static Edge[] Sorted(IReadOnlyList<Chain> loops)
    {
        IEnumerable<(Point2 A, Point2 B, int Loop, int Index)> Sides() =>
            loops.SelectMany((loop, l) => loop.Points.Select((p, i) => (p, loop.Points[(i + 1) % loop.Points.Count], l, i)));
        // The least room along the sweep leaves the fewest pairs to compare.
        var u = Enumerable.Range(0, Directions).Select(k => Point2.Polar(Math.PI * k / Directions)).MinBy(d => Sides().Sum(s => Math.Abs((s.B - s.A).Dot(d))));
        var v = u.Left;
        var edges = Sides().Select(s => new Edge(s.A, s.B, s.Loop, s.Index, Math.Min(s.A.Dot(u), s.B.Dot(u)), Math.Max(s.A.Dot(u), s.B.Dot(u)),
            Math.Min(s.A.Dot(v), s.B.Dot(v)), Math.Max(s.A.Dot(v), s.B.Dot(v)))).ToArray();
        Array.Sort(edges, (a, b) => a.Low.CompareTo(b.Low));
        return edges;
    }

    /// <summary>Whether one edge lies wholly on one side of the other's line: the quick answer for most pairs.</summary>
    private static bool LieApart(in Edge a, in Edge b, double near) => IsBeside(a, b, near) || IsBeside(b, a, near);

    private static bool IsBeside(in Edge a, in Edge b, double near)
    {
        var (x, y) = (a.B.X - a.A.X, a.B.Y - a.A.Y);
        var (p, q) = (x * (b.A.Y - a.A.Y) - y * (b.A.X - a.A.X), x * (b.B.Y - a.A.Y) - y * (b.B.X - a.A.X));
        // Distances times the edge's length, which is at most |x| + |y|.
        var reach = near * (Math.Abs(x) + Math.Abs(y));
        return p > reach && q > reach || p < -reach && q < -reach;
    }

    private static Point2? Meet(in Edge a, in Edge b, int count, double near)
    {
        if (a.Loop == b.Loop)
        {
            var (first, second) = a.Index < b.Index ? (a, b) : (b, a);
            if (second.Index == first.Index + 1) return FoldsBack(first.A, first.B, second.B) ? first.B : null;
            if (first.Index == 0 && second.Index == count - 1) return FoldsBack(second.A, second.B, first.B) ? first.A : null;
        }
        if (Crossing(a, b) is { } at) return at;
        if (Distance(a.A, b) <= near) return a.A;
        if (Distance(a.B, b) <= near) return a.B;
        if (Distance(b.A, a) <= near) return b.A;
        return Distance(b.B, a) <= near ? b.B : null;
    }

    /// <summary>Whether the way from a to b to c turns right round on itself.</summary>
    private static bool FoldsBack(Point2 a, Point2 b, Point2 c)
    {
        var (u, v) = ((b - a).Unit, (c - b).Unit);
        return u.Dot(v) < 0 && Math.Abs(u.Cross(v)) * Math.Min(a.DistanceTo(b), b.DistanceTo(c)) <= Tolerances.Geometry;
    }

    private static Point2? Crossing(in Edge a, in Edge b)
    {
        var (u, v, w) = (a.B - a.A, b.B - b.A, b.A - a.A);
        var cross = u.Cross(v);
        if (cross == 0) return null;
        var (s, t) = (w.Cross(v) / cross, w.Cross(u) / cross);
        return s is >= 0 and <= 1 && t is >= 0 and <= 1 ? a.A + s * u : null;
    }

    private static double Distance(Point2 p, in Edge edge)
    {
        var (along, v) = (edge.B - edge.A, p - edge.A);
        var length = along.Dot(along);
        return (v - (length > 0 ? Math.Clamp(v.Dot(along) / length, 0, 1) : 0) * along).Length;
    }
}
