using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>Where a wire way runs in the plan: the straight line from room to room that keeps clear of screws and strings.</summary>
internal static class WireLine
{
    /// <summary>A bore goes on this far inside a room, mm: common practice, no source.</summary>
    public const double IntoRoom = 4;
    /// <summary>More wood than this beside a hole is of no use, mm: three times what the check asks, for a long drill wanders. Common practice, no source.</summary>
    private const double Ample = 6;

    /// <summary>Ends of the clearest line, from room to room. Lines with ample wood count as equal; among equals the one nearest the rooms' middles.</summary>
    /// <param name="obstacles">Holes at the bore's height.</param>
    /// <param name="outline">Of the body: a line that comes near it is as bad as one that comes near a hole.</param>
    public static (Point2 A, Point2 B) Between(WireRoom from, WireRoom to, double diameter, ImmutableArray<Hole> obstacles, Region outline)
    {
        (Point2 A, Point2 B, double Wood, double Aside) best = (from.Middle, to.Middle, double.NegativeInfinity, 0);
        foreach (var a in from.Aims)
            foreach (var b in to.Aims)
            {
                var wood = Ample;
                foreach (var hole in obstacles)
                {
                    wood = Math.Min(wood, WireClearance.Wall(hole, a, b, diameter));
                    if (wood < best.Wood) break;
                }
                var aside = a.DistanceTo(from.Middle) + b.DistanceTo(to.Middle);
                bool IsBetter() => wood > best.Wood || wood == best.Wood && aside < best.Aside;
                if (!IsBetter()) continue;
                // A narrow waist may let the straight line out of the body; asked last, of those that would be taken.
                wood = Math.Min(wood, WireClearance.ToEdge(outline, a, b, diameter));
                if (IsBetter()) best = (a, b, wood, aside);
            }
        return (End(from, best.A, best.B), End(to, best.B, best.A));
    }

    /// <summary>A room's end of a way along a joint of the body's pieces, at y; null where the room does not reach it.</summary>
    public static Point2? OnJoint(WireRoom room, Point2 toward, double y)
    {
        if (room.Region is not { } region) return null;
        var middle = new Point2(room.Middle.X, y);
        return region.Contains(middle) ? End(room, middle, new(toward.X, y)) : null;
    }

    /// <summary>The way's end: a little inside the room's wall, on the line to the other room's aim.</summary>
    private static Point2 End(WireRoom room, Point2 aim, Point2 toward)
    {
        var reach = toward.DistanceTo(aim);
        if (room.Region is not { } region || reach == 0) return aim;
        var along = 1 / reach * (toward - aim);
        var (inside, outside) = (0.0, reach);
        for (var i = 0; i < 50; i++)
        {
            var half = (inside + outside) / 2;
            if (region.Contains(aim + half * along)) inside = half; else outside = half;
        }
        return aim + Math.Max(0, inside - IntoRoom) * along;
    }
}
