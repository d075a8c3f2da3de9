using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Materials;

namespace Solidbody.Shop;

/// <summary>Everything the shop file says. Lengths mm, speeds mm/s, accelerations mm/s², turns a second, watts.</summary>
public sealed record ShopDefinition
{
    public required string Name { get; init; }
    public required Machine Machine { get; init; }
    /// <summary>The rack, in the file's order; names unique.</summary>
    public required ImmutableArray<Cutter> Cutters { get; init; }
    public required ImmutableArray<WoodOnHand> Woods { get; init; }
    public required HoldDowns HoldDowns { get; init; }
    public OutlineHabits Outline { get; init; } = new();
    /// <summary>Settings the person holds cutters to.</summary>
    public ImmutableArray<PinnedFeeds> Pinned { get; init; } = [];

    /// <summary>What the person holds a cutter to in a wood; the most particular that says it rules, whole entries or single values.</summary>
    /// <param name="pass">A pass; null asks only for what holds for all passes.</param>
    public double? PinnedFor(Cutter cutter, string wood, Pass? pass, Func<PinnedFeeds, double?> value) => Pinned
        .Where(p => p.Cutter == cutter.Name && (p.Wood is null || p.Wood == wood) && (p.Pass is null || p.Pass == pass))
        .OrderByDescending(p => p.Particular).Select(value).FirstOrDefault(v => v is not null);
}

public sealed record Machine
{
    /// <summary>Travel of the cutter's tip: X, Y, Z.</summary>
    public required double TravelX { get; init; }
    public required double TravelY { get; init; }
    public required double TravelZ { get; init; }
    /// <summary>The bed a blank can lie on; at least the travel.</summary>
    public required double BedX { get; init; }
    public required double BedY { get; init; }
    /// <summary>How deep a cutter may go into the spoilboard.</summary>
    public required double SpoilboardAllowance { get; init; }
    public required double SpindleSpeedLeast { get; init; }
    public required double SpindleSpeedMost { get; init; }
    public required double SpindlePower { get; init; }
    /// <summary>In the plan the slower of the X and Y axes rules: a blank may lie at any angle.</summary>
    public required double FeedMostXY { get; init; }
    public required double FeedMostZ { get; init; }
    /// <summary>The slower of X and Y.</summary>
    public required double RapidXY { get; init; }
    public required double RapidZ { get; init; }
    /// <summary>The lesser of X and Y.</summary>
    public required double AccelerationXY { get; init; }
    public required double AccelerationZ { get; init; }
    /// <summary>Whether its controller takes G2 and G3.</summary>
    public required bool Arcs { get; init; }
    public required bool ToolChanger { get; init; }
    /// <summary>Decimals of coordinates in millimetres (inch programs get one more).</summary>
    public required int Decimals { get; init; }
    /// <summary>Whether programs are written in inches (G20).</summary>
    public required bool Inches { get; init; }
    public required bool LineNumbers { get; init; }
    public required bool Comments { get; init; }
    /// <summary>Whether its controller takes drilling cycles (G81, G83).</summary>
    public bool DrillingCycles { get; init; }
    /// <summary>With a changer: whether programs take the cutter's length from the controller's table (G43).</summary>
    public bool LengthOffsets { get; init; }
    /// <summary>The M word that turns its chip air on, 7 or 8; null for none.</summary>
    public int? AirWord { get; init; }
    /// <summary>Whether blanks between words and zeros before a point are left out.</summary>
    public bool Terse { get; init; }
    /// <summary>What a program waits for its spindle, seconds.</summary>
    public int SpindleWait { get; init; } = 3;
    /// <summary>Longest program its controller holds, bytes; null for any.</summary>
    public int? LongestProgram { get; init; }
    /// <summary>Push sideways at the cutter that the axes take without giving way, N.</summary>
    public required double SideForce { get; init; }
    /// <summary>Collet nut: for clearance and drawings.</summary>
    public required double ColletDiameter { get; init; }
}

/// <summary>A wood the shop has, by its key in the wood table, with the figures the shop works by.</summary>
/// <param name="Wood">Key.</param>
/// <param name="ChipLoad">Factor on the usual chip load for a cutter's diameter: 1 is the middle of the usual range.</param>
/// <param name="CuttingForce">Range of its specific cutting force; null takes the wood class's.</param>
public sealed record WoodOnHand(string Wood, double ChipLoad, CuttingForceRange? CuttingForce = null)
{
    /// <summary>The range to work with.</summary>
    public CuttingForceRange Force => CuttingForce ?? CuttingForces.Default(Woods.Find(Wood)?.Hardness ?? WoodHardness.Hard);
}

/// <param name="ScrewHead">Diameter of a hold-down screw's head or washer; its height above the blank.</param>
/// <param name="DowelDiameter">Registration dowels.</param>
/// <param name="DowelDepth">Into the spoilboard.</param>
/// <param name="DowelPlay">Hole less dowel, in diameter.</param>
public sealed record HoldDowns(double ScrewHead, double ScrewHeadHeight, double ScrewMargin, bool Tape, double DowelDiameter, double DowelDepth, double DowelPlay = 0.05);
