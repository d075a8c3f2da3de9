using Solidbody.Geometry;

namespace Solidbody.Packet.Sheets;

/// <summary>Whether straight lines meet.</summary>
internal static class Segments
{
    /// <summary>Whether two segments cross within both (touching at an end does not count).</summary>
    public static bool Cross(Point2 a, Point2 b, Point2 c, Point2 d)
    {
        var (abc, abd) = ((b - a).Cross(c - a), (b - a).Cross(d - a));
        var (cda, cdb) = ((d - c).Cross(a - c), (d - c).Cross(b - c));
        return abc * abd < 0 && cda * cdb < 0;
    }

    /// <summary>Whether a segment has a point inside the box (slab method).</summary>
    public static bool Crosses(Point2 a, Point2 b, Box2 box)
    {
        var (from, to) = (0.0, 1.0);
        return Clip(a.X, b.X - a.X, box.X0, box.X1, ref from, ref to) && Clip(a.Y, b.Y - a.Y, box.Y0, box.Y1, ref from, ref to) && from < to;
    }

    private static bool Clip(double start, double run, double low, double high, ref double from, ref double to)
    {
        if (run == 0) return start > low && start < high;
        var (t0, t1) = ((low - start) / run, (high - start) / run);
        from = Math.Max(from, Math.Min(t0, t1));
        to = Math.Min(to, Math.Max(t0, t1));
        return from < to;
    }
}
