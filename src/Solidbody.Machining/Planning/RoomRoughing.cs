using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;
using Solidbody.Machining.Making;
using Solidbody.Machining.Timing;
using Solidbody.Machining.Toolpaths;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>How a room is roughed in the fewest minutes: in shallow rings whose first one is a slot, or in deep levels with narrow bites. What is worked out once is remembered.</summary>
/// <param name="driven">Cutters in the part's wood.</param>
/// <param name="clearance">Travel height, laid frame.</param>
internal sealed class RoomRoughing(Func<Cutter, DrivenCutter> driven, double clearance)
{
    /// <summary>Most of the rim that stands in wood in narrow bites: at a quarter turn the chip is thickest where a tooth leaves the wood, and one tooth of two cuts at a time.
    /// Common practice, no source.</summary>
    public const double Engagement = Math.PI / 2;

    /// <param name="Work">What is cut, and how.</param>
    /// <param name="Feeds">What that asks for.</param>
    /// <param name="Seconds">What it takes.</param>
    internal sealed record Way(Work.Clear Work, CutFeeds Feeds, double Seconds);

    private readonly Dictionary<(Cutter, Work.Clear), Way> known = [];

    /// <summary>The quicker way.</summary>
    /// <param name="cutter">Flat.</param>
    /// <param name="work">The room, in rings.</param>
    public Way Quickest(Cutter cutter, Work.Clear work)
    {
        if (!known.TryGetValue((cutter, work), out var way)) known[(cutter, work)] = way = Compared(driven(cutter), work);
        return way;
    }

    private Way Compared(DrivenCutter cutter, Work.Clear work)
    {
        var rings = Timed(cutter, work, FeedPlanner.Roughing(cutter));
        if (Levels(Depth(work), rings.Feeds.StepDown) == 1) return rings;
        var rooms = EngagedClearing.Rooms(work.Region, cutter.Cutter.Radius + work.WallLeave, cutter.Cutter, Engagement);
        return rooms.IsEmpty || Narrow(cutter, work, rooms) is var narrow && narrow.Seconds >= rings.Seconds ? rings : narrow;
    }

    /// <summary>What a wider cutter left, taken by a thinner one; null where it has no way in.</summary>
    /// <param name="cutter">The thinner one.</param>
    /// <param name="work">The room.</param>
    /// <param name="wider">The cutter that was there before, with the same skins.</param>
    public Way? Rest(Cutter cutter, Work.Clear work, Cutter wider) =>
        EngagedClearing.Rest(work.Region, work.WallLeave, cutter, wider, Engagement) is { } rooms ? Narrow(driven(cutter), work, rooms) : null;

    /// <summary>With as many levels as make it quickest.</summary>
    private Way Narrow(DrivenCutter cutter, Work.Clear work, ImmutableArray<EngagedRoom> rooms)
    {
        var narrow = work with { Rooms = rooms, Engagement = Engagement };
        var fewest = Levels(Depth(work), cutter.Pinned(Pass.Roughing, p => p.StepDown) ?? cutter.Cutter.FluteLength);
        var most = Math.Max(fewest, Levels(Depth(work), cutter.StepDown) - 1);
        return Enumerable.Range(fewest, most - fewest + 1).Select(levels => Timed(cutter, narrow, FeedPlanner.Narrow(cutter, Depth(work) / levels, Engagement))).MinBy(way => way.Seconds)!;
    }

    private static double Depth(Work.Clear work) => work.Top - work.Floor - work.FloorLeave;

    private static int Levels(double depth, double stepDown) => Math.Max(1, (int)Math.Ceiling(depth / stepDown - 1e-9));

    private Way Timed(DrivenCutter cutter, Work.Clear work, CutFeeds feeds) =>
        new(work, feeds, MotionTime.Seconds(OperationPath.Of(new("", Stage.Rooms, cutter.Cutter, feeds, work), clearance, cutter.Machine), cutter.Machine));
}
