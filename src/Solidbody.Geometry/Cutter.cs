namespace Solidbody.Geometry;

/// <summary>What the cutting edges of a cutter sweep as it turns.</summary>
public enum CutterKind
{
    /// <summary>Flat end, flutes that lift chips; may ramp, not plunge unless <see cref="Cutter.Plunges"/>.</summary>
    UpSpiral,
    /// <summary>Flat end, flutes that press chips down.</summary>
    DownSpiral,
    /// <summary>Flat end, straight flutes; slot cutters too.</summary>
    Straight,
    /// <summary>Half sphere, then a cylinder.</summary>
    BallEnd,
    /// <summary>Small ball, then a cone, then a cylinder.</summary>
    TaperedBallEnd,
    /// <summary>Cone tip, then a cylinder.</summary>
    Drill,
    /// <summary>Flat tip, then a hollow quarter circle that leaves a rounded edge.</summary>
    Roundover,
}

/// <summary>A cutter by its measures: a surface of revolution about the spindle. Lengths mm, angles radians.</summary>
public sealed record Cutter
{
    /// <summary>The shop's own short name, unique in its rack.</summary>
    public required string Name { get; init; }
    public required CutterKind Kind { get; init; }
    /// <summary>Measured cutting diameter (of the cylinder; for a tapered ball-end, at the top of its cone).</summary>
    public required double Diameter { get; init; }
    /// <summary>Length of the cutting edges from the tip.</summary>
    public required double FluteLength { get; init; }
    /// <summary>Whole length, tip to shank end.</summary>
    public required double OverallLength { get; init; }
    public required double ShankDiameter { get; init; }
    public required int Flutes { get; init; }
    /// <summary>Tip to collet face when set up.</summary>
    public required double StickOut { get; init; }
    /// <summary>Drill: included point angle. Tapered ball-end: half angle of the cone. Otherwise 0.</summary>
    public double Angle { get; init; }
    /// <summary>Tapered ball-end: radius of the ball. Roundover: radius of the flat tip inside the hollow. Otherwise 0.</summary>
    public double TipRadius { get; init; }
    /// <summary>Roundover: radius of the rounded edge it leaves. Otherwise 0.</summary>
    public double EdgeRadius { get; init; }
    /// <summary>What the edges are made of: <c>carbide</c> or <c>steel</c>.</summary>
    public string Material { get; init; } = "carbide";
    /// <summary>Whether it cuts to its centre and may go straight down.</summary>
    public bool Plunges { get; init; }

    public double Radius => Diameter / 2;
    public bool IsFlat => Kind is CutterKind.UpSpiral or CutterKind.DownSpiral or CutterKind.Straight;

    /// <summary>Height of the cutting surface above the tip at distance <paramref name="r"/> from the axis.</summary>
    /// <param name="r">Distance from the axis, mm; r ≥ 0.</param>
    /// <returns>Height, mm, growing with r; +∞ beyond the cutting radius.</returns>
    public double Height(double r)
    {
        if (r > Radius) return double.PositiveInfinity;
        switch (Kind)
        {
            case CutterKind.BallEnd:
                return r * r / (Radius + Math.Sqrt((Radius - r) * (Radius + r)));
            case CutterKind.TaperedBallEnd:
                var touch = TipRadius * Math.Cos(Angle);
                return r <= touch
                    ? r * r / (TipRadius + Math.Sqrt((TipRadius - r) * (TipRadius + r)))
                    : TipRadius * (1 - Math.Sin(Angle)) + (r - touch) / Math.Tan(Angle);
            case CutterKind.Drill:
                return Angle > 0 ? r / Math.Tan(Angle / 2) : 0;
            case CutterKind.Roundover:
                if (r <= TipRadius) return 0;
                var inward = Math.Max(0, TipRadius + EdgeRadius - r);
                return Math.Sqrt(Math.Max(0, (EdgeRadius - inward) * (EdgeRadius + inward)));
            default:
                return 0;
        }
    }

    /// <summary>Width of the groove the cutter leaves when its tip runs <paramref name="depth"/> below a level face, mm; closed form, at most the diameter.</summary>
    /// <param name="depth">mm; ≥ 0.</param>
    /// <exception cref="NotSupportedException">A roundover: its hollow leaves no single groove.</exception>
    public double WidthAt(double depth)
    {
        double Chord(double ball, double to) => 2 * Math.Sqrt(Math.Max(0, to * (2 * ball - to)));
        return Math.Min(Diameter, Kind switch
        {
            CutterKind.BallEnd => depth >= Radius ? Diameter : Chord(Radius, depth),
            CutterKind.TaperedBallEnd => TipRadius * (1 - Math.Sin(Angle)) is var ball && depth <= ball
                ? Chord(TipRadius, depth)
                : 2 * (TipRadius * Math.Cos(Angle) + (depth - ball) * Math.Tan(Angle)),
            CutterKind.Drill => Angle > 0 ? 2 * depth * Math.Tan(Angle / 2) : Diameter,
            CutterKind.Roundover => throw new NotSupportedException($"A roundover ({Name}) leaves no single groove."),
            _ => Diameter,
        });
    }

    /// <summary>Height of a drill's cone, tip to full diameter; 0 for every other kind.</summary>
    public double ConeHeight => Kind == CutterKind.Drill && Angle > 0 ? Radius / Math.Tan(Angle / 2) : 0;
}
