using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>Straight bores that take wires from room to room, and the jack's side bore: made by hand, before the glue-up or with a long drill.</summary>
/// <param name="Bores">Those that can be made.</param>
/// <param name="Findings">What keeps the others from being made.</param>
internal sealed record WireWays(ImmutableArray<HandBore> Bores, ImmutableArray<Finding> Findings)
{
    /// <summary>A bore keeps this much wood to front and back; the jack's bore starts this far outside, mm. Common practice, no source.</summary>
    private const double ToFace = 5, BeforeEdge = 3;
    /// <summary>Step along the jack's bore, mm.</summary>
    private const double JackStep = 0.25;

    public static WireWays Of(InstrumentDefinition d, Region plan, ImmutableArray<Pocket> pockets, ImmutableArray<Hole> holes)
    {
        var (bores, findings) = (ImmutableArray.CreateBuilder<HandBore>(), ImmutableArray.CreateBuilder<Finding>());
        void Add(HandBore? bore, Finding? finding)
        {
            if (bore is not null) bores.Add(bore);
            if (finding is not null) findings.Add(finding);
        }
        foreach (var way in d.Body.WireWays)
        {
            var (from, to) = (WireRoom.Named(way.From, d, pockets), WireRoom.Named(way.To, d, pockets));
            if (from is null || to is null) Add(null, WireFindings.NoSuchRoom(way, from is null ? way.From : way.To));
            else Add(Between(way, from, to, (low, high) => WireClearance.Obstacles(holes, pockets, low, high), d.Body.Thickness, out var finding), finding);
        }
        if (d.Body.Jack is { } jack)
        {
            var controls = WireRoom.Named(RoomNames.Controls, d, pockets);
            if (controls is null) Add(null, WireFindings.NoSuchRoom(new("jack", RoomNames.Controls, jack.Diameter), RoomNames.Controls));
            else Add(Jack(jack, controls, plan, d.Body.Thickness, out var finding), finding);
        }
        return new(bores.ToImmutable(), findings.ToImmutable());
    }

    private static HandBore? Between(WireWayDefinition way, WireRoom from, WireRoom to, Func<double, double, ImmutableArray<Hole>> obstacles, double thickness, out Finding? finding)
    {
        var (r, name) = (way.Diameter / 2, $"wire way {way.From} to {way.To}");
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
        var (a, b) = WireLine.Between(from, to, way.Diameter, obstacles(Math.Min(za, zb) - r, Math.Max(za, zb) + r));
        finding = null;
        return new(name, new(a.X, a.Y, za), new(b.X, b.Y, zb), way.Diameter, "with a long drill by hand, or as a groove before the glue-up") { ForWires = true, Into = [way.From, way.To], FromFace = from.Region is null || to.Region is null ? Side.Front : null };
    }

    /// <summary>Heights a bore's middle may have inside a room; null when the room is too shallow.</summary>
    private static (double Low, double High)? Heights(WireRoom room, double r, double thickness)
    {
        if (room.Region is null) return (room.Low, room.High);
        var (low, high) = (Math.Max(room.Low, ToFace - thickness) + r, Math.Min(room.High, -ToFace) - r);
        return low <= high ? (low, high) : null;
    }

    private static HandBore? Jack(JackDefinition jack, WireRoom controls, Region plan, double thickness, out Finding? finding)
    {
        finding = null;
        if (JackBore.Edge(jack, plan) is not { } edge) { finding = WireFindings.JackOffBody(jack); return null; }
        var along = Point2.Polar(jack.Angle);
        var reach = JackStep;
        while (reach < JackBore.Longest && !controls.Region!.Contains(edge + reach * along)) reach += JackStep;
        if (reach >= JackBore.Longest) { finding = WireFindings.JackMisses(jack, edge); return null; }
        if (Heights(controls, jack.Diameter / 2, thickness) is not var (low, high)) { finding = WireFindings.NoHeight(new("jack", RoomNames.Controls, jack.Diameter), RoomNames.Controls, jack.Diameter + 2 * ToFace); return null; }
        var (a, b, z) = (edge - BeforeEdge * along, edge + (reach + WireLine.IntoRoom) * along, (low + high) / 2);
        return new("jack bore", new(a.X, a.Y, z), new(b.X, b.Y, z), jack.Diameter, "from the side with a jig, after the outline is cut") { Into = [RoomNames.Controls], FromEdge = true };
    }
}
