using Solidbody.Geometry;

namespace Solidbody.Instrument.Fretboards;

/// <summary>A playing face whose radius grows evenly along x: z = thickness − (R(x) − √(R(x)² − y²)).</summary>
/// <param name="Thickness">On the centre line, mm.</param>
/// <param name="RadiusAtNut">R at x = 0, mm.</param>
/// <param name="RadiusGain">Growth of R per mm of x; 0 is a plain cylinder.</param>
public sealed record RadiusedFace(double Thickness, double RadiusAtNut, double RadiusGain) : IHeight
{
    public double Radius(double x) => RadiusAtNut + RadiusGain * x;
    public double Z(double x, double y) => Thickness - Crown(Radius(x), y);

    /// <summary>How far an arc of radius R falls at distance y from its crown.</summary>
    /// <returns>R − √(R² − y²), mm, evaluated as y² / (R + √(R² − y²)): no digits cancel when y ≪ R.</returns>
    public static double Crown(double radius, double y)
    {
        var half = Math.Min(Math.Abs(y), radius);
        return half * half / (radius + Math.Sqrt((radius - half) * (radius + half)));
    }
}
