namespace Solidbody.Geometry.Arcs;

/// <summary>Directions of the curve that a row of points stands for: along the circle through three neighbours, along a chord too long to stand for a curve, broken at corners.</summary>
internal sealed class PathTangents
{
    private readonly IReadOnlyList<Point2> points;
    private readonly bool closed;
    private readonly double sagitta;
    private readonly double[] radius;    // of the circle through a point and its neighbours, signed, +∞ on a straight
    private readonly bool[] straight;    // chord from point i to the next

    /// <summary>Direction in which the curve arrives at each point.</summary>
    public Point2[] Arriving { get; }
    /// <summary>Direction in which it leaves; another one at a corner.</summary>
    public Point2[] Leaving { get; }

    /// <param name="points">The points, no two neighbours alike.</param>
    /// <param name="closed">Whether the last joins the first.</param>
    /// <param name="sagitta">A chord from which the circle stands off further is straight, mm.</param>
    public PathTangents(IReadOnlyList<Point2> points, bool closed, double sagitta)
    {
        (this.points, this.closed, this.sagitta) = (points, closed, sagitta);
        (radius, straight) = (new double[points.Count], new bool[points.Count]);
        (Arriving, Leaving) = (new Point2[points.Count], new Point2[points.Count]);
        for (var i = 0; i < points.Count; i++) FindCircle(i);
        for (var i = 0; i < points.Count; i++) FindDirections(i);
    }

    public bool IsStraight(int chord) => straight[Wrap(chord)];
    public bool IsCorner(int i) => IsEnd(i) || Arriving[i].DistanceTo(Leaving[i]) > 1e-9;

    private bool IsEnd(int i) => !closed && (i == 0 || i == points.Count - 1);
    private int Wrap(int i) => (i + points.Count) % points.Count;
    private Point2 Chord(int i) => points[Wrap(i + 1)] - points[Wrap(i)];

    /// <summary>Circle through three points, R = |P₂ − P₀| / (2 sin θ), θ the turn (law of sines), and whether either chord stands too far off it.</summary>
    private void FindCircle(int i)
    {
        radius[i] = double.PositiveInfinity;
        if (IsEnd(i)) return;
        var (u, v) = (Chord(i - 1), Chord(i));
        var cross = u.Cross(v);
        if (u.Dot(v) <= 0) straight[Wrap(i - 1)] = straight[i] = true;
        else if (cross != 0)
        {
            radius[i] = u.Length * v.Length * (u + v).Length / (2 * cross);
            if (Sagitta(u.Length, radius[i]) > sagitta) straight[Wrap(i - 1)] = true;
            if (Sagitta(v.Length, radius[i]) > sagitta) straight[i] = true;
        }
    }

    private static double Sagitta(double chord, double radius)
    {
        var half = Math.Min(chord / (2 * Math.Abs(radius)), 1);
        return chord / 2 * half / (1 + Math.Sqrt(1 - half * half));
    }

    private void FindDirections(int i)
    {
        if (IsEnd(i))
        {
            Arriving[i] = i == 0 ? default : Before(i);
            Leaving[i] = i == 0 ? After(i) : default;
            return;
        }
        var (u, v) = (Chord(i - 1), Chord(i));
        if (!straight[Wrap(i - 1)] && !straight[i])
        {
            Arriving[i] = Leaving[i] = u.Unit.Turned(HalfTurn(u.Length, radius[i]));
            return;
        }
        (Arriving[i], Leaving[i]) = (Before(i), After(i));
        // A straight that runs into a curve: the joint is smooth when taking it so moves the curve by less than that.
        var off = Math.Abs(Math.Atan2(Arriving[i].Cross(Leaving[i]), Arriving[i].Dot(Leaving[i])));
        if (straight[i] && !straight[Wrap(i - 1)] && off * u.Length <= Bend * sagitta) Arriving[i] = Leaving[i];
        else if (straight[Wrap(i - 1)] && !straight[i] && off * v.Length <= Bend * sagitta) Leaving[i] = Arriving[i];
    }

    /// <summary>Turning the end of a chord by an angle a moves its arc by about a c / 8; half of what is allowed is spent on it.</summary>
    private const double Bend = 4;

    /// <summary>Direction at a point as the chord before it and the circle at the point before that tell it.</summary>
    private Point2 Before(int i)
    {
        var (u, r) = (Chord(i - 1), straight[Wrap(i - 1)] ? double.PositiveInfinity : radius[Wrap(i - 1)]);
        return u.Unit.Turned(HalfTurn(u.Length, r));
    }

    private Point2 After(int i)
    {
        var (v, r) = (Chord(i), straight[i] ? double.PositiveInfinity : radius[Wrap(i + 1)]);
        return v.Unit.Turned(-HalfTurn(v.Length, r));
    }

    private static double HalfTurn(double chord, double radius) => Math.Asin(Math.Clamp(chord / (2 * radius), -1, 1));
}
