namespace Solidbody.Geometry.Arcs;

/// <summary>Where two segments cross or touch, in closed form.</summary>
internal static class SegmentCrossings
{
    /// <summary>One meeting: the point, and its share of the way on each segment.</summary>
    internal readonly record struct Meeting(Point2 At, double OnFirst, double OnSecond);

    /// <summary>Segments that come this near touch, mm: far above rounding, far below anything cut.</summary>
    public const double Touch = 1e-7;

    /// <summary>Appends every meeting; stretches that run on each other are reported by the ends that lie on the other.</summary>
    public static void Find(in Segment a, in Segment b, List<Meeting> found)
    {
        if (a.IsArc && b.IsArc) ArcArc(a, b, found);
        else if (a.IsArc) LineArc(b, a, a, b, found);
        else if (b.IsArc) LineArc(a, b, a, b, found);
        else LineLine(a, b, found);
        End(a.From, a, b, found);
        End(a.To, a, b, found);
        End(b.From, a, b, found);
        End(b.To, a, b, found);
    }

    /// <summary>An end of one that lies on the other.</summary>
    private static void End(Point2 end, in Segment a, in Segment b, List<Meeting> found)
    {
        if (a.DistanceTo(end) <= Touch && b.DistanceTo(end) <= Touch) found.Add(new(end, a.Nearest(end), b.Nearest(end)));
    }

    private static void LineLine(in Segment a, in Segment b, List<Meeting> found)
    {
        var (u, v, w) = (a.To - a.From, b.To - b.From, b.From - a.From);
        var cross = u.Cross(v);
        if (cross == 0) return;
        Meet(a.From + w.Cross(v) / cross * u, a, b, found);
    }

    /// <summary>The foot of the centre on the line, and half a chord either way.</summary>
    private static void LineArc(in Segment line, in Segment arc, in Segment a, in Segment b, List<Meeting> found)
    {
        var along = (line.To - line.From).Unit;
        var foot = line.From + (arc.Centre - line.From).Dot(along) * along;
        var away = foot.DistanceTo(arc.Centre);
        if (away > arc.Radius + Touch) return;
        Pair(foot, along, Math.Sqrt(Math.Max(0, (arc.Radius - away) * (arc.Radius + away))), a, b, found);
    }

    /// <summary>The point where the line of centres meets the common chord, and half the chord either way.</summary>
    private static void ArcArc(in Segment a, in Segment b, List<Meeting> found)
    {
        var between = b.Centre - a.Centre;
        var apart = between.Length;
        if (apart <= Touch || apart > a.Radius + b.Radius + Touch || apart < Math.Abs(a.Radius - b.Radius) - Touch) return;
        // (apart² + ra² − rb²) / (2 apart), with the difference of squares as a product.
        var along = apart / 2 + (a.Radius - b.Radius) * (a.Radius + b.Radius) / (2 * apart);
        var unit = 1 / apart * between;
        Pair(a.Centre + along * unit, unit.Left, Math.Sqrt(Math.Max(0, (a.Radius - along) * (a.Radius + along))), a, b, found);
    }

    private static void Pair(Point2 middle, Point2 along, double half, in Segment a, in Segment b, List<Meeting> found)
    {
        if (half <= Touch)
        {
            Meet(middle, a, b, found);
            return;
        }
        Meet(middle - half * along, a, b, found);
        Meet(middle + half * along, a, b, found);
    }

    /// <summary>Taken when it lies on both segments.</summary>
    private static void Meet(Point2 p, in Segment a, in Segment b, List<Meeting> found)
    {
        if (a.DistanceTo(p) <= Touch && b.DistanceTo(p) <= Touch) found.Add(new(p, a.Nearest(p), b.Nearest(p)));
    }
}
