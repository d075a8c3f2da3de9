using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Round holes by a helix: climb (counter-clockwise), a flat turn at the floor, off the wall before rising.</summary>
public static class HelicalBoring
{
    /// <summary>A hole within this of the cutter's diameter is plunged, mm; the run-out of a small spindle, common practice, no source.</summary>
    internal const double SameDiameter = 0.02;
    /// <summary>Largest helix into solid wood, by cutter radius: under 1 no post stays in the middle.</summary>
    internal const double EntryByRadius = 0.9;
    /// <summary>Helices thinner than this are plunged and then widened, mm, where the cutter may plunge.</summary>
    private const double ThinHelix = 0.5;

    /// <summary>Bores each hole to its floor, in a short order.</summary>
    /// <param name="s">Pitch obeys <see cref="CutSettings.RampAngle"/> and <see cref="CutSettings.StepDown"/>; wide holes grow by <see cref="CutSettings.StepOver"/>, one helix after another.</param>
    /// <param name="spots">Holes; Floor below Mouth, Diameter at least the cutter's less 0.02 mm.</param>
    /// <exception cref="ArgumentException">A hole is thinner than the cutter, or as thin as a cutter that may not plunge.</exception>
    public static ImmutableArray<Motion> Path(CutSettings s, IReadOnlyList<BoreSpot> spots)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(spots);
        var path = new PathBuilder(s);
        foreach (var spot in VisitOrder.Of([.. spots.Select(h => h.Centre)]).Select(i => spots[i])) Bore(path, s, spot);
        return path.Build();
    }

    private static void Bore(PathBuilder path, CutSettings s, BoreSpot spot)
    {
        var widest = (spot.Diameter - s.Cutter.Diameter) / 2;
        if (widest < -SameDiameter / 2)
            throw new ArgumentException($"A {s.Cutter.Diameter} mm cutter does not bore a {spot.Diameter} mm hole.", nameof(spot));
        if (widest <= SameDiameter / 2 && !s.Cutter.Plunges)
            throw new ArgumentException($"A {spot.Diameter} mm hole needs a plunge, and cutter '{s.Cutter.Name}' may not plunge.", nameof(spot));
        if (widest < ThinHelix && s.Cutter.Plunges)
        {
            path.EnterAbove(spot.Centre, spot.Mouth);
            PeckDrilling.Pecks(path, s, spot.Mouth, spot.Floor, s.StepDown);
            if (widest <= SameDiameter / 2) return;
            path.Line(new(spot.Centre.X + widest, spot.Centre.Y, spot.Floor));
            path.Arc(path.At, spot.Centre, true);
            path.Line(spot.Centre, spot.Floor);
            return;
        }
        foreach (var radius in Radii(s, widest))
        {
            path.EnterAbove(spot.Centre + new Point2(radius, 0), spot.Mouth);
            Helix(path, s, spot.Centre, spot.Mouth, spot.Floor);
            path.Line(spot.Centre + new Point2(Math.Max(0, radius - s.Cutter.Radius / 2), 0), spot.Floor);
        }
    }

    /// <summary>Down a counter-clockwise helix about <paramref name="centre"/> from over the tip's place, then a turn that is flat or sinks by the rest.</summary>
    internal static void Helix(PathBuilder path, CutSettings s, Point2 centre, double from, double floor, double rest = 0)
    {
        path.Line(path.At with { Z = from });
        var radius = path.At.Plan.DistanceTo(centre);
        // A turn on chords is shorter than its circle, and a thin helix has few of them.
        var chords = Shapes.ChordsFor(radius, 2 * Math.PI);
        var turn = s.Arcs ? 2 * Math.PI * radius : 2 * radius * chords * Math.Sin(Math.PI / chords);
        var pitch = Math.Min(s.StepDown, turn * Math.Tan(s.RampAngle));
        foreach (var z in DepthLevels.Of(from, floor + rest, pitch)) path.Arc(path.At with { Z = z }, centre, true);
        path.Arc(path.At with { Z = floor }, centre, true);
    }

    private static IEnumerable<double> Radii(CutSettings s, double widest)
    {
        var entry = EntryByRadius * s.Cutter.Radius;
        if (widest <= entry) return [widest];
        var n = (int)Math.Ceiling((widest - entry) / Math.Min(s.StepOver, entry) - 1e-9);
        return Enumerable.Range(0, n + 1).Select(i => entry + (widest - entry) * i / n);
    }
}
