using Solidbody.Geometry;
using Solidbody.Shop;

namespace Solidbody.Machining.Feeds;

/// <summary>Feeds and speeds from chip load, held inside what cutter, spindle and axes can do.</summary>
public static class FeedPlanner
{
    /// <summary>How a cutter is driven through a wood in a shop, roughing.</summary>
    /// <param name="cutter">The cutter; a drill is driven by feed a turn, all others by chip load.</param>
    /// <param name="wood">The wood as the shop works it: its chip-load factor and cutting force.</param>
    public static CutFeeds For(Cutter cutter, WoodOnHand wood, ShopDefinition shop)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        return cutter.Kind == CutterKind.Drill ? Drilling(cutter, wood, shop) : Roughing(new(cutter, wood, shop));
    }

    /// <summary>In full-width cuts.</summary>
    /// <param name="stepDown">Their depth, mm; null for as deep as all limits allow.</param>
    public static CutFeeds Roughing(DrivenCutter driven, double? stepDown = null)
    {
        ArgumentNullException.ThrowIfNull(driven);
        return Of(driven, new(stepDown ?? driven.StepDown, driven.EdgeDiameter), Pass.Roughing);
    }

    /// <summary>In deep cuts that nowhere engage more of the rim than an angle.</summary>
    /// <param name="driven">The cutter.</param>
    /// <param name="depth">Of a level, mm; &gt; 0.</param>
    /// <param name="angle">Radians, in (0, π].</param>
    public static CutFeeds Narrow(DrivenCutter driven, double depth, double angle)
    {
        ArgumentNullException.ThrowIfNull(driven);
        return Of(driven, new(depth, Engagement.Width(angle, driven.EdgeDiameter)), Pass.Roughing);
    }

    /// <summary>In a finishing pass: the tip gives way so little that it does not show.</summary>
    /// <param name="driven">The cutter.</param>
    /// <param name="depth">All that is to be finished, mm; taken in as many equal levels as the flutes, or a pinned step-down, ask for, and more where one pass would have to be so slow that it burns.</param>
    /// <param name="width">The skin roughing left, mm; &gt; 0.</param>
    public static CutFeeds Finishing(DrivenCutter driven, double depth, double width)
    {
        ArgumentNullException.ThrowIfNull(driven);
        var skin = Math.Min(width, driven.EdgeDiameter);
        var angle = Engagement.Angle(skin, driven.EdgeDiameter);
        double Chip(int levels) => driven.Chip(angle, driven.FeedAt(depth / levels, angle, Pass.Finishing));
        var pinned = driven.Pinned(Pass.Finishing, p => p.StepDown);
        var levels = Math.Max(1, (int)Math.Ceiling(depth / (pinned ?? driven.Cutter.FluteLength) - 1e-9));
        // A shallower pass helps only where its depth, not the machine, is what slows the feed.
        while (pinned is null && Chip(levels) < driven.LeastChip && Chip(levels) < Chip(levels + 1)) levels++;
        return Of(driven, new(depth / levels, skin), Pass.Finishing);
    }

    private static CutFeeds Of(DrivenCutter driven, Bite bite, Pass pass)
    {
        var angle = Engagement.Angle(bite.Width, driven.EdgeDiameter);
        var feed = driven.FeedAt(bite.Depth, angle, pass);
        return new()
        {
            SpindleSpeed = driven.SpindleSpeed,
            Feed = feed,
            PlungeFeed = DrivenCutter.WholeMillimetresAMinute(Math.Min(driven.Machine.FeedMostZ, FeedPractice.Plunge * feed)),
            StepDown = bite.Depth,
            StepOver = driven.Pinned(Pass.Roughing, p => p.StepOver) ?? FeedPractice.StepOver * driven.Cutter.Diameter,
            Bite = bite,
            ChipLoad = driven.ChipLoad(feed),
            Chip = driven.Chip(angle, feed),
            Power = driven.Power(bite.Depth, angle, feed),
            Force = driven.Force(bite.Depth, angle, feed),
            Bending = driven.Bending(bite.Depth, angle, feed),
        };
    }

    private static CutFeeds Drilling(Cutter drill, WoodOnHand wood, ShopDefinition shop)
    {
        ArgumentNullException.ThrowIfNull(wood);
        ArgumentNullException.ThrowIfNull(shop);
        double? Pinned(Func<PinnedFeeds, double?> value) => shop.PinnedFor(drill, wood.Wood, null, value);
        var turns = SpindleSpeeds.ForDrill(drill, Pinned(p => p.SpindleSpeed), shop.Machine);
        var wanted = Pinned(p => p.ChipLoad) is { } chip ? chip * drill.Flutes : FeedPractice.DrillFeedPerTurn * drill.Diameter;
        var feed = DrivenCutter.WholeMillimetresAMinute(Math.Min(shop.Machine.FeedMostZ, Pinned(p => p.Feed) ?? wanted * turns));
        var peck = Pinned(p => p.StepDown) ?? FeedPractice.Peck * drill.Diameter;
        var load = CuttingPhysics.ChipLoad(feed, turns, drill.Flutes);
        return new()
        {
            SpindleSpeed = turns,
            Feed = feed,
            PlungeFeed = feed,
            StepDown = peck,
            StepOver = drill.Diameter,
            Bite = new(peck, drill.Diameter),
            ChipLoad = load,
            Chip = load,
            Power = 0,
            Force = 0,
            Bending = 0,
        };
    }
}
