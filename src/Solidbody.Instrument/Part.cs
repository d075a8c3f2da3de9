using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument;

/// <summary>A part as designed, closed form, in its part frame: an outline between a front and a back height, less its features.
/// A column at (x, y) inside the outline is wood from the back to the front; <see cref="PartShape"/> evaluates it.</summary>
public sealed record Part
{
    /// <summary><c>body</c>, <c>neck</c> or <c>fretboard</c>.</summary>
    public required string Name { get; init; }
    /// <summary>Key into the wood table.</summary>
    public required string Wood { get; init; }
    /// <summary>Plan of the finished part.</summary>
    public required Region Outline { get; init; }
    /// <summary>Front face before pockets and holes; defined well beyond the outline.</summary>
    public required IHeight Front { get; init; }
    /// <summary>Back face before pockets and holes; defined well beyond the outline.</summary>
    public required IHeight Back { get; init; }
    /// <summary>How the front face is made.</summary>
    public required FaceFinish FrontFinish { get; init; }
    public required FaceFinish BackFinish { get; init; }
    /// <summary>Smallest box around the finished part.</summary>
    public required Box3 Bounds { get; init; }
    public ImmutableArray<Pocket> Pockets { get; init; } = [];
    public ImmutableArray<Hole> Holes { get; init; } = [];
    public ImmutableArray<Slot> Slots { get; init; } = [];
    /// <summary>Level stretches of a carved face (heel, headstock back): a flat cutter makes these, the ball-end the rest.</summary>
    public ImmutableArray<Flat> Flats { get; init; } = [];
    /// <summary>Stretches of a planed face that a ball-end carves: a sloping headstock, the contours of a body.</summary>
    public ImmutableArray<CarvedZone> CarvedZones { get; init; } = [];
    public ImmutableArray<ShapedEdge> Edges { get; init; } = [];
    /// <summary>Ledges round the outline, for a binding.</summary>
    public ImmutableArray<Ledge> Ledges { get; init; } = [];
    /// <summary>Wire ways and side bores made by hand: no program cuts them.</summary>
    public ImmutableArray<HandBore> HandBores { get; init; } = [];
    /// <summary>What is measured on the cut result.</summary>
    public ImmutableArray<Measure> Measures { get; init; } = [];
    /// <summary>Stretches of the outline where a tab is welcome (long grain, straight), part frame; the planner puts tabs there first.</summary>
    public ImmutableArray<Point2> TabPlaces { get; init; } = [];
}

/// <summary>How a face comes about.</summary>
public enum FaceFinish
{
    /// <summary>It is the planed blank's own face; no cutter touches it.</summary>
    AsPlaned,
    /// <summary>A ball-end carves it with passes across the part; a scallop stays.</summary>
    CarvedAcross,
    /// <summary>A ball-end surfaces it with passes along the part.</summary>
    SurfacedAlong,
}

/// <summary>A room with upright walls, opened from one side.</summary>
/// <param name="Name">Such as <c>neck pocket</c>.</param>
/// <param name="From">The face it opens to.</param>
/// <param name="Region">Plan; it may reach beyond the outline where the room is open at the side.</param>
/// <param name="Floor">Height of the floor, part frame: level, or following a face (fret slots).</param>
/// <param name="Fit">Whether its walls get the finishing passes of a fit (neck pocket).</param>
/// <param name="Through">Whether it has no floor: it goes through the part.</param>
public sealed record Pocket(string Name, Side From, Region Region, IHeight Floor, bool Fit = false, bool Through = false)
{
    /// <summary>The room it opens into or belongs to on purpose; no wall is looked for between them.</summary>
    public string? Into { get; init; }
    /// <summary>Whether it runs out of the outline.</summary>
    public bool IsOpenAtSide { get; init; }
}

/// <summary>A round hole square to the faces.</summary>
/// <param name="Name">Such as <c>tuner hole 3</c>.</param>
/// <param name="From">The face it is opened from.</param>
/// <param name="Centre">Plan.</param>
/// <param name="Diameter">mm.</param>
/// <param name="Mouth">Height where it starts, part frame (the face or the floor it is opened from).</param>
/// <param name="Reach">Full diameter at least to here, part frame; beyond the far face when <paramref name="Through"/>.</param>
/// <param name="Tip">No wood is removed beyond this height, part frame: room for a drill's cone. Equal to Reach where the floor must be flat.</param>
/// <param name="Through">Whether it ends beyond the far face of the finished part.</param>
public sealed record Hole(string Name, Side From, Point2 Centre, double Diameter, double Mouth, double Reach, double Tip, bool Through = false)
{
    /// <summary>The room it opens into on purpose.</summary>
    public string? Into { get; init; }
}

/// <summary>A level stretch of a face that is otherwise carved.</summary>
/// <param name="Name">Such as <c>heel back</c>.</param>
/// <param name="From">The face it belongs to.</param>
/// <param name="Region">Plan; may reach beyond the outline.</param>
/// <param name="Z">Its height, part frame.</param>
public sealed record Flat(string Name, Side From, Region Region, double Z);

/// <summary>A stretch of a planed face that is carved: there the face follows <see cref="Part.Front"/> or <see cref="Part.Back"/>, elsewhere that height is the planed face's own.</summary>
/// <param name="Name">Such as <c>headstock face</c>.</param>
/// <param name="From">The face it belongs to; <see cref="FaceFinish.AsPlaned"/>.</param>
/// <param name="Region">Plan; may reach beyond the outline. Zones of a side lie apart. On its edge inside the outline the face runs out into the planed one: level with it, without a step or a hollow.</param>
public sealed record CarvedZone(string Name, Side From, Region Region);

/// <summary>A thin straight slot whose floor follows the front face at a stated depth: a fret slot.</summary>
/// <param name="Name">Such as <c>fret 7</c>.</param>
/// <param name="A">One end of the slot's middle line, plan: the slot's own end is round about it, as its cutter.</param>
/// <param name="B">Other end.</param>
/// <param name="Width">mm.</param>
/// <param name="Depth">Below the front face, measured along Z, mm.</param>
/// <param name="Scribed">Whether it is a line to saw by: the cutter's tip decides the groove's form, which keeps inside width and depth.</param>
public sealed record Slot(string Name, Point2 A, Point2 B, double Width, double Depth, bool Scribed = false);

/// <summary>A rounded or chamfered edge along part of the outline: near the path its form is taken off the face, planed or carved.</summary>
/// <param name="Name">Such as <c>front edge</c>.</param>
/// <param name="From">The face whose edge is shaped.</param>
/// <param name="Path">The edge, counter-clockwise seen from the front (wood on the left), plan. Open paths run out along their end tangents, already part of the path.</param>
/// <param name="Closed">Whether the last point joins the first.</param>
/// <param name="Form">What comes off the face, by the distance from the path.</param>
public sealed record ShapedEdge(string Name, Side From, ImmutableArray<Point2> Path, bool Closed, EdgeForm Form);

/// <summary>A ledge all round the outline: outside <paramref name="Inside"/> the part is cut down to a level floor.</summary>
/// <param name="Name">Such as <c>front binding ledge</c>.</param>
/// <param name="From">The face it is cut from.</param>
/// <param name="Inside">What keeps its full height, plan: the outline moved inward. Its edge is the ledge's upright wall.</param>
/// <param name="Floor">Height of the floor, part frame.</param>
public sealed record Ledge(string Name, Side From, Region Inside, double Floor);

/// <summary>A round bore made by hand: a wire way before the glue-up, or the jack's side bore. Part frame.</summary>
public sealed record HandBore(string Name, PartPoint A, PartPoint B, double Diameter, string How)
{
    /// <summary>The rooms it opens into on purpose.</summary>
    public ImmutableArray<string> Into { get; init; } = [];
    /// <summary>Whether wires run in it: it may cross rooms and other ways.</summary>
    public bool ForWires { get; init; }
    /// <summary>Whether it starts at the outline.</summary>
    public bool FromEdge { get; init; }
    /// <summary>The face it starts from; null when it starts in a room or at the edge.</summary>
    public Side? FromFace { get; init; }
    /// <summary>The glue-up it is made before, while the blank is still in pieces; null when it is made in the finished part.</summary>
    public GlueUp? Before { get; init; }
}

/// <summary>What is glued together before a blank is cut.</summary>
public enum GlueUp
{
    /// <summary>The halves, side by side.</summary>
    Halves,
    /// <summary>A top on the body.</summary>
    Top,
}
