using System.Globalization;
using System.Text.RegularExpressions;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;
using Solidbody.Machining.Planning;
using Solidbody.Shop;

namespace Solidbody.Machining.Tests.Feeds;

public class FeedChecksTests
{
    private const double Depth = 12, Skin = 0.3;
    private static readonly Cutter Wide = Samples.Cutter("flat 12") with { Name = "wide 60", Diameter = 60, ShankDiameter = 12, Flutes = 1 };
    private static readonly WoodOnHand Maple = new("sugar-maple", 1);

    private static ShopDefinition ShopWith(PinnedFeeds pinned, double watts = 1000) => Samples.Shop with
    { Cutters = [.. Samples.Shop.Cutters, Wide], Machine = Samples.Machine with { SpindlePower = watts }, Pinned = [pinned] };

    private static (List<Finding> Findings, CutFeeds Feeds) Checked(ShopDefinition shop, string cutter, Pass pass)
    {
        var driven = new DrivenCutter(shop.Cutters.Single(c => c.Name == cutter), Maple, shop);
        var feeds = pass == Pass.Roughing ? FeedPlanner.Roughing(driven) : FeedPlanner.Finishing(driven, Depth, Skin);
        return ([.. FeedChecks.Of(driven, feeds, pass, "here")], feeds);
    }

    private static PinnedFeeds Pin(string cutter, double? turns = null, double? feed = null, double? chip = null, double? down = null) =>
        new() { Cutter = cutter, SpindleSpeed = turns, Feed = feed, ChipLoad = chip, StepDown = down };

    public static TheoryData<string, string, Pass, PinnedFeeds, double, Severity> Spoilt => new()
    {   // code; cutter; pass; what the person pins; spindle, W
        { "FEED-01", "flat 6", Pass.Roughing, Pin("flat 6", chip: 0.02), 1000, Severity.Warns },
        { "FEED-01", "flat 12", Pass.Roughing, Pin("flat 12", down: 20), 1000, Severity.Warns },
        { "FEED-02", "flat 3", Pass.Roughing, Pin("flat 3", chip: 0.2, down: 0.5), 1000, Severity.Warns },
        { "FEED-04", "flat 12", Pass.Roughing, Pin("flat 12", feed: 60, down: 10), 150, Severity.Warns },
        { "FEED-05", "flat 3", Pass.Roughing, Pin("flat 3", turns: 300, feed: 60, down: 13), 1000, Severity.Warns },
        { "FEED-05", "flat 6", Pass.Finishing, Pin("flat 6", feed: 60, turns: 150), 1000, Severity.Warns },
        { "FEED-06", "flat 3", Pass.Roughing, Pin("flat 3", turns: 140, feed: 60, down: 14), 1000, Severity.Stops },
        { "FEED-07", "flat 12", Pass.Roughing, Pin("flat 12", feed: 60, down: 20), 1000, Severity.Warns },
        { "FEED-08", "wide 60", Pass.Roughing, Pin("wide 60", turns: 400), 1000, Severity.Stops },
        { "FEED-09", "flat 6", Pass.Finishing, Pin("flat 6", turns: 180, feed: 5), 1000, Severity.Warns },
        { "FEED-10", "flat 6", Pass.Roughing, Pin("flat 6", turns: 390, chip: 0.2), 1000, Severity.Warns },
    };

    [Theory, MemberData(nameof(Spoilt))]
    public void A_pinned_setting_out_of_range_is_found_and_every_remedy_is_in_range(string code, string cutter, Pass pass, PinnedFeeds pinned, double watts, Severity severity)
    {
        var (findings, feeds) = Checked(ShopWith(pinned, watts), cutter, pass);
        var found = findings.SingleOrDefault(f => f.Code == code);
        Assert.True(found is not null, $"found only: {string.Join("; ", findings)}");
        Assert.Equal(severity, found.Severity);
        Assert.DoesNotContain(Checked(ShopWith(new() { Cutter = cutter }, watts), cutter, pass).Findings, f => f.Code == code);
        var asItIs = Pin(cutter, feeds.SpindleSpeed, pinned.Feed is null && pinned.ChipLoad is null ? null : feeds.Feed, null, pass == Pass.Roughing ? feeds.StepDown : null);
        var ways = Ways(found.Remedy, asItIs).ToList();
        Assert.NotEmpty(ways);
        Assert.All(ways, way => Assert.DoesNotContain(Checked(ShopWith(way, watts), cutter, pass).Findings, f => f.Code == code));
    }

    /// <summary>The settings a remedy names, each in its own entry.</summary>
    private static IEnumerable<PinnedFeeds> Ways(string remedy, PinnedFeeds now)
    {
        double? Figure(string what) => Regex.Match(remedy, what + " of at (?:most|least) ([0-9.]+)") is { Success: true } m ? double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) : null;
        if (Figure("feed") is { } feed) yield return now with { Feed = feed / 60 };
        if (Figure("step-down") is { } down) yield return now with { StepDown = down };
        if (Figure("spindle speed") is { } turns) yield return now with { SpindleSpeed = turns / 60 };
        if (Figure("chip load") is { } chip) yield return now with { Feed = null, ChipLoad = chip };
    }

    [Fact]
    public void A_cutting_force_outside_what_is_known_is_noted()
    {
        Assert.Equal("FEED-11", Assert.Single(FeedChecks.Of(new WoodOnHand("ebony", 1, new(20, 90)))).Code);
        Assert.Empty(FeedChecks.Of(new WoodOnHand("ebony", 1, new(10, 60))));
        Assert.Empty(FeedChecks.Of(new WoodOnHand("ebony", 1)));
    }

    [Fact]
    public void A_plan_says_what_is_wrong_with_pinned_settings_and_uses_them()
    {
        var pinned = Samples.Shop with { Pinned = [Pin("flat 12", feed: 60, down: 20)] };
        var plan = Planner.Plan(SampleParts.Design, pinned);
        Assert.Contains(plan.Findings, f => f.Code == "FEED-07");
        Assert.DoesNotContain(Planner.Plan(SampleParts.Design, Samples.Shop).Findings, f => f.Code == "FEED-07");
        Assert.Contains(plan.SetUps.SelectMany(s => s.Operations), o => o.Cutter.Name == "flat 12" && o.Feeds.StepDown == 20);
    }

    [Fact]
    public void The_most_particular_entry_rules()
    {
        var shop = Samples.Shop with
        {
            Pinned = [Pin("flat 6", down: 1), Pin("flat 6", down: 2) with { Wood = "sugar-maple" }, Pin("flat 6", down: 3) with { Pass = Pass.Roughing }, Pin("flat 6", down: 4) with { Wood = "red-alder" }],
        };
        double Down(string wood) => new DrivenCutter(Samples.Cutter("flat 6"), new(wood, 1), shop).StepDown;
        Assert.Equal((2, 4, 3), (Down("sugar-maple"), Down("red-alder"), Down("ebony")));
    }

    [Fact]
    public void A_shank_along_the_wall_above_short_flutes_is_found_and_its_remedies_hold()
    {
        var cutter = Samples.Cutter("flat 6");   // flutes 30, shank 6
        var found = ShankCheck.Of(cutter, 34.95, "here");
        Assert.Equal("CUTTER-09", found?.Code);
        Assert.Contains("flutes of 35.0 mm", found!.Remedy, StringComparison.Ordinal);
        Assert.Null(ShankCheck.Of(cutter with { FluteLength = 35 }, 34.95, "here"));
        Assert.Null(ShankCheck.Of(cutter with { ShankDiameter = 5.9 }, 34.95, "here"));
        Assert.Null(ShankCheck.Of(cutter, 30, "here"));
    }
}
