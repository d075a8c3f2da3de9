using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>Where hold-down screws go: in the waste, clear of everything a cutter sweeps, one near each corner of the blank,
/// in pairs that change places when the blank is turned over, so that the same holes serve both sides.</summary>
internal static class ScrewPlanner
{
    /// <summary>Distance between places looked at, mm.</summary>
    private const double Spacing = 2;
    /// <summary>A blank longer than this gets a pair in the middle too where there is room, mm.</summary>
    private const double LongBlank = 450;

    /// <summary>Screw middles, part frame; fewer than four where the waste has no room.</summary>
    /// <param name="part">The part.</param>
    /// <param name="blank">Its blank.</param>
    /// <param name="holdDowns">Head, margin.</param>
    /// <param name="sweep">How far beyond the outline cutters go, mm.</param>
    /// <param name="mouths">Rooms that run out of the outline, part frame.</param>
    public static ImmutableArray<Point2> Of(Part part, Blank blank, HoldDowns holdDowns, double sweep, IReadOnlyList<Region> mouths)
    {
        var head = holdDowns.ScrewHead / 2;
        var box = blank.Box.Plan.Grown(-(head + PlanPractice.ScrewEdge));
        var fromCut = sweep + holdDowns.ScrewMargin + head;
        var fromDowel = holdDowns.DowelDiameter / 2 + head + PlanPractice.LandAtDowel;

        bool IsFree(Point2 p) =>
            Clear(p) && Clear(new(p.X, -p.Y))
            && p.DistanceTo(blank.First) >= fromDowel && p.DistanceTo(blank.Second) >= fromDowel;
        bool Clear(Point2 p) => part.Outline.SignedDistance(p, fromCut) >= fromCut
            && mouths.All(r => r.SignedDistance(p, holdDowns.ScrewMargin + head) >= holdDowns.ScrewMargin + head);

        var places = new List<Point2>();
        foreach (var x in (double[])[box.X0, box.X1])
            AddPair(new(x, box.Y1), box.Width / 2);
        if (blank.Box.Length > LongBlank) AddPair(new(box.Centre.X, box.Y1), box.Width / 6);
        return [.. places];

        // The free place nearest to a corner, and its mirror image.
        void AddPair(Point2 corner, double within)
        {
            Point2? best = null;
            for (var y = box.Y1; y > head + PlanPractice.ScrewEdge; y -= Spacing)
                for (var d = 0.0; d <= within; d += Spacing)
                    foreach (var x in (double[])[corner.X - d, corner.X + d])
                    {
                        var p = new Point2(x, y);
                        if (!box.Contains(p) || (best is { } b && b.DistanceTo(corner) <= p.DistanceTo(corner)) || !IsFree(p)) continue;
                        best = p;
                    }
            if (best is { } found) places.AddRange([found, new(found.X, -found.Y)]);
        }
    }
}
