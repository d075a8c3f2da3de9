using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Planning;

/// <summary>One thing done with one cutter.</summary>
/// <param name="Name">For people: <c>neck pocket, walls</c>.</param>
/// <param name="Stage">Its place in a safe order.</param>
/// <param name="Cutter">From the rack.</param>
/// <param name="Feeds">How it is driven; the step-down is this operation's own.</param>
/// <param name="Work">What is cut, laid frame.</param>
public sealed record Operation(string Name, Stage Stage, Cutter Cutter, CutFeeds Feeds, Work Work)
{
    /// <summary>What the cutter bears in this wood; null for a drill.</summary>
    public DrivenCutter? Driven { get; init; }
}

/// <summary>The stages of a set-up, in the order that keeps later ones safe: what everything trusts comes first, what frees the part comes last.</summary>
public enum Stage { Registration, Rough, Flats, Surface, Rooms, Edges, Slots, Outline }

/// <summary>What is cut, laid frame, mm.</summary>
public abstract record Work
{
    private Work() { }

    /// <summary>Round holes made by a drill of their diameter; <paramref name="Peck"/> is how deep it goes before it lifts its chips.</summary>
    public sealed record Drill(ImmutableArray<RoundHole> Holes, double Peck) : Work;
    /// <summary>Round holes made by a thinner cutter on a helix.</summary>
    public sealed record Bore(ImmutableArray<RoundHole> Holes) : Work;
    /// <summary>A room cleared in steps.</summary>
    public sealed record Clear(Region Region, double Top, double Floor, double WallLeave, double FloorLeave) : Work
    {
        /// <summary>Most of the cutter's rim that stands in wood on the level, radians: π where rings begin with a slot.</summary>
        public double Engagement { get; init; } = Math.PI;
        /// <summary>How its rooms are cleared with narrow bites; unset for rings.</summary>
        internal ImmutableArray<EngagedRoom> Rooms { get; init; }
        internal bool IsNarrow => !Rooms.IsDefault;
    }
    /// <summary>A room's walls finished.</summary>
    public sealed record Walls(Region Region, double Top, double Floor, int SpringPasses) : Work;
    /// <summary>A room over a sloping floor cleared in steps parallel to it; <paramref name="Wood"/> stands that high above the floor where that is lowest.</summary>
    public sealed record ClearSlope(Region Region, SlopedHeight Floor, double Wood, double WallLeave, double FloorLeave) : Work;
    /// <summary>A sloping floor finished up and down the slope, ridges at most <paramref name="Ridge"/>.</summary>
    public sealed record SlopeFloor(Region Region, SlopedHeight Floor, double Wood, double Ridge, double WallLeave) : Work;
    /// <summary>The walls over a sloping floor finished.</summary>
    public sealed record SlopeWalls(Region Region, SlopedHeight Floor, double Wood, double FloorLeave, int SpringPasses) : Work;
    /// <summary>A straight slot as wide as the cutter.</summary>
    public sealed record Channel(Point2 A, Point2 B, double Top, double Floor) : Work;
    /// <summary>Round the outline, roughed.</summary>
    public sealed record Outline(Loop Loop, double Top, double Bottom, double Leave, ImmutableArray<Bridge> Bridges) : Work;
    /// <summary>Round the outline once more, at full depth, after roughing.</summary>
    public sealed record FinishOutline(Loop Loop, double Top, double Bottom, ImmutableArray<Bridge> Bridges, OutlineWay Way) : Work;
    /// <summary>A curved face brought near in levels.</summary>
    public sealed record RoughFace(IHeight Face, Region Zone, double Top, double Leave, double Lowest) : Work;
    /// <summary>A curved face finished by a ball-end: passes across the part or along it.</summary>
    public sealed record FinishFace(IHeight Face, Region Zone, bool Along, double Scallop, double Lowest, Region? Skip) : Work;
    /// <summary>A level face. Nothing stands above <paramref name="Highest"/>; roughing left wood up to <paramref name="Top"/>, a little more at its rim.</summary>
    public sealed record LevelFace(Region Zone, double Top, double Floor, double Highest) : Work;
    /// <summary>Thin slots under a curved face, which lies no higher than <paramref name="Top"/>.</summary>
    public sealed record ThinSlots(ImmutableArray<ThinSlot> Slots, IHeight Face, double Top) : Work;
    /// <summary>The edge of a level face, by a cutter of its form.</summary>
    public sealed record FormEdge(ImmutableArray<Point2> Path, bool Closed, EdgeForm Form, double Face) : Work;
    /// <summary>The edge of any face, or stretches of it, by a ball-end in passes.</summary>
    public sealed record FollowEdge(ImmutableArray<EdgeStretch> Stretches, EdgeForm Form, IHeight Face, double Top, double Scallop) : Work;
}

/// <summary>A round hole in the laid frame.</summary>
/// <param name="Centre">Plan.</param>
/// <param name="Diameter">mm.</param>
/// <param name="Mouth">Z where wood begins.</param>
/// <param name="Bottom">Z of a bored floor, or of a drill's tip.</param>
public sealed record RoundHole(Point2 Centre, double Diameter, double Mouth, double Bottom);

/// <summary>A bridge left standing: its middle on the outline, its length along it, its upper face, and what it stands on: the bed, or the air over a carved zone.</summary>
public sealed record Bridge(Point2 At, double Length, double Top, double Foot = 0);

/// <summary>A thin slot's middle line, its depth below the face, and how high wood may stand over the face at its ends, where it runs out past the edge.</summary>
public sealed record ThinSlot(Point2 A, Point2 B, double Depth, double Over);
