using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Materials;

namespace Solidbody.Instrument;

public sealed record BodyDefinition
{
    public required string Wood { get; init; }
    /// <summary>How its boards are sawn.</summary>
    public Grain Grain { get; init; } = Grain.Flat;
    public required double Thickness { get; init; }
    /// <summary>A cap of another wood; null without one.</summary>
    public TopDefinition? Top { get; init; }
    /// <summary>Pieces side by side: 1, or 2 joined on the centre line.</summary>
    public required int Pieces { get; init; }
    public required OutlineDefinition Outline { get; init; }
    /// <summary>Takes the place of <see cref="Outline"/>, which then means nothing; null without a drawing.</summary>
    public DrawnOutline? Drawn { get; init; }
    public required NeckPocketDefinition Pocket { get; init; }
    public ImmutableArray<PickupDefinition> Pickups { get; init; } = [];
    public required BridgeDefinition Bridge { get; init; }
    public ControlsDefinition? Controls { get; init; }
    /// <summary>Null when the bridge stands firm.</summary>
    public TremoloDefinition? Tremolo { get; init; }
    public JackDefinition? Jack { get; init; }
    public ImmutableArray<WireWayDefinition> WireWays { get; init; } = [];
    public LongDrillDefinition LongDrill { get; init; } = new(300, 40);
    public ImmutableArray<StrapButtonDefinition> StrapButtons { get; init; } = [];
    public ArmContourDefinition? ArmContour { get; init; }
    public BellyContourDefinition? BellyContour { get; init; }
    /// <summary>Null where neither edge is bound.</summary>
    public BindingDefinition? Binding { get; init; }
    /// <summary>How the edges are shaped; null is a sharp edge.</summary>
    public required EdgeForm? FrontEdge { get; init; }
    public required EdgeForm? BackEdge { get; init; }
}

/// <summary>What lifts the heel's end so that the neck leans back: a wedge on a level floor, or a floor that rises toward the bridge.</summary>
public enum AngleMaking { Wedge, Floor }

/// <summary>How the neck sits in the body. A through-neck has no pocket: length, depth and angle then only say how it lies to the body's front.</summary>
/// <param name="Length">Along x, from the body's shoulder line to the heel's end: the heel's own length.</param>
/// <param name="Depth">From the body's front; of a sloping floor at the heel's end.</param>
/// <param name="Clearance">A side, between heel and wall; the end wall too.</param>
/// <param name="CornerRadius">Inside corners.</param>
/// <param name="Angle">The neck's plane to the body's front, radians; positive leans the head back.</param>
/// <param name="Shim">Even shim under the heel.</param>
/// <param name="AngleBy">What makes the angle.</param>
public sealed record NeckPocketDefinition(double Length, double Depth, double Clearance, double CornerRadius, double Angle = 0, double Shim = 0, AngleMaking AngleBy = AngleMaking.Wedge);
