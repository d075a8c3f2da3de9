using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A surface with x and y exchanged, so that passes along y can be made as passes along x.</summary>
internal sealed record ExchangedHeight(IHeight Of) : IHeight
{
    public double Z(double x, double y) => Of.Z(y, x);
}
