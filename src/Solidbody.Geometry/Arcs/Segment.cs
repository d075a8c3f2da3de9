namespace Solidbody.Geometry.Arcs;

/// <summary>A straight or a circular arc of at most half a turn in a plan, mm, with its direction of travel.</summary>
public readonly record struct Segment
{
    /// <summary>Largest sweep, radians: half a turn and the rounding of one.</summary>
    internal const double WidestSweep = Math.PI * (1 + 1e-12);

    private Segment(Point2 from, Point2 to, double sweep, Point2 centre, double radius) =>
        (From, To, Sweep, Centre, Radius) = (from, to, sweep, centre, radius);

    public Point2 From { get; }
    public Point2 To { get; }
    /// <summary>Swept angle, radians, positive counter-clockwise, at most π either way; 0 for a straight.</summary>
    public double Sweep { get; }
    /// <summary>Centre of an arc; (0, 0) for a straight.</summary>
    public Point2 Centre { get; }
    /// <summary>Radius of an arc, mm; 0 for a straight.</summary>
    public double Radius { get; }
    public bool IsArc => Sweep != 0;

    public static Segment Line(Point2 from, Point2 to) => new(from, to, 0, default, 0);

    /// <summary>The arc between two points that turns by an angle.</summary>
    /// <param name="from">Its start.</param>
    /// <param name="to">Its end, apart from the start.</param>
    /// <param name="sweep">Turn, radians, positive counter-clockwise, size in [0, π]; one too small to show gives a straight.</param>
    /// <remarks>Radius c / (2 sin(s/2)), centre c / (2 tan(s/2)) to the left of the chord's middle, c the chord: inscribed angle (Euclid III.20).</remarks>
    public static Segment Arc(Point2 from, Point2 to, double sweep)
    {
        if (!(Math.Abs(sweep) <= WidestSweep)) throw new ArgumentOutOfRangeException(nameof(sweep), sweep, "An arc turns by at most π either way.");
        var chord = to - from;
        // Sagitta c/2 tan(s/4): below rounding an arc is its chord.
        if (Math.Abs(chord.Length / 2 * Math.Tan(sweep / 4)) < Rounding) return Line(from, to);
        return new(from, to, sweep, 0.5 * (from + to) + 0.5 / Math.Tan(sweep / 2) * chord.Left, chord.Length / (2 * Math.Sin(Math.Abs(sweep) / 2)));
    }

    /// <summary>The arc about a centre from one point through an angle.</summary>
    public static Segment About(Point2 centre, Point2 from, double sweep) =>
        new(from, centre + (from - centre).Turned(sweep), sweep, centre, from.DistanceTo(centre));

    /// <summary>Length along the segment, mm.</summary>
    public double Length => IsArc ? Radius * Math.Abs(Sweep) : From.DistanceTo(To);
    public Segment Reversed => new(To, From, -Sweep, Centre, Radius);

    /// <summary>The point a share of the way along; exact at both ends.</summary>
    public Point2 At(double share)
    {
        if (share <= 0) return From;
        if (share >= 1) return To;
        return IsArc ? Centre + (From - Centre).Turned(share * Sweep) : From + share * (To - From);
    }

    /// <summary>Direction of travel at a share of the way, length 1.</summary>
    public Point2 Direction(double share)
    {
        if (!IsArc) return (To - From).Unit;
        var outward = share >= 1 ? To - Centre : share <= 0 ? From - Centre : (From - Centre).Turned(share * Sweep);
        return (Sweep > 0 ? outward.Left : -outward.Left).Unit;
    }

    /// <summary>The stretch between two shares of the way, 0 ≤ a ≤ b ≤ 1.</summary>
    public Segment Part(double a, double b) => new(At(a), At(b), (b - a) * Sweep, Centre, Radius);

    /// <summary>An arc carried on about the same centre to a further end.</summary>
    internal Segment Extended(Point2 to, double sweep) => new(From, to, sweep, Centre, Radius);

    /// <summary>The same segment between ends moved a little, along it or off it: an arc turns as far as its ends show from its old centre.</summary>
    internal Segment Between(Point2 from, Point2 to)
    {
        if (!IsArc) return Line(from, to);
        if (from.DistanceTo(From) + to.DistanceTo(To) < Rounding) return new(from, to, Sweep, Centre, Radius);
        var sweep = Sweep + Angle(To - Centre, to - Centre) - Angle(From - Centre, from - Centre);
        return sweep * Sweep > 0 ? Arc(from, to, Math.Clamp(sweep, -Math.PI, Math.PI)) : Line(from, to);
    }

    private static double Angle(Point2 u, Point2 v) => Math.Atan2(u.Cross(v), u.Dot(v));

    /// <summary>Ends nearer than this are one point to rounding, mm.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Moved to its left by a distance; to its right when negative. An arc keeps its centre. Null when an arc turns inside out.</summary>
    internal Segment? Beside(double left)
    {
        if (!IsArc)
        {
            var by = left * (To - From).Unit.Left;
            return Line(From + by, To + by);
        }
        var radius = Radius - Math.Sign(Sweep) * left;
        if (radius < 0) return null;
        var k = radius / Radius;
        return new(Centre + k * (From - Centre), Centre + k * (To - Centre), Sweep, Centre, radius);
    }

    /// <summary>Least upright rectangle around it.</summary>
    public Box2 Bounds
    {
        get
        {
            var box = Box2.Empty.With(From).With(To);
            if (!IsArc) return box;
            if (Faces(new(1, 0))) box = box with { X1 = Math.Max(box.X1, Centre.X + Radius) };
            if (Faces(new(-1, 0))) box = box with { X0 = Math.Min(box.X0, Centre.X - Radius) };
            if (Faces(new(0, 1))) box = box with { Y1 = Math.Max(box.Y1, Centre.Y + Radius) };
            if (Faces(new(0, -1))) box = box with { Y0 = Math.Min(box.Y0, Centre.Y - Radius) };
            return box;
        }
    }

    /// <summary>Distance from a point, mm; exact up to rounding.</summary>
    public double DistanceTo(Point2 p)
    {
        if (!IsArc)
        {
            var (edge, away) = (To - From, p - From);
            var square = edge.Dot(edge);
            return square > 0 ? (away - Math.Clamp(away.Dot(edge) / square, 0, 1) * edge).Length : away.Length;
        }
        var outward = p - Centre;
        return Faces(outward) ? Math.Abs(outward.Length - Radius) : Math.Min(p.DistanceTo(From), p.DistanceTo(To));
    }

    /// <summary>Share of the way at which it is nearest to a point, in [0, 1].</summary>
    public double Nearest(Point2 p)
    {
        if (!IsArc)
        {
            var edge = To - From;
            var square = edge.Dot(edge);
            return square > 0 ? Math.Clamp((p - From).Dot(edge) / square, 0, 1) : 0;
        }
        var outward = p - Centre;
        if (!Faces(outward)) return p.DistanceTo(From) <= p.DistanceTo(To) ? 0 : 1;
        var from = From - Centre;
        return Math.Clamp(Math.Atan2(from.Cross(outward), from.Dot(outward)) / Sweep, 0, 1);
    }

    /// <summary>Arcs: whether a direction from the centre meets the arc; its ends count.</summary>
    internal bool Faces(Point2 direction)
    {
        var (from, to) = (From - Centre, To - Centre);
        return Sweep > 0
            ? from.Cross(direction) >= 0 && (Sweep >= Math.PI || direction.Cross(to) >= 0)
            : from.Cross(direction) <= 0 && (Sweep <= -Math.PI || direction.Cross(to) <= 0);
    }

    /// <summary>Twice the area between the segment and the origin, signed: Green's theorem, summed round a loop.</summary>
    internal double TwiceArea => From.Cross(To) + (IsArc ? Radius * Radius * (Sweep - Math.Sin(Sweep)) : 0);

    /// <summary>How often the level line through a point meets the segment to the point's left. Half-open in y, so that shared ends count once.</summary>
    internal int CrossingsLeftOf(Point2 p)
    {
        if (!IsArc)
            return (From.Y <= p.Y) != (To.Y <= p.Y) && From.X + (p.Y - From.Y) / (To.Y - From.Y) * (To.X - From.X) <= p.X ? 1 : 0;
        // In pieces that only rise or only fall: over the top (1) or the bottom (-1), whichever is met first.
        var (count, y, outward) = (0, From.Y, From - Centre);
        var first = outward.X == 0 ? Math.Sign(outward.Y) : Math.Sign(outward.X) * Math.Sign(Sweep);
        for (var (end, k) = (first, 0); k < 2; end = -end, k++)
            if (Faces(new(0, end)))
            {
                count += MonotoneCrossing(y, Centre.Y + end * Radius, p);
                y = Centre.Y + end * Radius;
            }
        return count + MonotoneCrossing(y, To.Y, p);
    }

    private int MonotoneCrossing(double y0, double y1, Point2 p)
    {
        if ((y0 <= p.Y) == (y1 <= p.Y)) return 0;
        var right = y1 > y0 == Sweep > 0;
        var half = Math.Sqrt(Math.Max(0, (Radius - (p.Y - Centre.Y)) * (Radius + (p.Y - Centre.Y))));
        return Centre.X + (right ? half : -half) <= p.X ? 1 : 0;
    }

    /// <summary>Points along it after its start, its end included; no chord further than the tolerance from the arc.</summary>
    public IEnumerable<Point2> Chords(double tolerance = Tolerances.Flattening)
    {
        var n = IsArc ? Shapes.ChordsFor(Radius, Sweep, tolerance) : 1;
        for (var i = 1; i <= n; i++) yield return At((double)i / n);
    }

    /// <summary>Its ends and turn only: a record's own text would follow <see cref="Reversed"/> without end.</summary>
    public override string ToString() =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{From} to {To}{(IsArc ? $" about {Centre}, radius {Radius}" : "")}");
}
