using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Balance;

/// <summary>The instrument on a seated player's thigh, its waist over it.</summary>
/// <param name="At">Where it rests: the waist's hollow, plan.</param>
/// <param name="Moment">Of the weight about that place, N·mm: positive tips toward the head.</param>
public sealed record Knee(Point2 At, double Moment)
{
    /// <summary>A hollow shallower than this is no waist, mm.</summary>
    private const double LeastHollow = 3;

    /// <summary>Upward force at the nut that keeps it from tipping toward the head, N; negative where it tips toward the tail.</summary>
    public double HandForce(double angle) => Moment / (new Point2(0, 0) - At).Dot(Hanging.Toward(angle));

    /// <param name="body">Outline, right-handed.</param>
    /// <param name="whole">Everything together.</param>
    /// <param name="angle">Of the neck above the level, radians.</param>
    internal static Knee Of(Loop body, Weighed whole, double angle)
    {
        var neck = Hanging.Toward(angle);
        var at = Waist(body.Points, neck, Hanging.Up(angle));
        return new(at, whole.Mass * WeightBalance.Gravity * (whole.Centre.Plan - at).Dot(neck));
    }

    /// <summary>The deepest point of the deepest hollow that the lower hull bridges; without a hollow, the outline's lowest point.</summary>
    private static Point2 Waist(ImmutableArray<Point2> outline, Point2 neck, Point2 up)
    {
        var hull = LowerHull(outline, neck, up);
        var deepest = (Depth: LeastHollow, At: outline[hull.MinBy(i => outline[i].Dot(up))]);
        foreach (var (a, b) in hull.Zip(hull.Skip(1)))
        {
            var along = (outline[b] - outline[a]).Unit;
            // A thigh lies under it, not beside: the edge is nearer to level than to upright.
            if (Math.Abs(along.Dot(up)) > along.Dot(neck)) continue;
            foreach (var p in Between(outline, a, b))
                if (Math.Abs((p - outline[a]).Cross(along)) is var depth && depth > deepest.Depth) deepest = (depth, p);
        }
        return deepest.At;
    }

    /// <summary>The shorter way round between two points of the outline.</summary>
    private static IEnumerable<Point2> Between(ImmutableArray<Point2> outline, int a, int b)
    {
        var count = outline.Length;
        var ahead = (b - a + count) % count;
        var (from, steps) = ahead <= count / 2 ? (a, ahead) : (b, count - ahead);
        return Enumerable.Range(0, steps + 1).Select(i => outline[(from + i) % count]);
    }

    /// <summary>Indices of the lower hull, from the tail's side to the neck's (monotone chain, A. M. Andrew 1979, from memory).</summary>
    private static List<int> LowerHull(ImmutableArray<Point2> points, Point2 neck, Point2 up)
    {
        var chain = new List<int>();
        foreach (var i in Enumerable.Range(0, points.Length).OrderBy(i => points[i].Dot(neck)).ThenBy(i => points[i].Dot(up)))
        {
            while (chain.Count > 1 && Turn(points[chain[^2]], points[chain[^1]], points[i]) <= 0) chain.RemoveAt(chain.Count - 1);
            chain.Add(i);
        }
        return chain;

        double Turn(Point2 a, Point2 b, Point2 c) => (b - a).Dot(neck) * (c - b).Dot(up) - (b - a).Dot(up) * (c - b).Dot(neck);
    }
}
