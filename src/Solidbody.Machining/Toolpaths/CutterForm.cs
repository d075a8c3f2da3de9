using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A cutter's height over its tip as a kernel reads it: a ball of <paramref name="Ball"/> out to <paramref name="Touch"/>,
/// then a cone from <paramref name="Start"/> up with <paramref name="Slope"/>, out to <paramref name="Radius"/>. A flat end is a cone without slope.
/// A ball ends at its rim at the height of its radius: rounding may take a cell on the rim past the touch.</summary>
internal readonly record struct CutterForm(float Radius, float Ball, float Touch, float Start, float Slope)
{
    /// <exception cref="ArgumentException">A roundover: its hollow does not carve surfaces.</exception>
    public static CutterForm Of(Cutter c) => c.Kind switch
    {
        CutterKind.BallEnd => new((float)c.Radius, (float)c.Radius, (float)c.Radius, (float)c.Radius, 0),
        CutterKind.TaperedBallEnd => new((float)c.Radius, (float)c.TipRadius, (float)(c.TipRadius * Math.Cos(c.Angle)),
            (float)(c.TipRadius * (1 - Math.Sin(c.Angle))), (float)(1 / Math.Tan(c.Angle))),
        CutterKind.Drill => new((float)c.Radius, 0, 0, 0, c.Angle > 0 ? (float)(1 / Math.Tan(c.Angle / 2)) : 0),
        CutterKind.Roundover => throw new ArgumentException($"Cutter '{c.Name}' is a roundover and does not carve surfaces.", nameof(c)),
        _ => new((float)c.Radius, 0, 0, 0, 0),
    };

    /// <summary>Height over the tip at a distance whose square is r², mm; for distances within the radius.</summary>
    public float Height(float r2) => r2 <= Touch * Touch ? Ball - MathF.Sqrt(MathF.Max(0, Ball * Ball - r2)) : Start + (MathF.Sqrt(r2) - Touch) * Slope;

    public CutterForm Wider(double by) => this with { Radius = Radius + (float)by };
}
