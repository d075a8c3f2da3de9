namespace Solidbody.Geometry.Arcs;

/// <summary>Two arcs that leave a point in one direction, arrive at another in another, and run smoothly into each other.</summary>
internal static class Biarc
{
    /// <summary>Two pieces this alike are one, mm.</summary>
    private const double Same = 1e-8;
    /// <summary>An arc flatter than this against its chord, mm, or of a larger radius, is a straight.</summary>
    private const double Flattest = 1e-8, WidestRadius = 1e6;

    /// <summary>The biarc with equal legs, as one or two segments; none where the directions ask for more than half a turn.</summary>
    /// <param name="from">Start.</param>
    /// <param name="leaving">Direction there, length 1.</param>
    /// <param name="to">End, apart from the start.</param>
    /// <param name="arriving">Direction there, length 1.</param>
    /// <param name="segments">Receives the segments.</param>
    /// <remarks>Legs d along both tangents with |v − d(t₁ + t₂)| = 2d: d = (√((v·t)² + 2(1 − t₁·t₂) v·v) − v·t) / (2(1 − t₁·t₂)), t = t₁ + t₂, written so that nothing cancels;
    /// the joint halves the line between the legs' ends. K. M. Bolton, Biarc curves, Computer-Aided Design 7 (1975) 89–92 (from memory).</remarks>
    public static void Of(Point2 from, Point2 leaving, Point2 to, Point2 arriving, List<Segment> segments)
    {
        segments.Clear();
        var chord = to - from;
        var (along, square, open) = (chord.Dot(leaving + arriving), chord.Dot(chord), 1 - leaving.Dot(arriving));
        if (along <= 0) return;
        var leg = square / (along + Math.Sqrt(along * along + 2 * open * square));
        var joint = 0.5 * (from + to + leg * (leaving - arriving));
        var (first, second) = (Tangent(from, leaving, joint), Tangent(to, -arriving, joint).Reversed);
        if (One(from, to, first, second) is { } whole) segments.Add(whole);
        else
        {
            segments.Add(first);
            segments.Add(second);
        }
    }

    /// <summary>The arc that leaves a point in a direction and ends at another: it turns by twice the angle between direction and chord (Euclid III.32).</summary>
    public static Segment Tangent(Point2 from, Point2 leaving, Point2 to)
    {
        var chord = to - from;
        var sweep = 2 * Math.Atan2(leaving.Cross(chord), leaving.Dot(chord));
        // Sagitta c/2 tan(s/4), radius c / (2 sin(s/2)).
        var (sagitta, length) = (Math.Abs(chord.Length / 2 * Math.Tan(sweep / 4)), chord.Length);
        if (sagitta < Flattest || length > 2 * WidestRadius * Math.Abs(Math.Sin(sweep / 2)) || Math.Abs(sweep) > Math.PI) return Segment.Line(from, to);
        return Segment.Arc(from, to, sweep);
    }

    private static Segment? One(Point2 from, Point2 to, in Segment a, in Segment b)
    {
        var whole = Math.Abs(a.Sweep + b.Sweep) < Math.PI ? Segment.Arc(from, to, a.Sweep + b.Sweep) : a;
        if (!whole.IsArc || whole.Radius > WidestRadius) whole = Segment.Line(from, to);
        return whole.To == to && whole.DistanceTo(a.At(0.5)) < Same && whole.DistanceTo(a.To) < Same && whole.DistanceTo(b.At(0.5)) < Same ? whole : null;
    }
}
