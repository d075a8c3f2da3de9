using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Geometry.Arcs;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Finishing the walls of a cleared pocket. Climb: with a spindle that turns clockwise the wood is on the cutter's right,
/// so walls are followed counter-clockwise and islands clockwise.</summary>
public static class PocketWalls
{
    /// <summary>Lead arcs' radius by cutter radius, tried in turn until one stays inside the pocket; common practice, no source.</summary>
    private static readonly double[] LeadsByRadius = [0.5, 0.25, 0.1];

    /// <summary>Follows every wall at exactly the cutter's radius, in depth steps, with tangential lead arcs inside the pocket.</summary>
    /// <param name="s">StepDown may be the whole depth where the flutes allow it.</param>
    /// <param name="region">Finished pocket; cleared to the floor but for a skin on its walls.</param>
    /// <param name="top">Height of the wood around.</param>
    /// <param name="floor">Height of the floor.</param>
    /// <param name="springPasses">Passes repeated at the floor without a new cut; 0 or more.</param>
    /// <returns>Motions; none when the cutter does not fit.</returns>
    public static ImmutableArray<Motion> Path(CutSettings s, Region region, double top, double floor, int springPasses)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(region);
        var path = new PathBuilder(s);
        var passes = DepthLevels.Of(top, floor, s.StepDown).Concat(Enumerable.Repeat(floor, springPasses)).ToArray();
        foreach (var room in ArcOffsets.Of(ArcFit.Of(region), -s.Cutter.Radius))
            foreach (var wall in room.Loops.Select(l => new PathLine(l)))
                Wall(path, s, room, wall, top, passes);
        return path.Build();
    }

    private static void Wall(PathBuilder path, CutSettings s, ArcRegion room, PathLine wall, double top, double[] passes)
    {
        var start = wall.MiddleOfLongestChord();
        var (on, along) = (wall.At(start), wall.Direction(start));
        var lead = s.Cutter.Radius * LeadsByRadius.FirstOrDefault(k => LeadFits(room, on, along, k * s.Cutter.Radius));
        // Arriving along the wall with the room on the left, the arc's centre lies to the left and the turn is counter-clockwise.
        var centre = on + lead * along.Left;
        var (from, to) = (centre - lead * along, centre + lead * along);
        path.EnterAbove(from, top);
        foreach (var z in passes)
        {
            path.Line(from, path.At.Z);
            path.Line(from, z);
            if (lead > 0) path.Arc(new(on.X, on.Y, z), centre, true);
            path.Follow(wall, start, start + wall.Length, z);
            if (lead > 0) path.Arc(new(to.X, to.Y, z), centre, true);
        }
    }

    private static bool LeadFits(ArcRegion room, Point2 on, Point2 along, double lead)
    {
        var centre = on + lead * along.Left;
        return Enumerable.Range(0, 13).All(i => room.SignedDistance(centre + lead * (-along).Turned(i * Math.PI / 12), 1) <= Tolerances.Flattening)
            && Enumerable.Range(0, 9).All(i => room.SignedDistance(centre + lead * (i / 4.0 - 1) * along, 1) <= Tolerances.Flattening);
    }
}
