using System.Globalization;
using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>Finds how a drill must lie to bore a way from room to room: over the far edge of one of them, level through the neck pocket, or from the front under the bridge.</summary>
/// <param name="way">The way wanted.</param>
/// <param name="drill">The drill on hand.</param>
/// <param name="thickness">Of the body, mm.</param>
/// <param name="neckPocket">Whose open mouth lets a drill lie level; null without one.</param>
/// <param name="shoulderX">Where the body ends there: the chuck stays before it.</param>
internal sealed class WireDrilling(WireWayDefinition way, LongDrillDefinition drill, double thickness, Pocket? neckPocket, double shoulderX)
{
    private readonly double radius = way.Diameter / 2;
    private readonly List<string> shortfalls = [];

    /// <summary>What kept each way of lying from fitting.</summary>
    public string WhyNot => string.Join("; ", shortfalls.Distinct());

    /// <param name="from">One room, and the way's end inside it.</param>
    /// <param name="to">The other.</param>
    /// <returns>The bore; null when the drill cannot lie so.</returns>
    public HandBore? Bore((WireRoom Room, Point2 End) from, (WireRoom Room, Point2 End) to)
    {
        if (from.Room.Region is null) return FromFront(from, to);
        if (to.Room.Region is null) return FromFront(to, from);
        return OverEdge(from, to) ?? OverEdge(to, from) ?? ThroughNeckPocket(from, to);
    }

    /// <summary>Entering the wall of a room, the shank over the edge opposite: as near the face as wood allows, for the flattest angle.</summary>
    private HandBore? OverEdge((WireRoom Room, Point2 End) from, (WireRoom Room, Point2 End) to)
    {
        if (from.Room.Opening is not { } face || from.Room.Region is not { } region) return null;
        var along = (to.End - from.End).Unit;
        var wall = from.End + WireLine.IntoRoom * along;
        var s = from.End.DistanceTo(to.End) - 2 * WireLine.IntoRoom;
        if (!(s > 0)) { shortfalls.Add($"{way.From} and {way.To} leave no wall between them to drill"); return null; }
        double Depth(double z) => face == Side.Front ? -z : z + thickness;
        double Z(double depth) => face == Side.Front ? -depth : depth - thickness;
        var (ownFloor, mouth) = face == Side.Front ? (Depth(from.Room.Low), 0.0) : (Depth(from.Room.High), Depth(from.Room.Low));
        var (near, far) = (Math.Min(Depth(to.Room.Low), Depth(to.Room.High)), Math.Max(Depth(to.Room.Low), Depth(to.Room.High)));
        var (least, most) = (Math.Max(near, WireWays.ToFace) + radius, Math.Min(far, thickness - WireWays.ToFace) - radius);
        var enter = Math.Max(mouth, WireWays.ToFace) + radius;
        if (!(enter + radius <= ownFloor && least <= most)) { shortfalls.Add($"{from.Room.Name} or {to.Room.Name} is too shallow"); return null; }

        // The cavity's own far wall, and the edge of a ledge beyond it.
        var run = Segments.ToWall(region, from.End, -along) + WireLine.IntoRoom;
        var lie = DrillLie.Over(enter - mouth, run, way.Diameter);
        if (mouth > 0 && from.Room.Ledge is { } ledge) lie = lie with { Angle = Math.Max(lie.Angle, DrillLie.Over(enter, Segments.ToWall(ledge, from.End, -along) + WireLine.IntoRoom, way.Diameter).Angle) };
        // Steeper where the other room lies deeper than the flattest bore would come.
        var beyond = s + WireLine.IntoRoom;
        lie = new DrillLie(Math.Max(lie.Angle, Math.Atan2(least - enter, s)), enter);
        var arrives = enter + beyond * Math.Tan(lie.Angle);
        if (!(arrives <= most))
        {
            shortfalls.Add(Say($"laid over the far edge of {from.Room.Name} at {Degrees(lie)} degrees it comes {arrives - most:0.0} mm too deep for {to.Room.Name}"));
            return null;
        }
        if (!IsLongEnough(lie.FreeLength(beyond, drill.Chuck), from.Room.Name)) return null;
        var a = new PartPoint(from.End.X, from.End.Y, Z(enter - WireLine.IntoRoom * Math.Tan(lie.Angle)));
        return Made(a, new(to.End.X, to.End.Y, Z(arrives)), Say($"with a drill of {lie.FreeLength(beyond, drill.Chuck):0} mm free of the chuck, laid over the far edge of {from.Room.Name} at {Degrees(lie)} degrees, from the {(face == Side.Front ? "front" : "back")}"));
    }

    /// <summary>Level along the body, the drill lying in the neck pocket's open mouth, through the nearer room into the farther.</summary>
    private HandBore? ThroughNeckPocket((WireRoom Room, Point2 End) one, (WireRoom Room, Point2 End) other)
    {
        if (neckPocket is null || one.Room.Opening != Side.Front || other.Room.Opening != Side.Front) return null;
        var (near, far) = one.End.X < other.End.X ? (one, other) : (other, one);
        var along = (far.End - near.End).Unit;
        if (!(along.X > 0)) return null;
        var mouth = near.End - (near.End.X - shoulderX) / along.X * along;
        var inside = neckPocket.Region.Contains(mouth) && -neckPocket.Region.SignedDistance(mouth) >= radius;
        if (!inside) { shortfalls.Add("the neck pocket's mouth does not lie in its line"); return null; }
        var floor = neckPocket.Floor.Z(neckPocket.Region.Bounds.X1, 0);
        var (low, high) = (Math.Max(floor, Math.Max(near.Room.Low, far.Room.Low)) + radius, -WireWays.ToFace - radius);
        if (!(low <= high)) { shortfalls.Add("neck pocket and rooms share no height for it"); return null; }
        if (!IsLongEnough(mouth.DistanceTo(far.End), RoomNames.NeckPocket)) return null;
        var z = (low + high) / 2;
        // From just inside the pocket: the drill makes the hole between pocket and nearer room too.
        var start = near.Room.Name == RoomNames.NeckPocket ? near.End : near.End - Segments.FromOutside(neckPocket.Region, near.End, -along, WireLine.IntoRoom) * along;
        return Made(new(start.X, start.Y, z), new(far.End.X, far.End.Y, z), Say($"with a drill of {mouth.DistanceTo(far.End):0} mm free of the chuck, laid level in the neck pocket")) is var bore
            ? bore with { Into = [.. bore.Into.Append(RoomNames.NeckPocket).Distinct()] } : null;
    }

    /// <summary>From the front, where a plate will cover its mouth.</summary>
    private HandBore? FromFront((WireRoom Room, Point2 End) face, (WireRoom Room, Point2 End) to)
    {
        var s = face.End.DistanceTo(to.End);
        var (low, high) = (Math.Max(to.Room.Low, WireWays.ToFace - thickness) + radius, Math.Min(to.Room.High, -WireWays.ToFace) - radius);
        if (!(low <= high && s > 0)) { shortfalls.Add($"{to.Room.Name} is too shallow"); return null; }
        var lie = new DrillLie(Math.Atan2(-(low + high) / 2, s), 0);
        if (!IsLongEnough(lie.FreeLength(s, drill.Chuck), "the front")) return null;
        return Made(new(face.End.X, face.End.Y, 0), new(to.End.X, to.End.Y, (low + high) / 2), Say($"from the front at {Degrees(lie)} degrees, with {lie.FreeLength(s, drill.Chuck):0} mm of drill free of the chuck"));
    }

    private bool IsLongEnough(double needed, string from)
    {
        if (needed <= drill.Length) return true;
        shortfalls.Add(Say($"from {from} it takes {needed:0} mm of drill free of the chuck, {drill.Length:0} mm are on hand"));
        return false;
    }

    private HandBore Made(PartPoint a, PartPoint b, string how) => new($"wire way {way.From} to {way.To}", a, b, way.Diameter, how) { ForWires = true, Into = [way.From, way.To] };
    private static string Degrees(DrillLie lie) => double.RadiansToDegrees(lie.Angle).ToString("0", CultureInfo.InvariantCulture);
    private static string Say(FormattableString text) => FormattableString.Invariant(text);
}
