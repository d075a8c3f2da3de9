using Solidbody.Findings;
using Solidbody.Materials;
using Solidbody.Shop;

namespace Solidbody.Machining.Feeds;

/// <summary>Holds settings against every limit, worked out or pinned alike.</summary>
internal static class FeedChecks
{
    /// <summary>Share by which a figure may pass its limit: rounding to whole mm/min and turns a minute.</summary>
    private const double Slack = 1e-3;

    /// <param name="driven">The cutter.</param>
    /// <param name="feeds">How it is driven, and in which bite.</param>
    /// <param name="pass">What for.</param>
    /// <param name="place">Where the finding is said to be.</param>
    public static IEnumerable<Finding> Of(DrivenCutter driven, CutFeeds feeds, Pass pass, string place)
    {
        var nearest = new NearestSettings(driven, feeds, pass);
        var (bite, angle) = (feeds.Bite, nearest.Angle);
        var rim = CuttingPhysics.CuttingSpeed(driven.Cutter.Diameter, feeds.SpindleSpeed);
        if (rim > FeedPractice.CuttingSpeedMost * (1 + Slack)) yield return FeedFindings.RimTooFast(place, rim, feeds.SpindleSpeed, nearest.SlowerRim());
        if (feeds.Power > driven.PowerLimit * (1 + Slack)) yield return FeedFindings.TooMuchPower(place, bite, feeds.Power, driven.PowerLimit, nearest.Gentler());
        if (feeds.Force > driven.Machine.SideForce * (1 + Slack)) yield return FeedFindings.PushesTooHard(place, bite, feeds.Force, driven.Machine.SideForce, nearest.Gentler());
        if (feeds.Bending > DrivenCutter.BendLimit(pass) * (1 + Slack)) yield return FeedFindings.BendsTooMuch(place, bite, feeds.Bending, DrivenCutter.BendLimit(pass), nearest.Gentler());
        if (driven.Stress(bite.Depth, angle, feeds.Feed) is var stress && stress > driven.StressLimit * (1 + Slack))
            yield return FeedFindings.Breaks(place, bite, stress, driven.StressLimit, nearest.Gentler());
        if (driven.Pinned(pass, p => p.ChipLoad) is { } pinned && driven.Pinned(pass, p => p.Feed) is null
            && CuttingPhysics.Feed(pinned, driven.SpindleSpeed, driven.Cutter.Flutes) > driven.Machine.FeedMostXY * (1 + Slack))
            yield return FeedFindings.AxesTooSlow(place, pinned, feeds.ChipLoad, driven.Machine.FeedMostXY, Math.Floor(feeds.ChipLoad * 1e4) / 1e4);
        var wide = bite.Width >= driven.EdgeDiameter / 2;
        if (wide && feeds.ChipLoad < driven.Usual.Least * (1 - Slack)) yield return FeedFindings.ChipTooThin(place, feeds.ChipLoad, feeds.SpindleSpeed, driven.Usual, nearest.Thicker(driven.Usual.Least / feeds.ChipLoad));
        else if (feeds.Chip < driven.LeastChip * (1 - Slack)) yield return FeedFindings.Rubs(place, bite, feeds.Chip, driven.LeastChip, nearest.Thicker(driven.LeastChip / feeds.Chip));
        if (feeds.ChipLoad > driven.Usual.Most * (1 + Slack)) yield return FeedFindings.ChipTooThick(place, feeds.ChipLoad, feeds.SpindleSpeed, driven.Usual, nearest.Thinner(driven.Usual.Most / feeds.ChipLoad));
    }

    /// <summary>Whether a wood's cutting force is one that solid wood is known to have.</summary>
    public static IEnumerable<Finding> Of(WoodOnHand wood)
    {
        if (wood.Force.Least < CuttingForces.Known.Least || wood.Force.Most > CuttingForces.Known.Most) yield return FeedFindings.UnknownForce(wood.Wood, wood.Force);
    }
}
