using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Checks;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>Wood between a wire way and the holes it passes.</summary>
internal static class WireClearance
{
    /// <summary>The holes that share a height with a bore between two heights, and do not end in the control cavity as a shaft's does.</summary>
    public static ImmutableArray<Hole> Obstacles(ImmutableArray<Hole> holes, ImmutableArray<Pocket> pockets, double low, double high) =>
    [
        .. holes.Where(h => h.From == Side.Front ? h.Tip < high + Limits.HoleToRoom : h.Tip > low - Limits.HoleToRoom)
            .Where(h => !pockets.Any(p => p.Name == RoomNames.Controls && p.Region.Contains(h.Centre))),
    ];

    /// <summary>Wood between a hole's wall and the bore's, in the plan; negative when they meet.</summary>
    public static double Wall(Hole hole, Point2 a, Point2 b, double diameter) => Segments.Distance(hole.Centre, a, b) - hole.Diameter / 2 - diameter / 2;
}
