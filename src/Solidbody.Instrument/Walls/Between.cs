using Solidbody.Geometry;

namespace Solidbody.Instrument.Walls;

/// <summary>The least wood between two voids, and where. Exact for upright voids with level floors; for a bore within its <see cref="AlongAxis"/> steps.</summary>
internal static class Between
{
    public static (double Wood, PartPoint At)? Of(Void a, Void b) => (a, b) switch
    {
        (UprightVoid u, UprightVoid v) => Upright(u, v),
        (BoreVoid bore, UprightVoid u) => ToUpright(bore, u),
        (UprightVoid u, BoreVoid bore) => ToUpright(bore, u),
        (BoreVoid p, BoreVoid q) => Bores(p, q),
        _ => null,
    };

    private static (double, PartPoint) Upright(UprightVoid a, UprightVoid b)
    {
        var (gap, at) = (a, b) switch
        {
            (HoleVoid h, _) => (b.PlanGap(h.Hole.Centre, double.PositiveInfinity) - h.Hole.Diameter / 2, h.Hole.Centre),
            (_, HoleVoid h) => (a.PlanGap(h.Hole.Centre, double.PositiveInfinity) - h.Hole.Diameter / 2, h.Hole.Centre),
            (RoomVoid r, RoomVoid s) => Nearer(Corner(r.Pocket.Region, s), Corner(s.Pocket.Region, r)),
            (RoomVoid r, LedgeVoid l) => Nearer(Corner(r.Pocket.Region, l), Corner(l.Ledge.Inside, r)),
            _ => throw new ArgumentException($"No distance is known from {a.GetType().Name} to {b.GetType().Name}."),
        };
        var height = Math.Max(b.Low - a.High, a.Low - b.High);
        // Beside each other at the middle of the heights they share; over each other half way between.
        var z = (Math.Max(a.Low, b.Low) + Math.Min(a.High, b.High)) / 2;
        return (UprightVoid.Combine(gap, height), new(at.X, at.Y, z));
    }

    /// <summary>The corner of one plan nearest to another void, or deepest in it.</summary>
    private static (double Gap, Point2 At) Corner(Region of, UprightVoid to)
    {
        (double Gap, Point2 At) best = (double.PositiveInfinity, default);
        foreach (var p in of.Loops[0].Points)
            if (to.PlanGap(p, WallFinder.Cutoff(best.Gap)) is var gap && gap < best.Gap) best = (gap, p);
        return best;
    }

    private static (double, Point2) Nearer((double Gap, Point2 At) a, (double Gap, Point2 At) b) => a.Gap <= b.Gap ? a : b;

    private static (double, PartPoint)? ToUpright(BoreVoid bore, UprightVoid u)
    {
        var (least, at) = AlongAxis.Least(bore, p => u.Gap(p, WallFinder.Interest + bore.Radius));
        return (least - bore.Radius, at);
    }

    /// <summary>Two axes: the segments' distance, found by clamping the closest points of their lines.
    /// Source: C. Ericson, Real-Time Collision Detection (2005), section 5.1.9, from memory.</summary>
    private static (double, PartPoint) Bores(BoreVoid p, BoreVoid q)
    {
        (double X, double Y, double Z) D(PartPoint a, PartPoint b) => (b.X - a.X, b.Y - a.Y, b.Z - a.Z);
        static double Dot((double X, double Y, double Z) a, (double X, double Y, double Z) b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;
        var (d1, d2, r) = (D(p.Bore.A, p.Bore.B), D(q.Bore.A, q.Bore.B), D(q.Bore.A, p.Bore.A));
        var (a, e, b, c, f) = (Dot(d1, d1), Dot(d2, d2), Dot(d1, d2), Dot(d1, r), Dot(d2, r));
        var denominator = a * e - b * b;
        var s = denominator > Tolerances.Geometry * a * e ? Math.Clamp((b * f - c * e) / denominator, 0, 1) : 0;
        var t = (b * s + f) / e;
        if (t is < 0 or > 1)
        {
            t = Math.Clamp(t, 0, 1);
            s = Math.Clamp((b * t - c) / a, 0, 1);
        }
        var (u, v) = (p.Axis(s), q.Axis(t));
        var w = D(u, v);
        return (Math.Sqrt(Dot(w, w)) - p.Radius - q.Radius, new((u.X + v.X) / 2, (u.Y + v.Y) / 2, (u.Z + v.Z) / 2));
    }
}
