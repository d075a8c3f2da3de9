using System.Collections.Immutable;

namespace Solidbody.Instrument;

public sealed record BridgeDefinition
{
    public required double StringSpread { get; init; }
    /// <summary>Screw pilots: positions from the scale line (x) and centre line (y), right-handed.</summary>
    public required ImmutableArray<(double X, double Y)> Screws { get; init; }
    public required double ScrewPilot { get; init; }
    public required double ScrewDepth { get; init; }
    /// <summary>String-through holes: distance behind the scale line; null when strings do not pass the body.</summary>
    public double? StringThroughAt { get; init; }
    public required double StringHole { get; init; }
    public required double Ferrule { get; init; }
    public required double FerruleDepth { get; init; }
    /// <summary>Plate from the scale line: front edge, rear edge, half width. For checks and drawings.</summary>
    public required double PlateFrom { get; init; }
    public required double PlateTo { get; init; }
    public required double PlateHalfWidth { get; init; }
}
