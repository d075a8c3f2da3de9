using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Clears a pocket in deep levels with narrow bites: nowhere, in no slot and no corner, does more of the rim stand in wood than a stated angle.
/// Both ways are cut, so the skin on the walls must be left for a finishing pass. Entries, which slope, are helices and not held to the angle.</summary>
internal static class EngagedClearing
{
    /// <summary>Kept back from the stated angle when planning, radians: the ripples arcs leave on the walls, the text's rounding, and what coarse columns read too much.</summary>
    private const double Margin = 9 * Math.PI / 180;

    /// <summary>How far an entry's last turn sinks, mm: it takes what the helix left and is an entry still; what it leaves itself is no bite.</summary>
    private const double LastTurn = 0.02;

    /// <summary>The rooms of a pocket and how to clear them, whatever the depth.</summary>
    /// <param name="region">The finished pocket; holes are islands.</param>
    /// <param name="inset">How far inside of it the axis stays: the cutter's radius and the skin on the walls, mm.</param>
    /// <param name="cutter">The cutter.</param>
    /// <param name="engagement">Most of the rim that may stand in wood, radians.</param>
    /// <returns>None where it cannot be done that way: a room too narrow for a helix, or a place a bounded bite does not get to.</returns>
    public static ImmutableArray<EngagedRoom> Rooms(Region region, double inset, Cutter cutter, double engagement)
    {
        var rooms = ImmutableArray.CreateBuilder<EngagedRoom>();
        foreach (var room in Offsets.Of(region, -inset))
        {
            if (EngagedRoom.Solid(room, cutter.Radius, engagement - Margin, PocketClearing.ThinnestEntryByRadius * cutter.Radius, HelicalBoring.EntryByRadius * cutter.Radius) is not { } planned) return [];
            rooms.Add(planned);
        }
        return rooms.ToImmutable();
    }

    /// <summary>What a wider cutter left in the rooms of a pocket, in corners and narrow places.</summary>
    /// <param name="region">The finished pocket.</param>
    /// <param name="skin">Left on the walls by both, mm.</param>
    /// <param name="cutter">The cutter that takes the rest.</param>
    /// <param name="wider">The one that was there.</param>
    /// <param name="engagement">Most of the rim that may stand in wood, radians.</param>
    /// <returns>None where nothing is left; null where it cannot be done that way.</returns>
    public static ImmutableArray<EngagedRoom>? Rest(Region region, double skin, Cutter cutter, Cutter wider, double engagement)
    {
        var gone = Offsets.Of(region, -wider.Radius - skin).SelectMany(axis => Offsets.Of(axis, wider.Radius)).ToList();
        var rooms = ImmutableArray.CreateBuilder<EngagedRoom>();
        foreach (var room in Offsets.Of(region, -cutter.Radius - skin))
        {
            if (EngagedRoom.Rest(room, cutter.Radius, engagement - Margin, gone) is not { } planned) return null;
            if (planned.Moves.Count > 0) rooms.Add(planned);
        }
        return rooms.ToImmutable();
    }

    /// <summary>Removes everything the cutter reaches in the rooms.</summary>
    /// <param name="s">StepDown is the depth of a level; StepOver is not used: the step follows from the angle.</param>
    /// <param name="rooms">From <see cref="Rooms"/>, for the same cutter.</param>
    /// <param name="top">Height of the wood.</param>
    /// <param name="bottom">Height to clear to.</param>
    public static ImmutableArray<Motion> Path(CutSettings s, ImmutableArray<EngagedRoom> rooms, double top, double bottom)
    {
        var path = new PathBuilder(s);
        foreach (var room in rooms)
        {
            var wood = top;
            foreach (var level in DepthLevels.Of(top, bottom, s.StepDown))
            {
                Enter(path, s, room, wood, level);
                foreach (var move in room.Moves) Follow(path, move, level);
                wood = level;
            }
        }
        return path.Build();
    }

    private static void Enter(PathBuilder path, CutSettings s, EngagedRoom room, double wood, double level)
    {
        if (room.Entry == room.EntryCentre)
        {
            path.EnterAbove(room.Entry, level);
            path.Line(room.Entry, level);
            return;
        }
        path.EnterAbove(room.Entry, wood);
        HelicalBoring.Helix(path, s, room.EntryCentre, wood, level, LastTurn);
    }

    private static void Follow(PathBuilder path, EngagedMove move, double z)
    {
        switch (move.Kind)
        {
            case EngagedMoveKind.Straight:
                path.Line(move.To, z);
                break;
            case EngagedMoveKind.Over:
                path.EnterAbove(move.To, z);
                path.Line(move.To, z);
                break;
            default:
                path.Arc(new(move.To.X, move.To.Y, z), move.Centre, move.Kind == EngagedMoveKind.ArcCounterClockwise);
                break;
        }
    }
}
