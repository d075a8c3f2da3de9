using Solidbody.Materials;

namespace Solidbody.Instrument;

/// <summary>A cap of another wood, glued on the body's front before anything is cut.</summary>
/// <param name="Wood">Key.</param>
/// <param name="Thickness">Of the cap; the body's thickness counts it in.</param>
/// <param name="Grain">How its boards are sawn.</param>
/// <param name="Pieces">Side by side: 1, or 2 joined on the centre line.</param>
public sealed record TopDefinition(string Wood, double Thickness, Grain Grain, int Pieces)
{
    /// <summary>Height of the plane between cap and body wood, part frame.</summary>
    public double GluePlane => -Thickness;
}
