using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>Where the bridges stand that hold a part in its blank until the end: at the part's own places first, then evenly on straight long grain.</summary>
internal static class TabPlanner
{
    /// <summary>Long grain: the outline within this of the part's length, radians. Straight: within the same over a tab's length to both sides.</summary>
    private const double LongGrain = 20 * Math.PI / 180;
    /// <summary>Distance between places looked at, mm.</summary>
    private const double Spacing = 2;

    /// <summary>Tabs on the outline.</summary>
    /// <param name="laid">The part as it lies when the outline is cut.</param>
    /// <param name="cutFromBelow">How deep the other side's outline cut already is, mm.</param>
    /// <param name="habits">The shop's tabs.</param>
    /// <param name="belowEdge">How far below the edge the other side's ball-ends have hollowed the waste beside a point (part frame), within a distance.</param>
    public static ImmutableArray<Bridge> Of(LaidPart laid, double cutFromBelow, OutlineHabits habits, Func<Point2, double, double> belowEdge)
    {
        var length = habits.TabLength ?? (laid.Part.Bounds.Thickness >= PlanPractice.ThickPart ? PlanPractice.TabLengthThick : PlanPractice.TabLengthThin);
        var thickness = Thickness(laid, habits);
        var outline = laid.Outline.Loops.First(l => l.SignedArea > 0);
        var places = laid.Part.TabPlaces.Select(laid.Point).Take(PlanPractice.TabsMost).ToList();
        var candidates = LongGrainPlaces(outline, length);
        while (places.Count < PlanPractice.TabsLeast && candidates.Count > 0)
        {
            // Each further tab goes where it is furthest from those that stand; the first to the largest x.
            var next = places.Count == 0 ? candidates.MaxBy(p => (p.X, p.Y)) : candidates.MaxBy(p => places.Min(q => q.DistanceTo(p)));
            if (places.Any(q => q.DistanceTo(next) < 2 * length)) break;
            places.Add(next);
        }
        return [.. places.OrderBy(p => p.X).ThenBy(p => p.Y).Select(p =>
        {
            var zone = UnderZone(laid, outline, p, length);
            var under = Underside(laid, p, cutFromBelow, zone?.Highest ?? 0, belowEdge);
            return new Bridge(p, length, Math.Max(under, zone?.Highest ?? 0) + thickness, zone?.Lowest ?? 0);
        })];
    }

    /// <summary>Of a tab, mm: the shop's, under half of the blank.</summary>
    public static double Thickness(LaidPart laid, OutlineHabits habits) => Math.Min(habits.TabThickness, PlanPractice.TabOfBlank * laid.Top);

    /// <summary>What a carved zone of the side that lies down has left over the bed along a tab: highest over its length, lowest as far as a cutter's round end leaves wood;
    /// null where there is none.</summary>
    private static (double Lowest, double Highest)? UnderZone(LaidPart laid, Loop outline, Point2 at, double length)
    {
        var (part, down) = (laid.Part, laid.Up == Side.Front ? Side.Back : Side.Front);
        if (!part.CarvedZones.Any(z => z.From == down && z.Region.SignedDistance(laid.Point(at)) < PlanPractice.TabThickness)) return null;
        var face = laid.Height(down == Side.Front ? part.Front : part.Back);
        var chord = Enumerable.Range(0, outline.Points.Length).Select(i => (A: outline.Points[i], B: outline.Points[(i + 1) % outline.Points.Length]))
            .MinBy(c => (0.5 * (c.A + c.B)).DistanceTo(at) - c.A.DistanceTo(c.B) / 2);
        var along = (chord.B - chord.A).Unit;
        double Under(double s) => face.Z(at.X + s * along.X, at.Y + s * along.Y);
        double[] near = [Under(-length / 2), Under(0), Under(length / 2)], far = [.. near, Under(-3 * length / 2), Under(3 * length / 2)];
        return (Math.Max(0, far.Min() - PlanPractice.CarveLeave), near.Max());
    }

    /// <summary>Lowest wood over the bed there: rooms, dropped faces and shaped edges of the side that lies down have already taken what was below.</summary>
    private static double Underside(LaidPart laid, Point2 at, double cutFromBelow, double carved, Func<Point2, double, double> belowEdge)
    {
        var down = laid.Up == Side.Front ? Side.Back : Side.Front;
        var part = laid.Part;
        var under = cutFromBelow;
        foreach (var pocket in part.Pockets.Where(p => p.From == down))
        {
            var p = laid.Point(at);
            if (pocket.Region.SignedDistance(p) < PlanPractice.TabThickness) under = Math.Max(under, laid.Z(pocket.Floor.Z(p.X, p.Y)));
        }
        foreach (var flat in part.Flats.Where(f => f.From == down && f.Region.SignedDistance(laid.Point(at)) < PlanPractice.TabThickness))
            under = Math.Max(under, laid.Z(flat.Z));
        foreach (var ledge in part.Ledges.Where(l => l.From == down)) under = Math.Max(under, laid.Z(ledge.Floor));
        foreach (var edge in part.Edges.Where(e => e.From == down && e.Path.Any(q => laid.Point(q).DistanceTo(at) < 2 * e.Form.Width + PlanPractice.TabLengthThick)))
            under = Math.Max(under, carved + edge.Form.Height + belowEdge(laid.Point(at), PlanPractice.TabLengthThick));
        return under;
    }

    private static List<Point2> LongGrainPlaces(Loop outline, double length)
    {
        var places = new List<Point2>();
        var points = outline.Points;
        for (var i = 0; i < points.Length; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Length]);
            var n = Math.Max(1, (int)(a.DistanceTo(b) / Spacing));
            for (var k = 0; k < n; k++)
            {
                var p = a + (k + 0.5) / n * (b - a);
                if (IsStraightLongGrain(points, i, p, length)) places.Add(p);
            }
        }
        return places;
    }

    private static bool IsStraightLongGrain(ImmutableArray<Point2> points, int chord, Point2 at, double reach)
    {
        foreach (var way in (int[])[1, -1])
            for (var (i, walked) = (chord, 0.0); walked <= reach;)
            {
                var (a, b) = (points[i], points[(i + 1) % points.Length]);
                var along = b - a;
                if (Math.Abs(along.Y) > Math.Tan(LongGrain) * Math.Abs(along.X)) return false;
                walked += i == chord ? at.DistanceTo(way > 0 ? b : a) : along.Length;
                i = (i + way + points.Length) % points.Length;
                if (i == chord) break;
            }
        return true;
    }
}
