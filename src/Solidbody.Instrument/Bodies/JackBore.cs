using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>The jack's way in: where its bore meets the outline, and the plate let into the side there.</summary>
internal static class JackBore
{
    /// <summary>Longest bore tried, mm.</summary>
    public const double Longest = 200;

    /// <summary>Where the bore meets the outline; null when it starts beside the body.</summary>
    public static Point2? Edge(JackDefinition jack, Region outline)
    {
        var ys = Segments.CrossingsAtX(outline.Loops[0], jack.X);
        return ys.Count == 0 || !(ys[^1] > 0) ? null : new(jack.X, ys[^1]);
    }

    /// <summary>Its axis in the plan, to where it comes nearest to the cavity's middle, and its radius.</summary>
    public static (Point2 A, Point2 B, double Radius)? Line(JackDefinition jack, Region outline, Point2 middle) =>
        Edge(jack, outline) is { } edge && Point2.Polar(jack.Angle) is var along ? (edge, edge + Math.Clamp((middle - edge).Dot(along), 0, Longest) * along, jack.Diameter / 2) : null;

    /// <summary>Pilots of the plate's two screws, square to the side, from the ledge inward.</summary>
    public static IEnumerable<HandBore> PlatePilots(BodyDefinition body, Region outline)
    {
        if (body.Jack is not { Plate: { } plate } jack || Edge(jack, outline) is not { } edge) yield break;
        var (_, inward) = Segments.Nearest(outline.Loops[0], edge);
        var z = -body.Thickness / 2;
        foreach (var (side, i) in ((double, int)[])[(-0.5, 1), (0.5, 2)])
        {
            var a = edge + side * plate.ScrewsApart * inward.Left + plate.LedgeDepth * inward;
            var b = a + plate.PilotDepth * inward;
            yield return new($"jack plate screw pilot {i}", new(a.X, a.Y, z), new(b.X, b.Y, z), plate.Pilot, "through the plate's holes, after its ledge is let into the side by hand") { FromEdge = true };
        }
    }

    /// <summary>How far the outline falls back from a straight edge over the plate's length, mm: its ledge must be as deep.</summary>
    public static double Bow(JackDefinition jack, JackPlateDefinition plate, Region outline)
    {
        if (Edge(jack, outline) is not { } edge) return 0;
        var (_, inward) = Segments.Nearest(outline.Loops[0], edge);
        return outline.Loops[0].Points.Where(p => Math.Abs((p - edge).Cross(inward)) <= plate.Length / 2 && p.DistanceTo(edge) < plate.Length).Select(p => (p - edge).Dot(inward)).Append(0).Max();
    }
}
