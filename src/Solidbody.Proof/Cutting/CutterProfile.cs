using Solidbody.Geometry;

namespace Solidbody.Proof.Cutting;

/// <summary>Which closed form a cutter's surface of revolution has.</summary>
internal enum ProfileShape { Flat, Ball, Cone, Hollow }

/// <summary>A cutter as the sweep sees it: the height of its surface above the tip, by the distance from its axis. mm.</summary>
/// <param name="Shape">Closed form.</param>
/// <param name="Radius">Cutting radius R.</param>
/// <param name="TipRadius">Ball: R. Cone: radius r of the ball at its tip, 0 for a sharp point. Hollow: radius of the flat tip.</param>
/// <param name="Slope">Cone: rise per distance m. Otherwise 0.</param>
/// <param name="EdgeRadius">Hollow: radius of the quarter circle. Otherwise 0.</param>
internal readonly record struct CutterProfile(ProfileShape Shape, double Radius, double TipRadius, double Slope, double EdgeRadius)
{
    /// <summary>Cone: distance from the axis where ball and cone touch, r cos α with m = cot α.</summary>
    public double Touch => TipRadius * Slope / Math.Sqrt(1 + Slope * Slope);

    /// <summary>Cone: height of that circle above the tip, r (1 − sin α).</summary>
    public double TouchHeight => TipRadius * (1 - 1 / Math.Sqrt(1 + Slope * Slope));

    public static CutterProfile Of(Cutter cutter) => cutter.Kind switch
    {
        CutterKind.BallEnd => new(ProfileShape.Ball, cutter.Radius, cutter.Radius, 0, 0),
        CutterKind.TaperedBallEnd => new(ProfileShape.Cone, cutter.Radius, cutter.TipRadius, 1 / Math.Tan(cutter.Angle), 0),
        CutterKind.Drill when cutter.Angle > 0 => new(ProfileShape.Cone, cutter.Radius, 0, 1 / Math.Tan(cutter.Angle / 2), 0),
        CutterKind.Roundover => new(ProfileShape.Hollow, cutter.Radius, cutter.TipRadius, 0, cutter.EdgeRadius),
        _ => Disc(cutter.Radius),
    };

    /// <summary>A flat disc: a flat cutter, a shank's shoulder, a collet's face.</summary>
    public static CutterProfile Disc(double radius) => new(ProfileShape.Flat, radius, 0, 0, 0);

    /// <summary>The same surface without its outermost ring, so that a wall this cutter has just made does not count as touched.</summary>
    public CutterProfile Shrunk(double by) => Shape == ProfileShape.Hollow
        ? Disc(Math.Max(TipRadius - by, by))
        : this with { Radius = Math.Max(Radius - by, by) };

    /// <summary>Height above the tip at distance <paramref name="d"/> ≤ R from the axis.</summary>
    public double Height(double d)
    {
        switch (Shape)
        {
            case ProfileShape.Ball:
                return d * d / (TipRadius + Math.Sqrt(Math.Max(0, (TipRadius - d) * (TipRadius + d))));
            case ProfileShape.Cone:
                return d <= Touch
                    ? (TipRadius > 0 ? d * d / (TipRadius + Math.Sqrt((TipRadius - d) * (TipRadius + d))) : 0)
                    : TouchHeight + (d - Touch) * Slope;
            case ProfileShape.Hollow:
                if (d <= TipRadius) return 0;
                var inward = Math.Clamp(TipRadius + EdgeRadius - d, 0, EdgeRadius);
                return Math.Sqrt((EdgeRadius - inward) * (EdgeRadius + inward));
            default:
                return 0;
        }
    }

    /// <summary>How far ahead of the axis the lowest surface lies at most, on a path of slope g: |q| over all w; R when it may be the rim.</summary>
    public double MostContactOffset(double g) => Shape switch
    {
        ProfileShape.Ball => Radius * Math.Abs(g) / Math.Sqrt(1 + g * g),
        ProfileShape.Cone when Math.Abs(g) < Slope => Math.Min(Radius, Radius * Math.Abs(g) / Math.Sqrt(Slope * Slope - g * g)),
        ProfileShape.Hollow => 0,
        ProfileShape.Flat when g == 0 => 0,
        _ => Radius,
    };
}
