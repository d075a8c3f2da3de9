using System.Globalization;
using Solidbody.Shop;

namespace Solidbody.Machining.Feeds;

/// <summary>The settings next to given ones that are in range, in words for a remedy. Each figure is rounded to the safe side.</summary>
internal sealed class NearestSettings(DrivenCutter driven, CutFeeds feeds, Pass pass)
{
    /// <summary>Step-downs below this are no setting, mm.</summary>
    private const double LeastStep = 0.05;

    public double Angle { get; } = Engagement.Angle(feeds.Bite.Width, driven.EdgeDiameter);

    /// <summary>A slower feed in the same bite, or a shallower bite at the same feed: inside power, push, bending and stress.</summary>
    public string Gentler()
    {
        var ways = new List<string>();
        var slower = driven.FeedWithin(feeds.Bite.Depth, Angle, pass);
        if (slower < feeds.Feed && driven.Chip(Angle, slower) >= driven.LeastChip) ways.Add(Say($"pin a feed of at most {slower * 60:0} mm/min"));
        if (Deepest(depth => driven.Bears(depth, Angle, feeds.Feed, pass)) is { } step) ways.Add(Say($"{(ways.Count == 0 ? "pin " : "")}a step-down of at most {step:0.00} mm"));
        if (ways.Count == 0) ways.Add("pin nothing here");
        return string.Join(", or ", ways.Append("set the cutter out less, or use a stouter one"));
    }

    /// <summary>The deepest bite, shallower than this one, for which something holds, by halving; whole hundredths of a millimetre.</summary>
    private double? Deepest(Func<double, bool> holds)
    {
        var (good, bad) = (0.0, feeds.Bite.Depth);
        while (bad - good > LeastStep / 100)
        {
            var middle = (good + bad) / 2;
            if (holds(middle)) good = middle; else bad = middle;
        }
        var step = Math.Floor(good * 100) / 100;
        return step >= LeastStep ? step : null;
    }

    /// <summary>A chip thicker by a factor: a faster feed, a slower spindle, fewer flutes; or a shallower bite, where its depth is what slows the feed.</summary>
    public string Thicker(double by)
    {
        var ways = new List<string>();
        var (feed, turns, depth) = (Math.Ceiling(feeds.Feed * by * 60 - 1e-6) / 60, Math.Floor(feeds.SpindleSpeed / by * 60) / 60, feeds.Bite.Depth);
        if (feed <= driven.Machine.FeedMostXY && driven.Bears(depth, Angle, feed, pass)) ways.Add(Say($"pin a feed of at least {feed * 60:0} mm/min"));
        if (turns >= driven.Machine.SpindleSpeedLeast && driven.Bears(depth, Angle, feeds.Feed, pass, feeds.SpindleSpeed / turns)) ways.Add(Say($"pin a spindle speed of at most {turns * 60:0} turns a minute"));
        if ((int)(driven.Cutter.Flutes / by) is var flutes && flutes >= 1 && flutes < driven.Cutter.Flutes && driven.Bears(depth, Angle, feeds.Feed, pass, (double)driven.Cutter.Flutes / flutes))
            ways.Add(Say($"use a cutter with at most {flutes} flute{(flutes == 1 ? "" : "s")}"));
        var free = driven.Pinned(pass, p => p.Feed) is null && driven.Pinned(pass, p => p.ChipLoad) is null;
        if (free && Deepest(d => driven.FeedWithin(d, Angle, pass) >= feed) is { } step) ways.Add(Say($"pin a step-down of at most {step:0.00} mm"));
        if (ways.Count == 0) ways.Add("no setting of this machine gives that chip: use a thinner cutter, or a slower spindle");
        return string.Join(", or ", ways);
    }

    /// <summary>A chip thinner by a factor under 1: a slower feed, or a faster spindle.</summary>
    public string Thinner(double by)
    {
        var (feed, turns) = (Math.Floor(feeds.Feed * by * 60 + 1e-6) / 60, Math.Ceiling(feeds.SpindleSpeed / by * 60 - 1e-6) / 60);
        var slower = Say($"pin a feed of at most {feed * 60:0} mm/min, or lower the wood's chip_load in the shop file");
        return turns <= driven.Machine.SpindleSpeedMost ? Say($"{slower}, or pin a spindle speed of at least {turns * 60:0} turns a minute") : slower;
    }

    /// <summary>A spindle speed at which the rim runs no faster than it may.</summary>
    public string SlowerRim()
    {
        var turns = Math.Floor(FeedPractice.CuttingSpeedMost / CuttingPhysics.CuttingSpeed(driven.Cutter.Diameter, 1) * 60) / 60;
        return turns >= driven.Machine.SpindleSpeedLeast
            ? Say($"pin a spindle speed of at most {turns * 60:0} turns a minute")
            : Say($"use a cutter of at most {FeedPractice.CuttingSpeedMost / (Math.PI * driven.Machine.SpindleSpeedLeast):0.0} mm: the spindle turns no slower");
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
