using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Checks;

internal static class ContourChecks
{
    /// <summary>Distance between the places looked at inside the body, mm; the outline's own points come to it.</summary>
    private const double Step = 6;

    /// <summary>Less than this off a face is nothing a plate or a rim would show, mm.</summary>
    internal const double Nothing = 0.05;

    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part body)
    {
        if (body.Front is not ArmContour && body.Back is not BellyContour) yield break;
        var edge = body.Outline.Loops[0].Points;
        var inside = Inside(body).Concat(edge).ToList();
        var (at, left) = inside.Select(p => (p, body.Front.Z(p.X, p.Y) - body.Back.Z(p.X, p.Y))).MinBy(p => p.Item2);
        if (!(left >= Limits.BetweenContours)) yield return ContourFindings.TooThin(at, left);

        foreach (var (name, side, removed) in Removals(body))
        {
            foreach (var (feature, points) in Features(d, body, side))
                if (points.Max(removed) is var most && !(most <= Nothing)) yield return ContourFindings.AtFeature(name, feature, most);
            if (!(inside.Max(removed) > Nothing)) yield return ContourFindings.TakesNothing(name);
        }
        // Across its window the contour is as deep as at the edge times a step: radius l² / (depth · the step's greatest second derivative).
        if (body.Back is BellyContour belly)
        {
            var radius = belly.C.WindowBlend * belly.C.WindowBlend / (Math.Max(inside.Max(belly.Removed), Nothing) * Bend.StepCurvature);
            if (!(radius >= Limits.HollowRadius)) yield return ContourFindings.TooTight(radius);
        }
    }

    internal static IEnumerable<(string Name, Side Side, Func<Point2, double> Removed)> Removals(Part body)
    {
        if (body.Front is ArmContour arm) yield return ("arm contour", Side.Front, arm.Removed);
        if (body.Back is BellyContour belly) yield return ("belly contour", Side.Back, belly.Removed);
    }

    private static IEnumerable<(string Name, IReadOnlyList<Point2> Points)> Features(InstrumentDefinition d, Part body, Side side)
    {
        foreach (var room in body.Pockets.Where(p => p.From == side)) yield return (room.Name, [.. room.Region.Loops[0].Points.Where(body.Outline.Contains).Append(room.Region.Bounds.Centre)]);
        foreach (var hole in body.Holes.Where(h => h.From == side)) yield return (hole.Name, [hole.Centre]);
        if (side == Side.Front) yield return ("bridge plate", BridgePlace.Of(d).Plate(d.Body.Bridge).Loops[0].Points);
    }

    internal static IEnumerable<Point2> Inside(Part body)
    {
        var box = body.Outline.Bounds;
        for (var x = box.X0 + Step / 2; x < box.X1; x += Step)
            for (var y = box.Y0 + Step / 2; y < box.Y1; y += Step)
                if (body.Outline.Contains(new(x, y))) yield return new(x, y);
    }
}
