using Solidbody.Geometry;

namespace Solidbody.Instrument.Fretboards;

/// <summary>A straight line across the neck: x = Middle + Slope · y, mm.</summary>
/// <param name="Middle">x on the centre line.</param>
/// <param name="Slope">dx/dy: 0 is square to the centre line.</param>
public readonly record struct CrossLine(double Middle, double Slope)
{
    public double X(double y) => Middle + Slope * y;
    public Point2 At(double y) => new(X(y), y);
    public CrossLine Moved(double along) => this with { Middle = Middle + along };
    /// <summary>Against the square, radians, positive counter-clockwise seen from the front.</summary>
    public double Turn => Slope == 0 ? 0 : -Math.Atan(Slope);
    /// <summary>Its direction toward the treble side.</summary>
    public Point2 Along => new Point2(Slope, 1).Unit;
}
