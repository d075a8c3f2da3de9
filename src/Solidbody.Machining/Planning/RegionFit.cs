using Solidbody.Geometry;

namespace Solidbody.Machining.Planning;

/// <summary>Whether a round cutter can get everywhere in a room, or everywhere round an outline.</summary>
/// <remarks>
/// A disc of radius r reaches all of a region when opening by r leaves the region as it was, and all of its outside when closing by r does
/// (Matheron; Serra, Image Analysis and Mathematical Morphology, 1982). On a smooth wall that is a question of distances: the only disc that
/// touches a wall at a point has its middle r away along the normal there, and the wall must nowhere come nearer to that middle than r.
/// Asked at every chord's middle and every millimetre, that takes a hundredth of the time of offsetting in and out again.
/// </remarks>
internal static class RegionFit
{
    /// <summary>How far the disc may overlap a wall, mm: a hollow of radius r drawn in chords comes two sagittas nearer to its middle than r.</summary>
    private const double Overlap = 3 * Tolerances.Flattening;
    /// <summary>Distance between places tried on long chords, mm.</summary>
    private const double Spacing = 1;
    /// <summary>Play given to a channel's width, mm.</summary>
    private const double Play = 0.01;
    /// <summary>A room that passes the outline by less than this ends on it, mm.</summary>
    private const double Gap = 0.05;

    /// <summary>Whether a cutter of radius r reaches all of the room that lies inside the outline; walls on the outline or in the waste are nobody's.</summary>
    public static bool Inside(Region room, double radius, Region outline) =>
        Walls(room, outline).All(wall => -room.SignedDistance(wall.At + radius * wall.Inward, radius) >= radius - Overlap);

    /// <summary>Places along the walls of a room that are the part's own, and the way into the room.</summary>
    public static IEnumerable<(Point2 At, Point2 Inward)> Walls(Region room, Region outline) => Walls(room).Where(wall => outline.SignedDistance(wall.At, 2 * Overlap) <= -Overlap);

    /// <summary>Whether a cutter of radius r reaches all of the outline from outside.</summary>
    public static bool Around(Region outline, double radius) =>
        Walls(outline).All(wall => outline.SignedDistance(wall.At - radius * wall.Inward, radius) >= radius - Overlap);

    /// <summary>Whether a disc of radius r has room somewhere inside.</summary>
    public static bool Holds(Region region, double radius) => !Offsets.Of(region, -radius).IsEmpty;

    private static IEnumerable<(Point2 At, Point2 Inward)> Walls(Region region)
    {
        foreach (var points in region.Loops.Select(l => l.Points))
            for (var i = 0; i < points.Length; i++)
            {
                var (a, b) = (points[i], points[(i + 1) % points.Length]);
                var n = Math.Max(1, (int)Math.Ceiling(a.DistanceTo(b) / Spacing));
                var inward = (b - a).Unit.Left;
                for (var k = 0; k < n; k++) yield return (a + (k + 0.5) / n * (b - a), inward);
            }
    }

    /// <summary>Whether the room is exactly as wide as the cutter: then its middle line, from end to end.</summary>
    public static (Point2 A, Point2 B)? Channel(Region room, double radius)
    {
        // A region without holes holds a disc of at least its area over its perimeter (Bonnesen's inequality, from memory): most rooms end here.
        if (room.Loops.Length > 1 || room.Area > (radius + 2 * Play) * room.Loops[0].Perimeter || Holds(room, radius + 2 * Play)) return null;
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

    /// <summary>Greatest cutter diameter that reaches all of an outline from outside, within 0.1 mm; 0 when none of 0.2 mm does.</summary>
    public static double WidestAround(Region outline)
    {
        var (fits, fails) = (0.0, Math.Min(outline.Bounds.Width, outline.Bounds.Height));
        while (fails - fits > 0.1)
        {
            var middle = (fits + fails) / 2;
            if (Around(outline, middle / 2)) fits = middle; else fails = middle;
        }
        return fits;
    }

    /// <summary>A room that runs out of the outline, widened in the waste so that a cutter can come and go there; a closed room as it is.</summary>
    /// <param name="room">The room.</param>
    /// <param name="outline">The part's outline.</param>
    /// <param name="by">How far into the waste, mm.</param>
    public static Region Opened(Region room, Region outline, double by)
    {
        if (room.Loops.SelectMany(l => l.Points).All(p => outline.SignedDistance(p, 1) <= Gap)) return room;
        // Only the outline near the room matters: what its clipping adds lies out of the grown room's reach.
        var near = new Region(Shapes.Rectangle(room.Bounds.Centre, room.Bounds.Width + 4 * by, room.Bounds.Height + 4 * by));
        var part = Offsets.Intersection(outline, near);
        var waste = part.SelectMany(p => Offsets.Of(p, by)).SelectMany(o => Without(o, part)).ToList();
        var mouth = Offsets.Of(room, by).SelectMany(grown => waste.SelectMany(w => Offsets.Intersection(grown, w)));
        // Pieces of waste that do not touch the room's own mouth lie behind a wall.
        return Offsets.Union(mouth.Prepend(room)).First(r => room.Loops[0].Points.Any(r.Contains));
    }

    private static IEnumerable<Region> Without(Region whole, IEnumerable<Region> taken) =>
        taken.Aggregate((IEnumerable<Region>)[whole], (rest, t) => rest.SelectMany(r => Offsets.Difference(r, t)));
}
