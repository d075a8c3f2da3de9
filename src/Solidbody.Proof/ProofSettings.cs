using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Shop;

namespace Solidbody.Proof;

/// <summary>How finely a proof looks, and what it lets pass. Lengths mm.</summary>
public sealed record ProofSettings
{
    /// <summary>Side of a column; null chooses it by the part (<see cref="CellOf"/>).</summary>
    public double? Cell { get; init; }

    /// <summary>Ridge a ball-end may leave on a carved or surfaced face, by the plan's own stepover: what sanding takes off (common practice, no source).</summary>
    public double Scallop { get; init; } = 0.02;

    /// <summary>Diameter of the collet's nut; 0 leaves the collet out.</summary>
    public double ColletDiameter { get; init; }

    /// <summary>Slowest the spindle turns, turns a second.</summary>
    public double SpindleSpeedLeast { get; init; }
    /// <summary>Fastest, turns a second.</summary>
    public double SpindleSpeedMost { get; init; } = double.PositiveInfinity;
    /// <summary>Fastest feed in the plan, mm/s.</summary>
    public double FeedMostXY { get; init; } = double.PositiveInfinity;
    /// <summary>Fastest feed along Z, mm/s.</summary>
    public double FeedMostZ { get; init; } = double.PositiveInfinity;

    /// <summary>The shop's cutters in their order; empty leaves out whether a program's cutter is one of them.</summary>
    public ImmutableArray<Cutter> Rack { get; init; } = [];
    /// <summary>Whether programs fetch their cutter by its place in the rack, from 1.</summary>
    public bool ToolChanger { get; init; }

    /// <summary>Threads to use.</summary>
    public int Threads { get; init; } = Environment.ProcessorCount;

    /// <summary>The settings a shop's machine asks for.</summary>
    public static ProofSettings For(Machine machine)
    {
        ArgumentNullException.ThrowIfNull(machine);
        return new()
        {
            ColletDiameter = machine.ColletDiameter,
            ToolChanger = machine.ToolChanger,
            FeedMostXY = machine.FeedMostXY,
            FeedMostZ = machine.FeedMostZ,
            SpindleSpeedLeast = machine.SpindleSpeedLeast,
            SpindleSpeedMost = machine.SpindleSpeedMost,
        };
    }

    /// <summary>The settings a shop asks for: its machine's, and its rack.</summary>
    public static ProofSettings For(ShopDefinition shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return For(shop.Machine) with { Rack = shop.Cutters };
    }

    /// <summary>Column side for a blank: fine enough that between two columns a 3 mm ball's surface bends by less than the gouge limit's tenth,
    /// (c/2)²/2R = 0.005 mm at c = 0.25, and finer on narrow parts, whose slots are narrow.</summary>
    public double CellOf(Box3 blank) => Cell ?? Math.Min(blank.Width, blank.Length) switch
    {
        > 200 => 0.25,
        > 80 => 0.15,
        _ => 0.1,
    };
}
