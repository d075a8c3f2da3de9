using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Programs;

/// <summary>One laying of a blank on the bed, with the programs that run there. What the proof and the sheet know of the plan.</summary>
public sealed record SetUp
{
    /// <summary>Short name used in file names, such as <c>body-front</c>.</summary>
    public required string Name { get; init; }
    /// <summary>The part it cuts: <c>body</c>, <c>neck</c>, <c>fretboard</c>.</summary>
    public required string Part { get; init; }
    /// <summary>Title for people, such as <c>Body, front up</c>.</summary>
    public required string Title { get; init; }
    /// <summary>Place in the packet's order, from 1.</summary>
    public required int Order { get; init; }
    /// <summary>The blank as it was before its first set-up, part frame.</summary>
    public required Box3 Blank { get; init; }
    /// <summary>How the part lies: part frame → work frame. Z = 0 of the work frame is the spoilboard.</summary>
    public required Placement Placement { get; init; }
    /// <summary>What the zero is, in words: where X0 Y0 is and what Z0 is.</summary>
    public required string Zero { get; init; }
    /// <summary>Work Z at which the cutter travels over everything.</summary>
    public required double ClearanceHeight { get; init; }
    /// <summary>Deepest a cutter may go below the spoilboard, mm ≥ 0.</summary>
    public required double BedAllowance { get; init; }
    /// <summary>The machine's reach in this work frame: the tip must stay inside.</summary>
    public required Box3 Travel { get; init; }
    /// <summary>The bed itself, work frame: for the drawing.</summary>
    public required Box2 Bed { get; init; }
    /// <summary>How it is held, in words for the sheet.</summary>
    public required string HoldDown { get; init; }
    /// <summary>What no cutter may touch, work frame.</summary>
    public ImmutableArray<KeepOut> KeepOuts { get; init; } = [];
    /// <summary>Dowel holes that carry the flip.</summary>
    public ImmutableArray<RegistrationHole> Registration { get; init; } = [];
    /// <summary>Bridges left between part and waste in this set-up.</summary>
    public ImmutableArray<Tab> Tabs { get; init; } = [];
    /// <summary>What is left under all of the outline in place of tabs; null for nothing.</summary>
    public Skin? Skin { get; init; }
    /// <summary>Programs in the order they run.</summary>
    public ImmutableArray<ProgramEntry> Programs { get; init; } = [];
    /// <summary>What a person does by hand before this set-up, in order, each a sentence.</summary>
    public ImmutableArray<string> Before { get; init; } = [];
    /// <summary>What a person does by hand after it.</summary>
    public ImmutableArray<string> After { get; init; } = [];
    /// <summary>What to measure and write down on the sheet.</summary>
    public ImmutableArray<SheetCheck> Checks { get; init; } = [];
}

/// <summary>A thin skin of wood under an outline, all round.</summary>
/// <param name="Z0">Lower end of what may stand there, part frame, mm.</param>
/// <param name="Z1">Upper end.</param>
public sealed record Skin(double Z0, double Z1);

/// <summary>An upright box that no cutter, shank or collet may enter, work frame.</summary>
/// <param name="Name">What stands there: <c>screw 1</c>.</param>
/// <param name="Box">Its room, mm.</param>
public sealed record KeepOut(string Name, Box3 Box);

/// <summary>A dowel hole through blank and into the spoilboard, on the blank's centre line, outside the part.</summary>
/// <param name="Name">Which one.</param>
/// <param name="Centre">Part frame.</param>
/// <param name="Diameter">mm.</param>
/// <param name="Depth">Deepest the tip may go below the spoilboard here, mm ≥ 0: the one place where it may pass the bed allowance.</param>
public sealed record RegistrationHole(string Name, Point2 Centre, double Diameter, double Depth = 0);

/// <summary>A bridge of wood between the part and its waste, broken by hand at the end.</summary>
/// <param name="At">On the part's outline, part frame: the tab's middle.</param>
/// <param name="Length">Along the outline, mm: the wood left standing.</param>
/// <param name="Z0">Lower face, part frame.</param>
/// <param name="Z1">Upper face, part frame.</param>
public sealed record Tab(Point2 At, double Length, double Z0, double Z1);

/// <summary>One line to measure and tick on the sheet.</summary>
/// <param name="What">What is measured, for people.</param>
/// <param name="Nominal">mm; null when it is a yes or no.</param>
/// <param name="Tolerance">± mm.</param>
public sealed record SheetCheck(string What, double? Nominal, double Tolerance);

/// <summary>One program of a set-up: its file, its cutter, its figures.</summary>
public sealed record ProgramEntry
{
    /// <summary>File name inside the packet, with forward slashes: <c>programs/03-body-front-up-spiral-6.nc</c>.</summary>
    public required string File { get; init; }
    /// <summary>Short name for the sheet's table.</summary>
    public required string Name { get; init; }
    public required Cutter Cutter { get; init; }
    /// <summary>Turns a second.</summary>
    public required double SpindleSpeed { get; init; }
    /// <summary>Greatest feed used, mm/s.</summary>
    public required double Feed { get; init; }
    /// <summary>Running time by the motion model, seconds.</summary>
    public required double Seconds { get; init; }
    /// <summary>Room the tip moves in, work frame.</summary>
    public required Box3 Bounds { get; init; }
    /// <summary>What it does, operation by operation.</summary>
    public ImmutableArray<OperationEntry> Operations { get; init; } = [];
}
