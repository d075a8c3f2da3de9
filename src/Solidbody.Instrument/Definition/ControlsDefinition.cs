using System.Collections.Immutable;

namespace Solidbody.Instrument;

/// <param name="Length">Of the rectangular cavity, along its long side; where it is drawn round its shafts, of the box around it.</param>
/// <param name="Width">Across that.</param>
/// <param name="Angle">Of its long side from +x, radians, right-handed seen from the front.</param>
/// <param name="Floor">Wood left between floor and front.</param>
/// <param name="LedgeWidth">Cover ledge all round.</param>
/// <param name="LedgeDepth">From the back.</param>
/// <param name="Shafts">Control shafts and switch: from the cavity's middle along and across it, with hole diameter.</param>
public sealed record ControlsDefinition(double CentreX, double CentreY, double Length, double Width, double Angle, double CornerRadius, double Floor,
    double LedgeWidth, double LedgeDepth, ImmutableArray<ShaftDefinition> Shafts)
{
    /// <summary>Whether the cavity is a rounded hull round its shafts' rooms rather than a rectangle.</summary>
    public bool IsAroundShafts { get; init; }
    /// <summary>Null when the cover is not described: its ledge is then cut, its screws are not.</summary>
    public CoverDefinition? Cover { get; init; }
}

/// <param name="Along">From the cavity's middle along its long side.</param>
/// <param name="Across">Across it, toward the treble side.</param>
/// <param name="Diameter">Hole through the front; width of a blade switch's slot.</param>
public sealed record ShaftDefinition(string Name, double Along, double Across, double Diameter)
{
    /// <summary>Radius of the room the control takes behind the front, with what fingers and wires need.</summary>
    public double Room { get; init; } = 16;
    /// <summary>Length of a blade switch's slot through the front; 0 is a round hole.</summary>
    public double Slot { get; init; }
    /// <summary>Direction of that slot from the cavity's long side, radians.</summary>
    public double Turn { get; init; }
    /// <summary>Distance between the two screws at a slot's ends; 0 is none.</summary>
    public double ScrewsApart { get; init; }
    /// <summary>Holes for those, through the front.</summary>
    public double ScrewHole { get; init; } = 3;
}
