using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>A cover plate to saw or cut from sheet, in the body's own plan: right-handed, seen from the front.</summary>
/// <param name="Name">Such as <c>control cover</c>.</param>
/// <param name="Outline">The ledge's, less the gap.</param>
/// <param name="Definition">Thickness, gap and screws.</param>
/// <param name="Screws">Where its screws stand.</param>
/// <param name="Spacing">Between neighbouring screws along the plate's edge, mm; 0 with none.</param>
public sealed record CoverPlate(string Name, Region Outline, CoverDefinition Definition, ImmutableArray<Point2> Screws, double Spacing)
{
    public const string OverControls = "control cover", OverSprings = "spring cover";

    /// <summary>Turns of the ring of screws tried for a clear place, within one spacing; wood beside them that counts as ample, mm. Common practice, no source.</summary>
    private const int Turns = 24;
    private const double Ample = 3;

    /// <param name="name">What it is called.</param>
    /// <param name="grown">The room's wall moved outward.</param>
    /// <param name="ledge">Width of what the plate lies on.</param>
    /// <param name="cover">The plate.</param>
    /// <param name="avoid">A bore that passes under the ledge: its axis and radius.</param>
    internal static CoverPlate Of(string name, Func<double, Loop> grown, double ledge, CoverDefinition cover, (Point2 A, Point2 B, double Radius)? avoid)
    {
        var plate = new Region(grown(ledge - cover.Gap));
        if (cover.Screws == 0) return new(name, plate, cover, [], 0);
        var middle = grown(ledge / 2);
        var spacing = middle.Perimeter / cover.Screws;
        var start = FarthestCorner(middle);
        ImmutableArray<Point2> Ring(double shift) => [.. Enumerable.Range(0, cover.Screws).Select(i => Along(middle, start + shift + i * spacing))];
        double Clear(ImmutableArray<Point2> ring) => avoid is not var (a, b, radius) ? Ample : Math.Min(Ample, ring.Min(p => Segments.Distance(p, a, b) - radius - cover.Pilot / 2));
        // The first screw in the farthest corner; turned on only where a bore is in the way, as little as will do.
        var screws = Enumerable.Range(0, Turns).Select(i => Ring(i * spacing / Turns)).MaxBy(Clear);
        return new(name, plate, cover, screws, spacing);
    }

    internal IEnumerable<Hole> Pilots(string name, double mouth, string? ledge) => Screws.Select((p, i) =>
        new Hole($"{name} {i + 1}", Side.Back, p, Definition.Pilot, mouth, mouth + Definition.PilotDepth, mouth + Definition.PilotDepth + Drilling.Cone(Definition.Pilot)) { Into = ledge });

    /// <summary>How far along the loop its point farthest from the middle lies, mm.</summary>
    private static double FarthestCorner(Loop loop)
    {
        var centre = loop.Bounds.Centre;
        var (best, at, gone) = (0.0, 0.0, 0.0);
        for (var i = 0; i < loop.Points.Length; i++)
        {
            if (loop.Points[i].DistanceTo(centre) > best + Tolerances.Flattening) (best, at) = (loop.Points[i].DistanceTo(centre), gone);
            gone += loop.Points[i].DistanceTo(loop.Points[(i + 1) % loop.Points.Length]);
        }
        return at;
    }

    private static Point2 Along(Loop loop, double distance)
    {
        var left = distance % loop.Perimeter;
        for (var i = 0; i < loop.Points.Length; i++)
        {
            var (a, b) = (loop.Points[i], loop.Points[(i + 1) % loop.Points.Length]);
            if (a.DistanceTo(b) is var length && left <= length) return a + left / length * (b - a);
            left -= a.DistanceTo(b);
        }
        return loop.Points[0];
    }
}
