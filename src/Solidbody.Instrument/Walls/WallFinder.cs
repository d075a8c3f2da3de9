using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Walls;

/// <summary>The least wood between every two voids of a part, and from each to edge and faces. Boxes are asked first: most pairs lie far apart.</summary>
internal static class WallFinder
{
    /// <summary>Walls thicker than this are not told, mm: three times the thickest wall any limit asks for. Common practice, no source.</summary>
    public const double Interest = 24;

    /// <summary>How far a distance need be looked for once a lesser one is known; an overlap is measured whole.</summary>
    public static double Cutoff(double best) => best > 0 ? Math.Min(best, Interest) : Interest;

    /// <returns>The thinnest first.</returns>
    public static ImmutableArray<Wall> Of(Part part)
    {
        var voids = Voids(part);
        var walls = new List<Wall>();
        for (var i = 0; i < voids.Length; i++)
        {
            for (var j = i + 1; j < voids.Length; j++)
                if (voids[i].BoxGap(voids[j]) < Interest && !AreJoined(part, voids[i], voids[j]) && Between.Of(voids[i], voids[j]) is { } least && least.Wood < Interest)
                    walls.Add(new(voids[i].Name, voids[j].Name, WallSide.Void, least.Wood, least.At));
            walls.AddRange(ToOutside.Of(voids[i], part).Where(w => w.Wood < Interest));
        }
        return [.. walls.OrderBy(w => w.Wood).ThenBy(w => w.Of, StringComparer.Ordinal).ThenBy(w => w.To, StringComparer.Ordinal)];
    }

    /// <summary>Rooms, holes and bores as voids; a room with a sloping floor counts as deep as it is anywhere. One that opens to a face reaches up to the part's own bounds there.</summary>
    private static ImmutableArray<Void> Voids(Part part)
    {
        var (bottom, top) = (part.Bounds.Z0, part.Bounds.Z1);
        return
        [
            .. part.Pockets.Select(p =>
            {
                var floor = p.Floor is LevelHeight level ? level.At : p.From == Side.Front ? p.Region.Loops[0].Points.Min(q => p.Floor.Z(q.X, q.Y)) : p.Region.Loops[0].Points.Max(q => p.Floor.Z(q.X, q.Y));
                return new RoomVoid(p, p.From == Side.Front && !p.Through ? floor : bottom, p.From == Side.Back && !p.Through ? floor : top, Names(p.Into));
            }),
            .. part.Holes.Select(h => new HoleVoid(h, h.Through ? bottom : Math.Min(h.Mouth, h.Tip), h.Through ? top : Math.Max(h.Mouth, h.Tip), Names(h.Into))),
            .. part.HandBores.Select(b => new BoreVoid(b)),
            .. part.Ledges.Select(l => new LedgeVoid(l, part.Outline.Bounds, l.From == Side.Front ? l.Floor : bottom, l.From == Side.Front ? top : l.Floor)),
        ];
    }

    private static IReadOnlyList<string> Names(string? into) => into is null ? [] : [into];

    /// <summary>Whether two voids are meant to meet: one opens into the other, both are steps of one hole, both belong to one room, or both are wires' ways.</summary>
    private static bool AreJoined(Part part, Void a, Void b) => (a, b) switch
    {
        _ when a.Into.Contains(b.Name) || b.Into.Contains(a.Name) => true,
        (HoleVoid h, HoleVoid g) => h.Hole.Centre.DistanceTo(g.Hole.Centre) < Tolerances.Geometry,
        (RoomVoid r, RoomVoid s) => Root(part, r.Pocket) == Root(part, s.Pocket),
        // A room that runs out of the outline cuts through the ledge; two ledges lie over each other.
        (RoomVoid { Pocket.IsOpenAtSide: true }, LedgeVoid) or (LedgeVoid, LedgeVoid) => true,
        // Wires may pass through a room, and meet other wires.
        (BoreVoid { Bore.ForWires: true }, BoreVoid { Bore.ForWires: true } or RoomVoid) => true,
        (RoomVoid, BoreVoid { Bore.ForWires: true }) => true,
        _ => false,
    };

    /// <summary>The room a room belongs to, through all that lie between: no chain is longer than there are rooms.</summary>
    private static string Root(Part part, Pocket pocket)
    {
        for (var i = 0; i < part.Pockets.Length && pocket.Into is not null && part.Pockets.FirstOrDefault(p => p.Name == pocket.Into) is { } next; i++) pocket = next;
        return pocket.Name;
    }
}
