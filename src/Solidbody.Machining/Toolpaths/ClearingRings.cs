using Solidbody.Geometry;
using Solidbody.Geometry.Arcs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Where the cutter's centre may go in one room of a pocket, and the rings that clear it, innermost first.</summary>
/// <param name="Room">Region of the centre: the pocket less radius and leave.</param>
/// <param name="Rings">Rings in cutting order, natural turning sense (walls counter-clockwise, islands clockwise: climb).</param>
internal sealed record ClearingRings(ArcRegion Room, IReadOnlyList<ClearingRings.Ring> Rings)
{
    /// <param name="Line">The ring.</param>
    /// <param name="Inside">Region of the centre that it bounds.</param>
    internal sealed record Ring(PathLine Line, ArcRegion Inside);

    /// <summary>The separate rooms of a region, largest first; none where the cutter does not fit.</summary>
    /// <param name="region">The pocket.</param>
    /// <param name="first">Depth of the outermost ring below the wall, mm.</param>
    /// <param name="step">Distance between rings, mm; under the cutter's radius, so that a vanished ring leaves nothing uncut.</param>
    public static IEnumerable<ClearingRings> Of(Region region, double first, double step) =>
        NestedOffset.Of(ArcFit.Of(region), first, step).Select(room => new ClearingRings(room.Region, [.. InnermostFirst(room)]));

    private static IEnumerable<Ring> InnermostFirst(NestedOffset level) =>
        level.Inner.SelectMany(InnermostFirst).Concat(level.Region.Loops.Select(l => new Ring(new(l), level.Region)));

    /// <summary>Whether the centre may go straight from a to b within the room.</summary>
    public bool MayGo(Point2 a, Point2 b) => StraightWay.StaysInside(Room, a, b);
}
