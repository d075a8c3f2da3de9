using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Materials;

namespace Solidbody.Machining.Feeds;

/// <summary>What can be wrong with feeds and speeds.</summary>
internal static class FeedFindings
{
    public static Finding ChipTooThin(Cutter cutter, CutFeeds feeds, ChipLoadRange usual) => new("FEED-01", Severity.Warns,
        $"cutter {cutter.Name}", Say($"{feeds.ChipLoad:0.000} mm a tooth at {feeds.SpindleSpeed * 60:0} turns a minute"),
        Say($"at least {usual.Least:0.000} mm a tooth"), ChipLoads.Source,
        "use a cutter with fewer flutes, or give the machine a lower spindle speed")
    { Title = "The chip is so thin that the cutter rubs and burns" };

    public static Finding ChipTooThick(Cutter cutter, CutFeeds feeds, ChipLoadRange usual) => new("FEED-02", Severity.Warns,
        $"cutter {cutter.Name}", Say($"{feeds.ChipLoad:0.000} mm a tooth at {feeds.SpindleSpeed * 60:0} turns a minute"),
        Say($"at most {usual.Most:0.000} mm a tooth"), ChipLoads.Source, "lower the wood's chip load in the shop file")
    { Title = "The chip is thicker than is usual for this cutter" };

    public static Finding WoodNotOnHand(string part, string wood) => new("FEED-03", Severity.Warns,
        part, $"wood {wood}", "a wood of the shop file", "your shop file",
        $"add {wood} to the shop file's woods; until then it is cut with the middle of the usual chip loads")
    { Title = "The shop file does not list this wood" };

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
