using System.Collections.Immutable;

namespace Solidbody.Instrument;

/// <summary>What holds the strings' balls.</summary>
public enum StringHold { ThroughBody, Bridge, Tailpiece }

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
    /// <summary>What the bridge stands on, above the body's front: posts, a plate; 0 is the front itself.</summary>
    public double BaseHeight { get; init; }
    /// <summary>String's underside on the lowest saddle, above what the bridge stands on; and how much higher the highest saddle carries it.</summary>
    public double SaddleLowest { get; init; } = 9;
    public double SaddleRise { get; init; } = 6;
    /// <summary>How far a saddle travels, from the scale line toward the tail.</summary>
    public double SaddleTravelFrom { get; init; } = -3;
    public double SaddleTravelTo { get; init; } = 9;
    public StringHold Hold { get; init; } = StringHold.ThroughBody;
    /// <summary>Where the string bends down behind its saddle: behind the scale line, and above the body's front.</summary>
    public double HeldAt { get; init; } = 16;
    public double HeldHeight { get; init; } = 2.5;
    /// <summary>On a fan: whether plate and screws turn with the scale line, or stand square and the saddles alone follow it.</summary>
    public bool FollowsFan { get; init; } = true;
    /// <summary>Spreads its saddles can be set to, first to last; null where it is not known or fixed.</summary>
    public double? LeastSpread { get; init; }
    public double? MostSpread { get; init; }
}
