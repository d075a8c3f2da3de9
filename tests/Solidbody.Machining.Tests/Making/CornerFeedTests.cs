using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;
using Solidbody.Machining.Making;
using Solidbody.Machining.Planning;
using Solidbody.Machining.Toolpaths;
using Solidbody.Programs;
using Solidbody.Shop;

namespace Solidbody.Machining.Tests.Making;

public class CornerFeedTests
{
    private const double Skin = 0.3, Depth = 10, Every = 0.1, EveryOnArcs = 0.02;
    private static readonly ShopDefinition Shop = Samples.Shop with { Machine = Samples.Machine with { FeedMostXY = 300 } };
    private static readonly DrivenCutter Driven = new(Samples.Cutter("flat 6"), new("yellow-poplar", 1), Shop);

    private static ImmutableArray<Motion> Finished(Work work) => OperationPath.Of(
        new Operation("any", Stage.Rooms, Driven.Cutter, FeedPlanner.Finishing(Driven, Depth, Skin), work) { Driven = Driven }, 20, Shop.Machine);

    /// <summary>How much of the cutter's circumference stands in wood, from discs laid along the way: neither roughed nor swept before.</summary>
    private static IEnumerable<(double Angle, Motion Motion)> Engaged(ImmutableArray<Motion> path, Region roughed)
    {
        var radius = Driven.Cutter.Radius;
        var swept = new List<Point2>();
        foreach (var motion in path.Where(m => m.Kind != MotionKind.Rapid && m.From.Plan.DistanceTo(m.To.Plan) > Tolerances.Geometry))
        {
            var n = (int)Math.Ceiling(motion.Length / (motion.IsArc ? EveryOnArcs : Every));
            for (var i = 1; i <= n; i++)
            {
                var t = (double)i / n;
                var at = motion.IsArc ? motion.Centre + (motion.From.Plan - motion.Centre).Turned(t * motion.Sweep) : motion.From.Plan + t * (motion.To.Plan - motion.From.Plan);
                var near = swept.Where(p => p.DistanceTo(at) < 2 * radius).ToList();
                var inWood = Enumerable.Range(0, 360).Select(k => at + radius * Point2.Polar(k * Math.PI / 180))
                    .Count(p => roughed.SignedDistance(p, radius + 1) > radius && near.All(q => q.DistanceTo(p) > radius));
                yield return (inWood * Math.PI / 180, motion);
                swept.Add(at);
            }
        }
    }

    // The engagement is counted in discs, the chip limit is the plan's; 4° for counting whole degrees at both ends of the bite.
    [Theory]
    [InlineData(3.4)]
    [InlineData(4)]
    [InlineData(8)]
    public void No_bend_of_a_wall_is_entered_faster_than_the_wood_met_there_allows(double corner)
    {
        var room = new Region(Shapes.Rectangle(default, 40, 30, corner));
        var path = Finished(new Work.Walls(room, 0, -Depth, 0));
        var roughed = Offsets.Of(room, -Driven.Cutter.Radius - Skin)[0];
        var met = Engaged(path, roughed).ToList();
        var tooFast = met.Where(m => m.Angle > 0.08 && m.Motion.Feed > Driven.FeedAt(Depth, Math.Max(m.Angle - 0.07, 0.01), Pass.Finishing) + 1e-9)
            .Select(m => FormattableString.Invariant($"{m.Angle * 180 / Math.PI:0.0}° at {m.Motion.Feed:0.0} mm/s, to {m.Motion.To}"));
        Assert.Empty(tooFast);
        Assert.True(path.Where(m => m.Kind != MotionKind.Rapid).Max(m => m.Feed) > 1.2 * path.Where(m => m.Kind != MotionKind.Rapid && m.Length > 0.05).Min(m => m.From.Z == m.To.Z ? m.Feed : double.PositiveInfinity));
    }

    [Fact]
    public void A_corner_as_tight_as_the_cutter_slows_the_end_of_the_straight_only()
    {
        var path = Finished(new Work.Walls(new Region(Shapes.Rectangle(default, 40, 30)), 0, -Depth, 0));
        var straight = Engagement.Angle(Skin, 6);
        var slow = Math.Floor(Driven.FeedAt(Depth, Engagement.AtCorner(straight, Math.PI / 2), Pass.Finishing));
        var slowed = path.Where(m => m.Kind == MotionKind.Line && m.Feed == slow && m.From.Z == m.To.Z).ToList();
        Assert.Equal(4, slowed.Count);
        Assert.All(slowed, m => Assert.Equal(3 * Math.Sin(straight) + Skin, m.Length, 6));
        Assert.True(slow < Driven.FeedAt(Depth, straight, Pass.Finishing));
    }

    [Theory] // Round a part without hollows the path turns away from the wood everywhere, climbing and the other way.
    [InlineData(OutlineWay.Climb)]
    [InlineData(OutlineWay.Conventional)]
    public void Outside_corners_are_not_slowed(OutlineWay way)
    {
        var outline = Shapes.Rectangle(default, 40, 30, 8);
        var path = Finished(new Work.FinishOutline(outline, 0, -Depth, [], way));
        var feed = FeedPlanner.Finishing(Driven, Depth, Skin).Feed;
        // Where the pass comes to the wall and leaves it, it turns as if into wood.
        var left = path.Reverse().Where(m => m.Kind != MotionKind.Rapid && m.From.Z == m.To.Z).Aggregate((Way: 0.0, Seen: new List<(Motion Motion, double ToEnd)>()), (s, m) => (s.Way + m.Length, [.. s.Seen, (m, s.Way)])).Seen;
        Assert.All(left.Where(m => m.ToEnd > 15 && m.ToEnd < left[^1].ToEnd - 15), m => Assert.Equal(feed, m.Motion.Feed, 9));
        Assert.True(left[^1].ToEnd > 100);
    }

    [Fact]
    public void Slowing_changes_no_way() => Assert.Equal(
        Walls().Where(m => m.Kind != MotionKind.Rapid).Sum(m => m.Length),
        PocketWalls.Path(new() { Cutter = Driven.Cutter, Feed = 1, PlungeFeed = 1, StepDown = Depth, StepOver = 2, Clearance = 20 }, Room, 0, -Depth, 0).Where(m => m.Kind != MotionKind.Rapid).Sum(m => m.Length), 6);

    private static readonly Region Room = new(Shapes.Rectangle(default, 40, 30, 3.5));
    private static ImmutableArray<Motion> Walls() => Finished(new Work.Walls(Room, 0, -Depth, 0));
}
