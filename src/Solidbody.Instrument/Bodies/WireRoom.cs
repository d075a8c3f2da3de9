using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>A room a wire can end in.</summary>
/// <param name="Name">As the file names it.</param>
/// <param name="Region">Plan; null under the bridge's plate, where the way comes out at the front.</param>
/// <param name="Aims">Places a way may aim at, the room's middle first, then outward.</param>
/// <param name="Low">Lowest height inside the room.</param>
/// <param name="High">Highest height inside the room.</param>
internal sealed record WireRoom(string Name, Region? Region, ImmutableArray<Point2> Aims, double Low, double High)
{
    /// <summary>The face it opens to; null under the bridge.</summary>
    public Side? Opening { get; init; }
    /// <summary>Plan of the ledge round its mouth, when it has one.</summary>
    public Region? Ledge { get; init; }

    /// <summary>Distance between the places tried, and from them to the room's wall or the plate's edge, mm.</summary>
    private const double Step = 4, Inset = 4;

    public Point2 Middle => Aims[0];

    /// <summary>The room of that name; null when there is none.</summary>
    public static WireRoom? Named(string name, InstrumentDefinition d, ImmutableArray<Pocket> pockets)
    {
        if (name == RoomNames.Bridge) return UnderBridge(d);
        if (pockets.FirstOrDefault(p => p.Name == name) is not { } pocket) return null;
        var box = pocket.Region.Bounds;
        ImmutableArray<Point2> aims = [.. Outward(box.Centre, box).Where(p => pocket.Region.SignedDistance(p) <= -Inset)];
        if (aims.IsEmpty) aims = [box.Centre];
        var floor = pocket.Floor.Z(box.Centre.X, box.Centre.Y);
        if (pocket.From == Side.Front) return new(name, pocket.Region, aims, floor, 0) { Opening = Side.Front };
        var ledge = pockets.FirstOrDefault(p => p.From == Side.Back && p.Into == name && p.Floor.Z(box.Centre.X, box.Centre.Y) < floor);
        return new(name, pocket.Region, aims, ledge?.Floor.Z(box.Centre.X, box.Centre.Y) ?? -d.Body.Thickness, floor) { Opening = Side.Back, Ledge = ledge?.Region };
    }

    /// <summary>Under the half of the plate that faces the controls.</summary>
    private static WireRoom UnderBridge(InstrumentDefinition d)
    {
        var (bridge, place, toTreble) = (d.Body.Bridge, BridgePlace.Of(d), d.Body.Controls is not { CentreY: < 0 });
        var half = bridge.PlateHalfWidth - Inset;
        var box = new Box2(bridge.PlateFrom, toTreble ? 0 : -half, bridge.PlateTo, toTreble ? half : 0);
        var inset = box.Width > 2 * Inset ? box with { X0 = box.X0 + Inset, X1 = box.X1 - Inset } : box;
        return new(RoomNames.Bridge, null, [.. Outward(box.Centre, inset).Select(p => place.At(p.X, p.Y))], 0, 0);
    }

    /// <summary>A grid's points inside a box, the centre first, the nearest to it next.</summary>
    private static IEnumerable<Point2> Outward(Point2 centre, Box2 box)
    {
        var (columns, rows) = ((int)(box.Width / 2 / Step), (int)(box.Height / 2 / Step));
        return from column in Enumerable.Range(-columns, 2 * columns + 1)
               from row in Enumerable.Range(-rows, 2 * rows + 1)
               orderby column * column + row * row, column, row
               select centre + new Point2(column * Step, row * Step);
    }
}
