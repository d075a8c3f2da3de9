using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>A pickup's cavity, the deeper ends for its legs, and the pilots of its screws.</summary>
internal static class PickupRooms
{
    /// <summary>A leg's room reaches so far into the cavity, mm: the cutter runs out there instead of leaving a fin.</summary>
    private const double IntoCavity = 6;

    public static IEnumerable<Pocket> Of(PickupDefinition p)
    {
        yield return new(p.Name, Side.Front, Cavity(p), new LevelHeight(-p.Depth));
        if (p.Legs is not { } legs || !(legs.Across > p.AlongY)) yield break;
        foreach (var (side, i) in ((int, int)[])[(-1, 1), (1, 2)])
            yield return new($"{p.Name} leg {i}", Side.Front, Leg(p, legs, side), new LevelHeight(-legs.Depth)) { Into = p.Name };
    }

    public static IEnumerable<Hole> Holes(PickupDefinition p)
    {
        if (p.Screws is not { } screws) yield break;
        foreach (var (side, i) in ((int, int)[])[(-1, 1), (1, 2)])
        {
            var (at, floor) = Foot(p, screws, side);
            yield return new($"{p.Name} screw pilot {i}", Side.Front, at, screws.Pilot, floor, floor - screws.Depth, floor - screws.Depth - Drilling.Cone(screws.Pilot)) { Into = RoomAt(p, at) };
        }
    }

    public static Region Cavity(PickupDefinition p) => new(Shapes.Rectangle(Centre(p), p.AlongX, p.AlongY, p.CornerRadius, p.Turn));

    /// <summary>Where a screw stands, and the height of the wood under it.</summary>
    public static (Point2 At, double Floor) Foot(PickupDefinition p, PickupScrews screws, int side)
    {
        var at = Centre(p) + new Point2(0, side * screws.Apart / 2).Turned(p.Turn);
        return (at, RoomAt(p, at) is not { } room ? 0 : room == p.Name ? -p.Depth : -p.Legs!.Depth);
    }

    /// <summary>The deepest of the pickup's rooms at a place; null beside them.</summary>
    private static string? RoomAt(PickupDefinition p, Point2 at) =>
        Of(p).Where(r => r.Region.Contains(at)).OrderBy(r => r.Floor.Z(at.X, at.Y)).FirstOrDefault()?.Name;

    private static Point2 Centre(PickupDefinition p) => new(p.CentreX, 0);

    private static Region Leg(PickupDefinition p, PickupLegs legs, int side)
    {
        var (from, to) = (p.AlongY / 2 - IntoCavity, legs.Across / 2);
        return new(Shapes.Rectangle(Centre(p) + new Point2(0, side * (from + to) / 2).Turned(p.Turn), legs.Along, to - from, p.CornerRadius, p.Turn));
    }
}
