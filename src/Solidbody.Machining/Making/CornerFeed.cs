using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;
using Solidbody.Machining.Toolpaths;
using Solidbody.Programs;
using Solidbody.Shop;

namespace Solidbody.Machining.Making;

/// <summary>Slows a finishing pass where its path bends towards the wood: there more of the cutter is in it than on the straight, and chip and push grow.</summary>
/// <remarks>
/// A climbing pass has the wood on its right: the path bends towards it where it turns to the left; a conventional one the other way. Where a pass does both, every bend counts.
/// Roughing feeds are safe in a slot already.
/// The bite ends R·sin φ ahead of the cutter's middle: what bends there engages the cutter already here. Over any stretch ahead that turns by β at a mean radius ρ
/// the engagement is at most that of the radius and at most φ + β (<see cref="Engagement.InBend"/>, <see cref="Engagement.AtCorner"/>); the worst stretch rules.
/// </remarks>
internal sealed class CornerFeed
{
    /// <summary>Slowed feeds are whole multiples of this, mm/s, so that a bend does not say a new feed in every line.</summary>
    private const double Step = 1;

    /// <summary>A turn below this is none, radians.</summary>
    private const double Smooth = 1e-6;

    private readonly ImmutableArray<Motion> path;
    private readonly DrivenCutter driven;
    private readonly Bite bite;
    private readonly OutlineWay way;
    private readonly double straight, ahead;
    private readonly double[] turns;

    private CornerFeed(ImmutableArray<Motion> path, DrivenCutter driven, Bite bite, OutlineWay way)
    {
        (this.path, this.driven, this.bite, this.way) = (path, driven, bite, way);
        straight = Engagement.Angle(bite.Width, driven.EdgeDiameter);
        // Before a corner of up to 90° the wood roughing left begins the skin's width earlier.
        ahead = driven.EdgeDiameter / 2 * Engagement.Thickest(straight) + bite.Width;
        turns = [.. Enumerable.Range(0, path.Length).Select(TurnAfter)];
    }

    /// <param name="path">A finishing pass, motions end to end; its feeds are the straight's.</param>
    /// <param name="driven">The cutter.</param>
    /// <param name="bite">The straight's bite.</param>
    /// <param name="way">On which side the wood is.</param>
    /// <returns>The same way; straight motions that run into a bend are divided before it.</returns>
    public static ImmutableArray<Motion> Of(ImmutableArray<Motion> path, DrivenCutter driven, Bite bite, OutlineWay way) => new CornerFeed(path, driven, bite, way).Slowed();

    private ImmutableArray<Motion> Slowed()
    {
        var atEnds = Enumerable.Range(0, path.Length).Select(AtEnd).ToArray();
        var slowed = ImmutableArray.CreateBuilder<Motion>(path.Length);
        for (var i = 0; i < path.Length; i++)
        {
            var motion = path[i];
            if (!IsCut(i)) { slowed.Add(motion); continue; }
            var coming = atEnds[i];
            for (var (k, way) = (i + 1, 0.0); k < path.Length && IsCut(k) && (way += path[k].Length) <= ahead; k++) coming = Math.Max(coming, atEnds[k]);
            var (here, before) = (At(motion, OnArc(motion)), At(motion, Math.Max(coming, OnArc(motion))));
            if (before.Feed < here.Feed && motion.Kind == MotionKind.Line && motion.Length > ahead) slowed.AddRange(Divided(here, before.Feed));
            else slowed.Add(before);
        }
        return slowed.ToImmutable();
    }

    private bool IsCut(int i) => path[i].Kind != MotionKind.Rapid && (path[i].IsArc || path[i].From.Plan.DistanceTo(path[i].To.Plan) > Tolerances.Geometry);

    private Motion At(in Motion motion, double angle)
    {
        var most = driven.FeedAt(bite.Depth, angle, Pass.Finishing);
        return most >= motion.Feed ? motion : motion with { Feed = most > Step ? Math.Floor(most / Step) * Step : most };
    }

    private Motion[] Divided(in Motion m, double feed)
    {
        var t = 1 - ahead / m.Length;
        var between = new WorkPoint(m.From.X + t * (m.To.X - m.From.X), m.From.Y + t * (m.To.Y - m.From.Y), m.From.Z + t * (m.To.Z - m.From.Z));
        return [m with { To = between }, m with { From = between, Feed = feed }];
    }

    /// <summary>How far a turn to the left, radians, goes towards the wood.</summary>
    private double Towards(double left) => way switch
    {
        OutlineWay.Climb => left,
        OutlineWay.Conventional => -left,
        _ => Math.Abs(left),
    };

    private double OnArc(in Motion motion) => motion.IsArc && Towards(motion.Sweep) is > 0 and var turn ? Bend((motion.From.Plan - motion.Centre).Length, turn) : straight;

    /// <summary>Engagement the way from a motion's end on asks for: the worst of all stretches that begin there, as long as what the cutter meets ahead.</summary>
    private double AtEnd(int i)
    {
        var (angle, turn, length) = (straight, 0.0, 0.0);
        for (var k = i; k < path.Length && IsCut(k); k++)
        {
            if (k > i && path[k].Kind == MotionKind.Line && length + path[k].Length > 2 * ahead) break;
            if (k > i) (turn, length, angle) = (turn + Towards(path[k].Sweep), length + path[k].Length, Math.Max(angle, OnArc(path[k])));
            turn += turns[k];
            if (length > 2 * ahead) break;
            if (turn > Smooth) angle = Math.Max(angle, Bend(length / turn, turn));
        }
        return angle;
    }

    private double Bend(double radius, double turn) => Math.Min(Engagement.InBend(bite.Width, driven.EdgeDiameter, radius), Engagement.AtCorner(straight, turn));

    /// <summary>By how much the path turns towards the wood from a motion to the next, radians; 0 beside rapids and plunges.</summary>
    private double TurnAfter(int i)
    {
        if (i + 1 >= path.Length || !IsCut(i) || !IsCut(i + 1)) return 0;
        var (a, b) = (Direction(path[i], path[i].To.Plan), Direction(path[i + 1], path[i + 1].From.Plan));
        return Towards(Math.Atan2(a.Cross(b), a.Dot(b)));
    }

    private static Point2 Direction(in Motion m, Point2 at)
    {
        if (!m.IsArc) return (m.To.Plan - m.From.Plan).Unit;
        var outward = (at - m.Centre).Unit;
        return m.Kind == MotionKind.ArcCounterClockwise ? outward.Left : -outward.Left;
    }
}
