using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Checks;

/// <summary>Which of the body's walls are too thin.</summary>
internal static class WallChecks
{
    private enum Kind { Ledge, Room, Hole, CoverScrew, Bore, WireWay, StrapScrew }

    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part body, ImmutableArray<Wall> walls)
    {
        var kinds = new Dictionary<string, Kind>();
        foreach (var ledge in body.Ledges) kinds[ledge.Name] = Kind.Ledge;
        foreach (var room in body.Pockets) kinds[room.Name] = Kind.Room;
        foreach (var hole in body.Holes) kinds[hole.Name] = hole.From == Side.Back && hole.Into is RoomNames.CoverLedge or RoomNames.SpringLedge ? Kind.CoverScrew : Kind.Hole;
        foreach (var bore in body.HandBores) kinds[bore.Name] = bore.ForWires ? Kind.WireWay : Kind.Bore;
        foreach (var button in d.Body.StrapButtons) kinds[StrapButtons.PilotName(button)] = Kind.StrapScrew;
        return [.. walls.Select(w => Judge(w, kinds)).OfType<Finding>(), .. Lands(body), .. Straps(d.Body, body)];
    }

    private static Finding? Judge(Wall w, Dictionary<string, Kind> kinds)
    {
        var of = kinds[w.Of];
        if (w.Against != WallSide.Void) return Outside(w, of);
        var to = kinds[w.To];
        // The lesser thing is named first: it is the easier one to move.
        if (to > of) (w, of, to) = (w with { Of = w.To, To = w.Of }, to, of);
        return (of, to) switch
        {
            (Kind.StrapScrew, Kind.Ledge) => w.Wood >= Limits.AroundStrapScrew ? null : BindingFindings.ThinBeside(w, Limits.AroundStrapScrew),
            (_, Kind.Ledge) when (of == Kind.Room ? Limits.LedgeToEdge : Limits.HoleToRoom) is var least => w.Wood >= least ? null : BindingFindings.ThinBeside(w, least),
            (Kind.Room, _) => w.Wood >= Limits.BetweenRooms ? null : WallFindings.BetweenRooms(w),
            (Kind.Hole, Kind.Room) => w.Wood >= Limits.HoleToRoom ? null : WallFindings.HoleAtRoom(w, Limits.HoleToRoom),
            (Kind.CoverScrew, Kind.Room) => w.Wood >= Limits.AroundCoverScrew ? null : CoverFindings.ThinAtScrew(w),
            (Kind.Hole or Kind.CoverScrew, _) => w.Wood >= Limits.BetweenHoles ? null : WallFindings.BetweenHoles(w),
            (Kind.StrapScrew, _) => w.Wood >= Limits.AroundStrapScrew ? null : StrapFindings.AtVoid(w, Limits.AroundStrapScrew),
            (Kind.WireWay, Kind.Hole or Kind.CoverScrew) => w.Wood >= Limits.HoleToRoom ? null : WireFindings.AtHole(w),
            _ => w.Wood >= Limits.HoleToRoom ? null : WallFindings.BoreAtVoid(w),
        };
    }

    /// <summary>Floors of rooms and tips of screws have limits of their own, which the checks of their kind know.</summary>
    private static Finding? Outside(Wall w, Kind of) => (of, w.Against) switch
    {
        (Kind.Room, WallSide.Edge) when Least(w.Of) is var least => w.Wood >= least ? null : WallFindings.ToEdge(w, least),
        (Kind.Hole or Kind.CoverScrew, WallSide.Edge) => w.Wood >= Limits.HoleToEdge ? null : WallFindings.ThinOutside(w, Limits.HoleToEdge),
        (Kind.Bore or Kind.WireWay or Kind.StrapScrew, _) => w.Wood >= Limits.BoreToOutside ? null : WallFindings.ThinOutside(w, Limits.BoreToOutside),
        _ => null,
    };

    private static IEnumerable<Finding> Straps(BodyDefinition definition, Part body) =>
        from button in StrapButtons.Of(definition, body.Outline)
        let away = button.Foot.Plan.DistanceTo(new(button.Definition.X, button.Definition.Y))
        where !(away <= Limits.StrapOffOutline)
        select StrapFindings.OffOutline(button.Definition.Name, away);

    private static double Least(string room) => room is RoomNames.CoverLedge or RoomNames.SpringLedge ? Limits.LedgeToEdge : Limits.ToEdge;

    /// <summary>Where a room opens nearer to the outline than the edge is wide, the edge runs into its mouth.</summary>
    private static IEnumerable<Finding> Lands(Part body)
    {
        foreach (var room in body.Pockets.Where(p => !p.IsOpenAtSide))
        {
            if (body.Edges.FirstOrDefault(e => e.From == room.From) is not { Form.Width: var width }) continue;
            var land = room.Region.Loops[0].Points.Min(p => -body.Outline.SignedDistance(p, width + Limits.LandAtEdge)) - width;
            if (!(land >= Limits.LandAtEdge)) yield return WallFindings.EdgeMeetsMouth(room.Name, land, width);
        }
    }
}
