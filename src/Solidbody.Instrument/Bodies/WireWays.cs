using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>Straight bores that take wires from room to room, and the jack's side bore: made by hand, with a long drill or as a groove before the glue-up.</summary>
/// <param name="Bores">Those that can be made.</param>
/// <param name="Findings">What keeps the others from being made.</param>
internal sealed record WireWays(ImmutableArray<HandBore> Bores, ImmutableArray<Finding> Findings)
{
    /// <summary>A bore keeps this much wood to front and back; the jack's bore starts this far outside, mm. Common practice, no source.</summary>
    public const double ToFace = 5;
    private const double BeforeEdge = 3;
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
            else Add(Between(way, from, to, d, plan, pockets, holes, out var finding), finding);
        }
        if (d.Body.Jack is { } jack)
        {
            var controls = WireRoom.Named(RoomNames.Controls, d, pockets);
            if (controls is null) Add(null, WireFindings.NoSuchRoom(new("jack", RoomNames.Controls, jack.Diameter), RoomNames.Controls));
            else Add(Jack(jack, controls, plan, d.Body.Thickness, out var finding), finding);
        }
        foreach (var lost in WireGraph.Unconnected(d.Body, pockets, bores)) findings.Add(lost);
        return new(bores.ToImmutable(), findings.ToImmutable());
    }

    private static HandBore? Between(WireWayDefinition way, WireRoom from, WireRoom to, InstrumentDefinition d, Region plan, ImmutableArray<Pocket> pockets, ImmutableArray<Hole> holes, out Finding? finding)
    {
        finding = null;
        var (r, thickness) = (way.Diameter / 2, d.Body.Thickness);
        var (heightA, heightB) = (Heights(from, r, thickness), Heights(to, r, thickness));
        if (heightA is null || heightB is null)
        {
            finding = WireFindings.NoHeight(way, heightA is null ? way.From : way.To, way.Diameter + 2 * ToFace);
            return null;
        }
        // A sloped bore may pass at any height between the two rooms' own.
        var obstacles = WireClearance.Obstacles(holes, pockets, Math.Min(heightA.Value.Low, heightB.Value.Low) - r, Math.Max(heightA.Value.High, heightB.Value.High) + r);
        var (a, b) = WireLine.Between(from, to, way.Diameter, obstacles, plan);
        if (way.Made == WireMaking.Ploughed) return UnderTop(way, (from, a), (to, b), heightA.Value, heightB.Value, d) ?? Ploughed(way, from, to, heightA.Value, heightB.Value, d, out finding);
        var drilling = new WireDrilling(way, d.Body.LongDrill, thickness, pockets.FirstOrDefault(p => p.Name == RoomNames.NeckPocket), NeckJoint.Of(d).ShoulderX);
        if (drilling.Bore((from, a), (to, b)) is { } bore) return bore with { FromFace = from.Region is null || to.Region is null ? Side.Front : null };
        finding = WireFindings.DrillDoesNotFit(way, drilling.WhyNot);
        return null;
    }

    /// <summary>A groove in the mating edges of two of the body's pieces: where both rooms reach their joint.</summary>
    private static HandBore? Ploughed(WireWayDefinition way, WireRoom from, WireRoom to, (double Low, double High) a, (double Low, double High) b, InstrumentDefinition d, out Finding? finding)
    {
        var (low, high) = (Math.Max(a.Low, b.Low), Math.Min(a.High, b.High));
        var z = (low + high) / 2;
        finding = null;
        foreach (var y in Joints(d))
            if (low <= high && WireLine.OnJoint(from, to.Middle, y) is { } endA && WireLine.OnJoint(to, from.Middle, y) is { } endB)
                return new($"wire way {way.From} to {way.To}", new(endA.X, y, z), new(endB.X, y, z), way.Diameter, "as a groove in the mating edges, half in each")
                { ForWires = true, Into = [way.From, way.To], Before = GlueUp.Halves };
        finding = WireFindings.NoJoint(way);
        return null;
    }

    /// <summary>A groove in the face a top is glued on: straight from room to room, where both reach so high; null else.</summary>
    private static HandBore? UnderTop(WireWayDefinition way, (WireRoom Room, Point2 End) from, (WireRoom Room, Point2 End) to, (double Low, double High) a, (double Low, double High) b, InstrumentDefinition d)
    {
        if (d.Body.Top is not { } top || from.Room.Region is null || to.Room.Region is null) return null;
        var z = top.GluePlane - way.Diameter / 2;
        return z < Math.Max(a.Low, b.Low) || z > Math.Min(a.High, b.High) ? null
            : new($"wire way {way.From} to {way.To}", new(from.End.X, from.End.Y, z), new(to.End.X, to.End.Y, z), way.Diameter, "as a groove in the face under the top, as deep as it is wide")
            { ForWires = true, Into = [way.From, way.To], Before = GlueUp.Top };
    }

    /// <summary>Where the body's pieces meet: on the centre line, or at a through-neck's core, the treble side first, where most controls are.</summary>
    private static double[] Joints(InstrumentDefinition d) => d.Neck.Core is { } core ? [core.Lines.Treble, core.Lines.Bass] : d.Body.Pieces < 2 ? [] : [0];

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
