using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>How one room is cleared at one level without ever biting wider than an angle: a spiral from the entry out to the largest disc that fits,
/// then arcs from wall to wall, each round the next disc of the room's skeleton, to and fro.</summary>
/// <remarks>
/// The axis stays inside discs that fit into its room, so nothing outside is cut; every arc's engagement against the disc before it is known in closed form,
/// and other cleared wood only lowers it. After G. Elber, E. Cohen, S. Drake, MATHSM: medial axis transform toward high speed machining of pockets,
/// Computer-Aided Design 37 (2005).
/// </remarks>
internal sealed class EngagedRoom
{
    /// <summary>Skeleton places by cutter radius, and their bounds, mm.</summary>
    private const double SpacingByRadius = 0.15, FinestSpacing = 0.2, CoarsestSpacing = 0.6;
    /// <summary>Discs smaller than this are not gone for, mm: on so tight a circle a cutter rubs. Corners keep a tip of wood, r/sin β − r deep where their half angle is β.</summary>
    internal const double SmallestDisc = 0.1;
    /// <summary>Halvings of the way between two skeleton places when the next arc is sought.</summary>
    private const int Halvings = 12;
    /// <summary>Half turns of a spiral are not quite concentric: their steps keep this share.</summary>
    private const double SpiralShare = 0.96;
    /// <summary>A branch shorter than this, by cutter radius, is mostly taken along with a longer one: it waits.</summary>
    private const double StubByRadius = 0.7;
    /// <summary>Distance between places tried on an arc for wood, and the gap over which the arc is broken off, mm.</summary>
    private const double TrialsApart = 0.3, ShortGap = 5;
    /// <summary>Rounds over the skeleton until nothing is left.</summary>
    private const int MostRounds = 8;

    private readonly Region room;
    private readonly double cutter, most;
    private readonly MedialAxis axis;
    private readonly ClearedDiscs cleared;
    private readonly List<EngagedMove> moves = [];
    private Point2 at;

    /// <summary>Whether a wider cutter was there before.</summary>
    public bool IsRest { get; }

    private EngagedRoom(Region room, double cutter, double most, IReadOnlyList<Region> gone)
    {
        (this.room, this.cutter, this.most) = (room, cutter, most);
        axis = MedialAxis.Of(room, Math.Clamp(SpacingByRadius * cutter, FinestSpacing, CoarsestSpacing));
        cleared = new(room, cutter, gone);
        IsRest = gone.Count > 0;
    }

    /// <summary>A room in solid wood.</summary>
    /// <param name="room">Where the axis may go; connected.</param>
    /// <param name="cutter">The cutter's radius, mm.</param>
    /// <param name="most">Greatest engagement, radians; in (0, π).</param>
    /// <param name="thinnestHelix">Least radius of a helix into solid wood, mm.</param>
    /// <param name="widestHelix">Greatest, mm; under the cutter's radius.</param>
    /// <returns>Null when no helix fits, or when a bounded bite does not get everywhere.</returns>
    public static EngagedRoom? Solid(Region room, double cutter, double most, double thinnestHelix, double widestHelix)
    {
        var planned = new EngagedRoom(room, cutter, most, []);
        var root = planned.Largest(_ => true);
        var disc = planned.axis.Discs[root];
        if (disc.Radius < thinnestHelix) return null;
        planned.Spiral(disc, Math.Min(widestHelix, disc.Radius));
        return planned.Cleared(root);
    }

    /// <summary>What a wider cutter left of a room.</summary>
    /// <param name="gone">Where the wood is gone.</param>
    /// <returns>As <see cref="Solid"/>; null when there is no place to come down in, without moves when nothing is left.</returns>
    public static EngagedRoom? Rest(Region room, double cutter, double most, IReadOnlyList<Region> gone)
    {
        var planned = new EngagedRoom(room, cutter, most, gone);
        var root = planned.Largest(d => planned.cleared.Covers(d));
        if (root < 0) return null;
        planned.Entry = planned.EntryCentre = planned.at = planned.axis.Discs[root].Centre;
        return planned.Cleared(root);
    }

    /// <summary>Middle of the entry's helix; the entry itself where the cutter comes down through air.</summary>
    public Point2 EntryCentre { get; private set; }
    /// <summary>Where the helix begins and ends; the moves go on from there.</summary>
    public Point2 Entry { get; private set; }
    public IReadOnlyList<EngagedMove> Moves => moves;

    private EngagedRoom? Cleared(int root)
    {
        var walk = SkeletonWalk.From(axis, root, StubByRadius * cutter);
        for (var round = 0; round < MostRounds && !IsClear; round++) Walk(walk, strict: round > 0);
        return IsClear ? this : null;
    }

    /// <summary>Whether all the cutter reaches is gone, but for ripples on the walls.</summary>
    private bool IsClear => axis.Discs.All(d => d.Radius < SmallestDisc || cleared.Covers(d)) && Narrowings().All(d => cleared.Covers(d));

    /// <summary>The discs at which the skeleton's branches become too narrow to go on.</summary>
    private IEnumerable<InnerDisc> Narrowings() =>
        from place in Enumerable.Range(0, axis.Discs.Length)
        where axis.Discs[place].Radius >= SmallestDisc
        from next in axis.Neighbours(place)
        where axis.Discs[next].Radius < SmallestDisc
        select LastWide(axis.Discs[place].Centre, axis.Discs[next].Centre);

    /// <summary>The last disc that is not too small on the way from a place of the skeleton, wide enough, to one that is not.</summary>
    private InnerDisc LastWide(Point2 from, Point2 to)
    {
        var last = new InnerDisc(from, -room.SignedDistance(from));
        var (wide, narrow) = (0.0, 1.0);
        for (var k = 0; k < Halvings; k++)
        {
            var centre = from + (wide + narrow) / 2 * (to - from);
            var disc = new InnerDisc(centre, -room.SignedDistance(centre));
            if (disc.Radius >= SmallestDisc) (last, wide) = (disc, (wide + narrow) / 2);
            else narrow = (wide + narrow) / 2;
        }
        return last;
    }

    /// <summary>The largest disc that will do, the first of equals; −1 for none.</summary>
    private int Largest(Func<InnerDisc, bool> does)
    {
        var best = -1;
        for (var i = 0; i < axis.Discs.Length; i++)
            if ((best < 0 || axis.Discs[i].Radius > axis.Discs[best].Radius + Tolerances.Output) && does(axis.Discs[i])) best = i;
        return best;
    }

    /// <summary>Half turns of growing radius from the helix out to the disc's rim. Radii are settled first; the middles follow backwards from the last.</summary>
    private void Spiral(InnerDisc disc, double helix)
    {
        var radii = new List<double> { helix };
        while (radii[^1] < disc.Radius - Tolerances.Geometry)
        {
            // Two half turns on, the same side is passed again: two growths make one step.
            var step = SpiralShare * CutterEngagement.Growth(radii[^1], cutter, most) / 2;
            var left = disc.Radius - radii[^1];
            radii.Add(left <= step ? disc.Radius : radii[^1] + Math.Min(step, left / Math.Ceiling(left / step)));
        }
        var side = new Point2(1, 0);
        var middles = new Point2[radii.Count];
        middles[^1] = disc.Centre;
        for (var i = radii.Count - 2; i >= 0; i--)
            middles[i] = middles[i + 1] + (radii[i + 1] - radii[i]) * Math.Pow(-1, i) * side;
        // Half turn i (from 1) starts on the side (-1)^(i-1): there circle i and circle i - 1 touch.
        EntryCentre = middles[0];
        Entry = at = middles[0] + radii[0] * side;
        for (var i = 1; i < radii.Count; i++) Arc(middles[i], middles[i] - Math.Pow(-1, i - 1) * radii[i] * side, true);
        if (radii.Count > 1) Arc(disc.Centre, disc.Centre - (at - disc.Centre), true);
        cleared.Add(disc);
    }

    /// <summary>Over the skeleton, taking the farthest disc that follows the last one; at a branch's end, and before wood already gone, whatever is left.</summary>
    /// <param name="strict">Whether to take every disc that is not cleared.</param>
    private void Walk(SkeletonWalk walk, bool strict)
    {
        var open = new Stack<Stop>();
        var root = axis.Discs[walk.Root];
        open.Push(new(walk.Root, root, root.Centre, null));
        while (open.TryPop(out var stop))
        {
            var disc = axis.Discs[stop.Place];
            var onward = walk.Onward(stop.Place);
            if (disc.Radius < SmallestDisc) (disc, onward) = (LastWide(stop.Passed, disc.Centre), []);
            if (disc.Radius < SmallestDisc || Reach(stop, disc, onward.Count == 0, strict) is not var (from, passed)) continue;
            foreach (var place in onward) open.Push(new(place, from, disc.Centre, passed));
        }
    }

    /// <param name="Place">Of the skeleton, to be gone to.</param>
    /// <param name="From">A cleared disc near it.</param>
    /// <param name="Passed">Middle of the place before.</param>
    /// <param name="Left">The disc there, when it was passed and not yet taken.</param>
    private readonly record struct Stop(int Place, InnerDisc From, Point2 Passed, InnerDisc? Left);

    /// <summary>Takes what must be taken before a place, and the place's own disc if nothing lies beyond. Gives the cleared disc to go on from, and the place's own if it is left; null when no way leads there.</summary>
    private (InnerDisc From, InnerDisc? Left)? Reach(Stop stop, InnerDisc disc, bool end, bool strict)
    {
        var (from, passed) = (stop.From, stop.Passed);
        if (cleared.Covers(disc))
        {
            if (stop.Left is { } left && !cleared.Covers(left)) Take(left, from);
            if (Follows(from, disc)) return (from, null);
            if (cleared.Covers(disc, ClearedDiscs.FineRipple)) return (disc, null);
        }
        while (!Follows(from, disc))
        {
            if (Farthest(from, passed, disc.Centre) is not { } on) return null;
            Take(on, from);
            (from, passed) = (on, on.Centre);
        }
        if (!end && !strict) return (from, disc);
        Take(disc, from);
        return (disc, null);
    }

    /// <summary>Whether a disc may be taken next to a cleared one: within the angle, and leaving no more than a ripple between them.</summary>
    private bool Follows(InnerDisc from, InnerDisc disc)
    {
        if (CutterEngagement.Along(from, disc, cutter) > most) return false;
        var between = 0.5 * (from.Centre + disc.Centre);
        return cleared.LeaveARipple(from, disc, new(between, -room.SignedDistance(between)));
    }

    /// <summary>The farthest disc on the way from a passed place of the skeleton to the next whose arc stays within the angle; null when there is none.</summary>
    private InnerDisc? Farthest(InnerDisc from, Point2 passed, Point2 to)
    {
        InnerDisc? best = null;
        var (fits, fails) = (0.0, 1.0);
        for (var k = 0; k < Halvings; k++)
        {
            var t = k == 0 ? 0 : (fits + fails) / 2;
            var centre = passed + t * (to - passed);
            var disc = new InnerDisc(centre, -room.SignedDistance(centre));
            if (disc.Radius >= SmallestDisc && Follows(from, disc)) (best, fits) = (disc, t);
            else if (k == 0) return null;
            else fails = t;
        }
        return best is { } found && (found.Centre.DistanceTo(from.Centre) > Tolerances.Output || found.Radius > from.Radius + Tolerances.Output) ? best : null;
    }

    /// <summary>The arc that takes a disc beside a cleared one, from whichever end is nearer.</summary>
    private void Take(InnerDisc disc, InnerDisc from)
    {
        cleared.Add(from);
        var half = CutterEngagement.Outside(from, disc);
        var away = disc.Centre - from.Centre;
        var middle = away.Length > Tolerances.Geometry ? Math.Atan2(away.Y, away.X) : 0;
        Point2 On(double angle) => disc.Centre + disc.Radius * Point2.Polar(angle);
        var stretches = Uncut(disc, middle - half, middle + half);
        var ahead = stretches.Count == 0 || at.DistanceTo(On(stretches[0].Start)) <= at.DistanceTo(On(stretches[^1].End));
        if (!ahead) stretches.Reverse();
        foreach (var (start, end) in stretches)
        {
            GoTo(On(ahead ? start : end));
            Arc(disc.Centre, On(ahead ? end : start), ahead);
        }
        cleared.Add(disc);
    }

    /// <summary>The stretches of an arc that other discs have not cleared; short gaps between them are passed over.</summary>
    private List<(double Start, double End)> Uncut(InnerDisc disc, double start, double end)
    {
        var n = Math.Max(8, (int)(disc.Radius * (end - start) / TrialsApart));
        var (stretches, first, last) = (new List<(double Start, double End)>(), -1, 0);
        double At(int i) => start + (end - start) * Math.Clamp(i, 0, n) / n;
        for (var i = 0; i <= n; i++)
        {
            if (cleared.Holds(disc.Centre + disc.Radius * Point2.Polar(At(i)))) continue;
            if (first >= 0 && disc.Radius * (At(i) - At(last)) > ShortGap)
            {
                stretches.Add((At(first - 1), At(last + 1)));
                first = -1;
            }
            if (first < 0) first = i;
            last = i;
        }
        if (first >= 0) stretches.Add((At(first - 1), At(last + 1)));
        return stretches;
    }

    private void GoTo(Point2 to)
    {
        if (to.DistanceTo(at) <= Tolerances.Geometry) return;
        if (cleared.MayGo(at, to)) moves.Add(new(EngagedMoveKind.Straight, to, default));
        else if (cleared.Way(at, to) is { } way) foreach (var p in way.Skip(1)) moves.Add(new(EngagedMoveKind.Straight, p, default));
        else moves.Add(new(EngagedMoveKind.Over, to, default));
        at = to;
    }

    private void Arc(Point2 centre, Point2 to, bool counterClockwise)
    {
        moves.Add(new(counterClockwise ? EngagedMoveKind.ArcCounterClockwise : EngagedMoveKind.ArcClockwise, to, centre));
        at = to;
    }
}
