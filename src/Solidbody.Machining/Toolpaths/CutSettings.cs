using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>What every toolpath needs to know of its cutter and its room. Toolpaths think in the laid frame: the set-up's work frame
/// before the turn and the shift in the plan, so +X runs along the part, Z = 0 is the spoilboard and +Z is up.</summary>
public sealed record CutSettings
{
    /// <summary>Steepest ramp into wood, radians: 10° for a cutter whose end cuts to its middle, 5° for others, whose middle only rubs. Common practice, no source.</summary>
    internal static double RampOf(Cutter cutter) => (cutter.Plunges ? 10 : 5) * Math.PI / 180;

    public required Cutter Cutter { get; init; }
    /// <summary>mm/s.</summary>
    public required double Feed { get; init; }
    /// <summary>mm/s, straight down or the steep part of a ramp.</summary>
    public required double PlungeFeed { get; init; }
    /// <summary>Deepest bite in one pass, mm.</summary>
    public required double StepDown { get; init; }
    /// <summary>Distance between neighbouring passes, mm.</summary>
    public required double StepOver { get; init; }
    /// <summary>Z at which rapids travel, mm; every path starts and ends there.</summary>
    public required double Clearance { get; init; }
    /// <summary>How far above wood a rapid descent must end, mm.</summary>
    public double Approach { get; init; } = 1.0;
    /// <summary>Steepest ramp into wood, radians.</summary>
    public double RampAngle { get => field > 0 ? field : RampOf(Cutter); init; }
    /// <summary>Whether arcs may be used; chords within <see cref="Tolerances.Flattening"/> otherwise.</summary>
    public bool Arcs { get; init; } = true;
}
