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

    /// <summary>More wood than this to the edge is of no use, mm.</summary>
    private const double Ample = 6;

    /// <summary>Wood between the bore's wall and the outline, in the plan; negative when it leaves the body. Steps as long as the way still free.</summary>
    public static double ToEdge(Region outline, Point2 a, Point2 b, double diameter)
    {
        var (length, along, within, least) = (a.DistanceTo(b), (b - a).Unit, Ample + diameter / 2, Ample + diameter / 2);
        for (var gone = 0.0; ;)
        {
            var inside = -outline.SignedDistance(a + gone * along, 4 * within);
            least = Math.Min(least, inside);
            if (gone >= length || inside < 0) return least - diameter / 2;
            gone = Math.Min(length, gone + Math.Max(inside - within, 1));
        }
    }

    /// <summary>Wood between a hole's wall and the bore's, in the plan; negative when they meet.</summary>
    public static double Wall(Hole hole, Point2 a, Point2 b, double diameter) => Segments.Distance(hole.Centre, a, b) - hole.Diameter / 2 - diameter / 2;
}
