using System.Collections.Immutable;

namespace Solidbody.Geometry.Arcs;

/// <summary>Straights and arcs for a row of points: as few biarcs as a greedy walk finds, smooth where the points are, corners kept.</summary>
/// <remarks>
/// Every arc starts and ends on a point or at the joint of a biarc. The distance from a centre is convex along a chord, so its ends and the foot of the centre tell how far it lies from its arc;
/// points go round their centre in order, so every point of an arc lies over a chord too. A chord with a larger sagitta than allowed stays a straight.
/// </remarks>
public sealed class ArcFit
{
    /// <summary>A span turns by no more than this, radians: so that its arcs stay well under half a turn.</summary>
    private const double WidestTurn = 2.5;

    private readonly IReadOnlyList<Point2> points;
    private readonly PathTangents tangents;
    private readonly double tolerance, sagitta;
    private readonly ImmutableArray<Segment>.Builder fitted = ImmutableArray.CreateBuilder<Segment>();
    private readonly List<Segment> trial = [];

    private ArcFit(IReadOnlyList<Point2> points, PathTangents tangents, double tolerance, double sagitta) =>
        (this.points, this.tangents, this.tolerance, this.sagitta) = (points, tangents, tolerance, sagitta);

    private static void Check(double tolerance, double sagitta)
    {
        if (!(tolerance > Tolerances.Geometry)) throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, $"Arcs are fitted within more than {Tolerances.Geometry} mm.");
        if (!(sagitta >= tolerance)) throw new ArgumentOutOfRangeException(nameof(sagitta), sagitta, $"Chords stand off their curve by the points' tolerance at least, {tolerance} mm.");
    }

    /// <summary>A region of polygons that were flattened by this tool, as one of straights and arcs: points within <see cref="Tolerances.Output"/>, chords within <see cref="Tolerances.Fitting"/>.</summary>
    public static ArcRegion Of(Region region) => Of(region, Tolerances.Output, Tolerances.Fitting);

    /// <summary>A region of polygons as one of straights and arcs.</summary>
    /// <param name="region">The polygons.</param>
    /// <param name="tolerance">Greatest distance of a point from what is fitted, mm; over 1e-6.</param>
    /// <param name="sagitta">Greatest distance of a chord from it, mm; at least the tolerance. Polygons that stand for curves need at least the sagitta they were flattened with.</param>
    public static ArcRegion Of(Region region, double tolerance, double sagitta)
    {
        ArgumentNullException.ThrowIfNull(region);
        return new(region.Loops.Select(l => Of(l, tolerance, sagitta)), sagitta);
    }

    /// <summary>A polygon as a loop of straights and arcs; the other parameters as for regions.</summary>
    public static ArcLoop Of(Loop loop, double tolerance, double sagitta)
    {
        ArgumentNullException.ThrowIfNull(loop);
        Check(tolerance, sagitta);
        IReadOnlyList<Point2> points = loop.Points;
        var tangents = new PathTangents(points, true, sagitta);
        if (Enumerable.Range(0, points.Count).FirstOrDefault(tangents.IsCorner) is var start and > 0)
        {
            points = [.. points.Skip(start), .. points.Take(start)];
            tangents = new(points, true, sagitta);
        }
        var fit = new ArcFit(points, tangents, tolerance, sagitta);
        fit.Walk(points.Count);
        return fit.fitted.Count >= 2 && fit.fitted.Count < points.Count ? new(fit.fitted.ToImmutable()) : ArcLoop.Of(loop);
    }

    /// <summary>An open row of points as straights and arcs from its first to its last point.</summary>
    /// <param name="path">At least two points, no two neighbours alike.</param>
    /// <param name="tolerance">Greatest distance of a point from what is fitted, mm; over 1e-6.</param>
    /// <param name="sagitta">Greatest distance of a chord from it, mm; at least the tolerance.</param>
    public static ImmutableArray<Segment> Of(IReadOnlyList<Point2> path, double tolerance, double sagitta)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (path.Count < 2) throw new ArgumentException($"A path needs two points; {path.Count} given.", nameof(path));
        Check(tolerance, sagitta);
        var fit = new ArcFit(path, new(path, false, sagitta), tolerance, sagitta);
        fit.Walk(path.Count - 1);
        return fit.fitted.ToImmutable();
    }

    private Point2 P(int i) => points[i < points.Count ? i : i - points.Count];

    private void Walk(int end)
    {
        for (var i = 0; i < end;)
        {
            var last = tangents.IsStraight(i) ? i : LastOfSpan(i, end);
            var reach = last > i ? Longest(i, last) : i;
            if (reach == i) fitted.Add(Segment.Line(P(i), P(++i)));
            else
            {
                Fits(i, reach);
                fitted.AddRange(trial);
                i = reach;
            }
        }
    }

    /// <summary>The first corner, straight chord or full turn after a point: no span goes further.</summary>
    private int LastOfSpan(int i, int end)
    {
        var turn = 0.0;
        var k = i;
        while (k < end && !tangents.IsStraight(k))
        {
            k++;
            if (k == end || tangents.IsCorner(k)) break;
            var (u, v) = (P(k) - P(k - 1), P(k + 1) - P(k));
            turn += Math.Abs(Math.Atan2(u.Cross(v), u.Dot(v)));
            if (turn > WidestTurn) break;
        }
        return k;
    }

    /// <summary>The furthest point that one biarc reaches, by doubling and halving; the point itself when none does.</summary>
    private int Longest(int i, int last)
    {
        var (good, step) = (i, 1);
        while (good + step <= last && Fits(i, good + step)) (good, step) = (good + step, 2 * step);
        for (step = Math.Min(step, last - good); step > 0; step /= 2)
            if (good + step <= last && Fits(i, good + step)) good += step;
        return good;
    }

    /// <summary>Whether the biarc from one point to another holds the tolerance over all points and chords between; it is left in the trial.</summary>
    private bool Fits(int from, int to)
    {
        Biarc.Of(P(from), tangents.Leaving[from], P(to), tangents.Arriving[to < points.Count ? to : to - points.Count], trial);
        if (trial.Count == 0) return false;
        var on = 0;
        for (var k = from; k < to; k++)
        {
            var (a, b) = (P(k), P(k + 1));
            if (on + 1 < trial.Count && Passes(b, trial[on]))
            {
                // The chord over the joint in two halves, parted over the joint.
                var chord = Segment.Line(a, b);
                var over = chord.At(chord.Nearest(trial[on].To));
                if (over.DistanceTo(trial[on].To) > sagitta || !Holds(trial[on], a, over) || !Holds(trial[on + 1], over, b)) return false;
                on++;
            }
            else if (!Holds(trial[on], a, b)) return false;
            if (!(trial[on].DistanceTo(b) <= tolerance)) return false;
        }
        return on == trial.Count - 1;
    }

    private static bool Passes(Point2 p, in Segment s) => (p - s.To).Dot(s.Direction(1)) > 0;

    /// <summary>Whether a chord, or a part of one, goes the segment's way and its arc stands off it by no more than allowed.</summary>
    private bool Holds(in Segment s, Point2 a, Point2 b)
    {
        if (!s.IsArc)
        {
            var along = s.Direction(0);
            return (b - a).Dot(along) >= 0 && Math.Abs((a - s.From).Cross(along)) <= sagitta && Math.Abs((b - s.From).Cross(along)) <= sagitta;
        }
        var (u, v) = (a - s.Centre, b - s.Centre);
        if (u.Cross(v) * s.Sweep < 0 || u.Dot(v) < 0) return false;
        if (Math.Abs(u.Length - s.Radius) > sagitta || Math.Abs(v.Length - s.Radius) > sagitta) return false;
        var chord = b - a;
        var inside = u.Dot(chord) < 0 && v.Dot(chord) > 0;
        return !inside || s.Radius - Math.Abs(u.Cross(v)) / chord.Length <= sagitta;
    }
}
