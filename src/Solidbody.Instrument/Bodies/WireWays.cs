using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>Straight bores that take wires from room to room, and the jack's side bore: made by hand, before the glue-up or with a long drill.</summary>
/// <param name="Bores">Those that can be made.</param>
/// <param name="Findings">What keeps the others from being made.</param>
internal sealed record WireWays(ImmutableArray<HandBore> Bores, ImmutableArray<Finding> Findings)
{
    /// <summary>A bore goes on this far inside a room, mm; a bore keeps this much wood to front and back; the jack's bore starts this far outside.
    /// Common practice, no source.</summary>
    private const double IntoRoom = 4, ToFace = 5, BeforeEdge = 3;
    /// <summary>Longest jack bore tried, and the step along it, mm.</summary>
    private const double LongestJack = 200, JackStep = 0.25;

    /// <summary>A room a wire can end in.</summary>
    /// <param name="Region">Plan; null where the end is a single point under the bridge's plate.</param>
    /// <param name="Middle">Where the way aims.</param>
    /// <param name="Low">Lowest, and highest, height inside the room.</param>
    private sealed record Room(Region? Region, Point2 Middle, double Low, double High);

    public static WireWays Of(InstrumentDefinition d, Region plan, ImmutableArray<Pocket> pockets)
    {
        var (bores, findings) = (ImmutableArray.CreateBuilder<HandBore>(), ImmutableArray.CreateBuilder<Finding>());
        void Add(HandBore? bore, Finding? finding)
        {
            if (bore is not null) bores.Add(bore);
            if (finding is not null) findings.Add(finding);
        }
        foreach (var way in d.Body.WireWays)
        {
            var (from, to) = (Find(way.From, d, pockets), Find(way.To, d, pockets));
            if (from is null || to is null) Add(null, WireFindings.NoSuchRoom(way, from is null ? way.From : way.To));
            else Add(Between(way, from, to, d.Body.Thickness, out var finding), finding);
        }
        if (d.Body.Jack is { } jack)
        {
            var controls = Find(RoomNames.Controls, d, pockets);
            if (controls is null) Add(null, WireFindings.NoSuchRoom(new("jack", RoomNames.Controls, jack.Diameter), RoomNames.Controls));
            else Add(Jack(jack, controls, plan, d.Body.Thickness, out var finding), finding);
        }
        return new(bores.ToImmutable(), findings.ToImmutable());
    }

    private static Room? Find(string name, InstrumentDefinition d, ImmutableArray<Pocket> pockets)
    {
        if (name == RoomNames.Bridge)
        {
            var bridge = d.Body.Bridge;
            // Under the half of the plate that faces the controls, the whole way clear of its screws and strings.
            var holes = BridgeHoles.Of(d).ToImmutableArray();
            var (x0, x1, y) = (d.Scale + bridge.PlateFrom, d.Scale + bridge.PlateTo, bridge.PlateHalfWidth);
            var controls = d.Body.Controls is { } c ? new Point2(c.CentreX, c.CentreY) : (Point2?)null;
            var toTreble = controls is not { Y: < 0 };
            var box = new Box2(x0, toTreble ? 0 : -y, x1, toTreble ? y : 0);
            var at = Clearest.Point(box, p => Math.Min(Math.Min(p.X - x0, x1 - p.X), Math.Min(y - Math.Abs(p.Y), holes.Length == 0 ? y : holes.Min(h => Segments.Distance(h.Centre, p, controls ?? p) - h.Diameter / 2))));
            return new(null, at ?? box.Centre, 0, 0);
        }
        if (pockets.FirstOrDefault(p => p.Name == name) is not { } pocket) return null;
        var middle = pocket.Region.Bounds.Centre;
        var floor = pocket.Floor.Z(middle.X, middle.Y);
        if (pocket.From == Side.Front) return new(pocket.Region, middle, floor, 0);
        var ledge = pockets.FirstOrDefault(p => p.Name == RoomNames.CoverLedge);
        return new(pocket.Region, middle, ledge?.Floor.Z(middle.X, middle.Y) ?? -d.Body.Thickness, floor);
    }

    private static HandBore? Between(WireWayDefinition way, Room from, Room to, double thickness, out Finding? finding)
    {
        var (r, name) = (way.Diameter / 2, $"wire way {way.From} to {way.To}");
        var (a, b) = (End(from, to.Middle), End(to, from.Middle));
        var (heightA, heightB) = (Heights(from, r, thickness), Heights(to, r, thickness));
        if (heightA is null || heightB is null)
        {
            finding = WireFindings.NoHeight(way, heightA is null ? way.From : way.To, way.Diameter + 2 * ToFace);
            return null;
        }
        // Level where both rooms allow it, in the middle of what they share; else from the nearest end to the nearest end.
        var (low, high) = (Math.Max(heightA.Value.Low, heightB.Value.Low), Math.Min(heightA.Value.High, heightB.Value.High));
        var middle = (low + high) / 2;
        var (za, zb) = low <= high ? (middle, middle)
            : (Math.Clamp(middle, heightA.Value.Low, heightA.Value.High), Math.Clamp(middle, heightB.Value.Low, heightB.Value.High));
        finding = null;
        return new(name, new(a.X, a.Y, za), new(b.X, b.Y, zb), way.Diameter, "with a long drill by hand, or as a groove before the glue-up");
    }

    /// <summary>Heights a bore's middle may have inside a room; null when the room is too shallow.</summary>
    private static (double Low, double High)? Heights(Room room, double r, double thickness)
    {
        if (room.Region is null) return (room.Low, room.High);
        var (low, high) = (Math.Max(room.Low, ToFace - thickness) + r, Math.Min(room.High, -ToFace) - r);
        return low <= high ? (low, high) : null;
    }

    /// <summary>The way's end: a little inside the room's wall, on the line from its middle to the other room's.</summary>
    private static Point2 End(Room room, Point2 toward)
    {
        if (room.Region is not { } region) return room.Middle;
        var along = (toward - room.Middle).Unit;
        var (inside, outside) = (0.0, toward.DistanceTo(room.Middle));
        for (var i = 0; i < 50; i++)
        {
            var half = (inside + outside) / 2;
            if (region.Contains(room.Middle + half * along)) inside = half; else outside = half;
        }
        return room.Middle + Math.Max(0, inside - IntoRoom) * along;
    }

    private static HandBore? Jack(JackDefinition jack, Room controls, Region plan, double thickness, out Finding? finding)
    {
        finding = null;
        var ys = Segments.CrossingsAtX(plan.Loops[0], jack.X);
        if (ys.Count == 0 || ys[^1] <= 0) { finding = WireFindings.JackOffBody(jack); return null; }
        var (edge, along) = (new Point2(jack.X, ys[^1]), Point2.Polar(jack.Angle));
        var reach = JackStep;
        while (reach < LongestJack && !controls.Region!.Contains(edge + reach * along)) reach += JackStep;
        if (reach >= LongestJack) { finding = WireFindings.JackMisses(jack, edge); return null; }
        if (Heights(controls, jack.Diameter / 2, thickness) is not var (low, high)) { finding = WireFindings.NoHeight(new("jack", RoomNames.Controls, jack.Diameter), RoomNames.Controls, jack.Diameter + 2 * ToFace); return null; }
        var (a, b, z) = (edge - BeforeEdge * along, edge + (reach + IntoRoom) * along, (low + high) / 2);
        return new("jack bore", new(a.X, a.Y, z), new(b.X, b.Y, z), jack.Diameter, "from the side with a jig, after the outline is cut");
    }
}
