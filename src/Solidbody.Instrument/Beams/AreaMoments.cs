using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Beams;

/// <summary>Area of a section and its moments about the level z = 0; holes are taken off, members put in.</summary>
/// <param name="Area">∫ dA, mm².</param>
/// <param name="First">∫ z dA, mm³.</param>
/// <param name="Second">∫ z² dA, mm⁴.</param>
public readonly record struct AreaMoments(double Area, double First, double Second)
{
    /// <summary>Enough for a neck's back and a radiused board: half an ellipse comes out to eleven digits.</summary>
    private const int Places = 24;
    private static readonly ImmutableArray<(double Sine, double Weight)> Across =
        [.. GaussLegendre.Nodes(Places).Select(n => (Math.Sin(Math.PI / 2 * n.Node), Math.PI / 2 * n.Weight * Math.Cos(Math.PI / 2 * n.Node)))];

    /// <summary>Height of the centroid, mm.</summary>
    public double Centroid => First / Area;
    /// <summary>Second moment about the section's own centroid, mm⁴.</summary>
    public double AboutCentroid => Second - First * First / Area;

    public static AreaMoments operator +(AreaMoments a, AreaMoments b) => new(a.Area + b.Area, a.First + b.First, a.Second + b.Second);
    public static AreaMoments operator -(AreaMoments a, AreaMoments b) => new(a.Area - b.Area, a.First - b.First, a.Second - b.Second);

    /// <summary>An upright rectangle from one level to another.</summary>
    public static AreaMoments Rectangle(double width, double from, double to) =>
        new(width * (to - from), width * (to * to - from * from) / 2, width * (to * to * to - from * from * from) / 3);

    /// <summary>A round bar, its middle at a level.</summary>
    public static AreaMoments Round(double diameter, double middle)
    {
        var area = Math.PI / 4 * diameter * diameter;
        return new(area, area * middle, area * (middle * middle + diameter * diameter / 16));
    }

    /// <summary>What lies between two heights that change across the section.</summary>
    /// <param name="halfWidth">b: y runs from −b to b, mm.</param>
    /// <param name="heights">Low and high at y.</param>
    /// <remarks>y = b sin θ, Gauss–Legendre over θ: a back that meets its edges upright, as an ellipse does, is then as smooth as any.</remarks>
    public static AreaMoments Between(double halfWidth, Func<double, (double Low, double High)> heights)
    {
        ArgumentNullException.ThrowIfNull(heights);
        var (area, first, second) = (0.0, 0.0, 0.0);
        foreach (var (sine, weight) in Across)
        {
            var (low, high) = heights(halfWidth * sine);
            area += weight * (high - low);
            first += weight * (high * high - low * low) / 2;
            second += weight * (high * high * high - low * low * low) / 3;
        }
        return new(halfWidth * area, halfWidth * first, halfWidth * second);
    }
}
