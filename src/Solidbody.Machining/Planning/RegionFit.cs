using Solidbody.Geometry;

namespace Solidbody.Machining.Planning;

/// <summary>Whether a round cutter can get everywhere in a room, or everywhere round an outline.</summary>
internal static class RegionFit
{
    /// <summary>Play given to the cutter so that a channel exactly as wide as it still counts, mm.</summary>
    private const double Play = 0.01;
    /// <summary>A corner left uncut up to this area is the chords' own, mm²: 0.05 is a 3 mm cutter in a corner of 2.95.</summary>
    private const double CornerArea = 0.05;

    /// <summary>Whether a cutter of radius r reaches all of the room inside the outline: opening by r (Matheron; Serra, Image Analysis and Mathematical Morphology, 1982) leaves it as it was.</summary>
    public static bool Inside(Region room, double radius, Region outline)
    {
        var r = radius - Play;
        var cores = Offsets.Of(room, -r);
        if (cores.IsEmpty) return false;
        var reached = Offsets.Union(cores.SelectMany(c => Offsets.Of(c, r)));
        return Left(room, reached).SelectMany(rest => Offsets.Intersection(rest, outline)).All(rest => rest.Area <= CornerArea);
    }

    /// <summary>Whether a cutter of radius r reaches all of the outline from outside: closing by r leaves it as it was.</summary>
    public static bool Around(Region outline, double radius)
    {
        var grown = Offsets.Of(outline, radius - Play);
        var closed = grown.SelectMany(g => Offsets.Of(g, -(radius - Play)));
        return closed.All(c => Left(c, [outline]).All(rest => rest.Area <= CornerArea));
    }

    /// <summary>Whether the room is exactly as wide as the cutter: then its middle line, from end to end.</summary>
    public static (Point2 A, Point2 B)? Channel(Region room, double radius)
    {
        if (!Offsets.Of(room, -(radius + 2 * Play)).IsEmpty) return null;
        var cores = Offsets.Of(room, -(radius - Play));
        if (cores.Length != 1) return null;
        var points = cores[0].Loops[0].Points;
        // The core is a sliver of half width Play about the middle line: its two points furthest apart are that line's ends, Play too far out.
        var a = points.MaxBy(p => p.DistanceTo(points[0]));
        var b = points.MaxBy(p => p.DistanceTo(a));
        var along = (b - a).Unit;
        var (from, to) = (a + Play * along, b - Play * along);
        // Straight only: every point of the core within Play of the line.
        return points.All(p => Math.Abs(along.Cross(p - from)) <= 2 * Play) ? Ordered(from, to) : null;
    }

    private static (Point2, Point2) Ordered(Point2 a, Point2 b) => a.X < b.X || (a.X == b.X && a.Y <= b.Y) ? (a, b) : (b, a);

    /// <summary>Greatest cutter diameter that reaches all of the room, within 0.1 mm; 0 when none of 0.2 mm does.</summary>
    public static double WidestInside(Region room, Region outline)
    {
        var (fits, fails) = (0.0, Math.Min(room.Bounds.Width, room.Bounds.Height));
        while (fails - fits > 0.1)
        {
            var middle = (fits + fails) / 2;
            if (Inside(room, middle / 2, outline)) fits = middle; else fails = middle;
        }
        return fits;
    }

    /// <summary>A room that runs out of the outline, widened in the waste so that a cutter can come and go there; a closed room as it is.</summary>
    /// <param name="room">The room.</param>
    /// <param name="outline">The part's outline.</param>
    /// <param name="by">How far into the waste, mm.</param>
    public static Region Opened(Region room, Region outline, double by)
    {
        if (room.Loops.SelectMany(l => l.Points).All(p => outline.SignedDistance(p, 1) <= CornerArea)) return room;
        var waste = Offsets.Of(outline, by).SelectMany(o => Offsets.Difference(o, outline)).ToList();
        var mouth = Offsets.Of(room, by).SelectMany(grown => waste.SelectMany(w => Offsets.Intersection(grown, w)));
        // Pieces of waste that do not touch the room's own mouth lie behind a wall.
        return Offsets.Union(mouth.Prepend(room)).First(r => room.Loops[0].Points.Any(r.Contains));
    }

    private static IReadOnlyList<Region> Left(Region whole, IReadOnlyCollection<Region> taken)
    {
        IReadOnlyList<Region> rest = [whole];
        foreach (var t in taken) rest = [.. rest.SelectMany(r => Offsets.Difference(r, t))];
        return rest;
    }
}
