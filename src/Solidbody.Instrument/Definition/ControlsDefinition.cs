using System.Collections.Immutable;

namespace Solidbody.Instrument;

/// <param name="Angle">Of its long side from +x, radians, right-handed seen from the front.</param>
/// <param name="Floor">Wood left between floor and front.</param>
/// <param name="LedgeWidth">Cover ledge all round.</param>
/// <param name="LedgeDepth">From the back.</param>
/// <param name="Shafts">Control shafts and switch: from the cavity's middle along and across it, with hole diameter.</param>
public sealed record ControlsDefinition(double CentreX, double CentreY, double Length, double Width, double Angle, double CornerRadius, double Floor,
    double LedgeWidth, double LedgeDepth, ImmutableArray<ShaftDefinition> Shafts);

public sealed record ShaftDefinition(string Name, double Along, double Across, double Diameter);

/// <summary>Side bore for the jack: from the outline inward to the control cavity.</summary>
/// <param name="X">Where the bore meets the outline, from the nut; treble side.</param>
/// <param name="Angle">Direction inward in the plan, radians from +x.</param>
public sealed record JackDefinition(double X, double Angle, double Diameter);
