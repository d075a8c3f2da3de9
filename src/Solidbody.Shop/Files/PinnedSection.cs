using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Materials;
using Solidbody.Reading;

namespace Solidbody.Shop.Files;

/// <summary>The list <c>[[pinned]]</c>: settings the person holds a cutter to. What the machine cannot do at all is refused here; whether cutter and wood bear it is the plan's to say.</summary>
/// <remarks>A list of its own, not keys of the cutter: a setting found good was found good in one wood and one kind of pass.</remarks>
static class PinnedSection
{
    const string AnyWood = "any", BothPasses = "both";

    static readonly ImmutableArray<(string, Pass?)> Passes = [(BothPasses, null), ("roughing", Pass.Roughing), ("finishing", Pass.Finishing)];

    public static PinnedFeeds Read(TableReader pinned, ImmutableArray<Cutter> cutters, Machine machine, HashSet<(string, string?, Pass?)> seen)
    {
        var wood = pinned.Word("wood", [AnyWood, .. Woods.All.Select(w => w.Key)], AnyWood, "the wood it holds for");
        var result = new PinnedFeeds
        {
            Cutter = pinned.Text("cutter", 30, null, "name of a cutter on the rack"),
            Wood = wood == AnyWood ? null : wood,
            Pass = pinned.Choice("pass", Passes, BothPasses, "the passes it holds for"),
            SpindleSpeed = pinned.TurningIfGiven("spindle_speed", 100, 60000, "within what the spindle turns; one for all passes"),
            Feed = pinned.SpeedIfGiven("feed", 1, 30000, "within what the axes feed"),
            ChipLoad = pinned.LengthIfGiven("chip_load", 0.001, 2, "feed a tooth; with a feed beside it the spindle speed follows"),
            StepDown = pinned.LengthIfGiven("step_down", 0.02, 150, "deepest pass, at most the flutes; of a drill its peck"),
            StepOver = pinned.LengthIfGiven("step_over", 0.02, 60, "between roughing passes of a flat cutter, at most 0.45 of its diameter"),
        };
        if (pinned.IsSound) RefuseMisfits(pinned, result, cutters, machine);
        if (pinned.IsSound && !seen.Add((result.Cutter, result.Wood, result.Pass)))
            pinned.Refuse("cutter", $"\"{result.Cutter}\" is pinned twice for the same wood and passes", "once each", "make one entry of the two");
        return result;
    }

    static void RefuseMisfits(TableReader pinned, PinnedFeeds p, ImmutableArray<Cutter> cutters, Machine machine)
    {
        if (cutters.FirstOrDefault(c => c.Name == p.Cutter) is not { } cutter)
        {
            var near = NearestWord.To(p.Cutter, cutters.Select(c => c.Name));
            pinned.Refuse("cutter", $"no cutter is called \"{p.Cutter}\"", string.Join(", ", cutters.Select(c => c.Name)), near is null ? "name a cutter of [[cutters]]" : $"did you mean \"{near}\"?");
            return;
        }
        if (p is { SpindleSpeed: null, Feed: null, ChipLoad: null, StepDown: null, StepOver: null })
            pinned.Refuse("cutter", "this entry pins nothing", "spindle_speed, feed, chip_load, step_down or step_over", "add one of them, or remove the entry");
        if (cutter.Kind == CutterKind.Drill && p.Pass is not null)
            pinned.Refuse("pass", "a drill has no roughing and finishing passes", "no `pass` for a drill", "remove it");
        RefuseSteps(pinned, p, cutter);
        RefuseSpeeds(pinned, p, cutter, machine);
    }

    static void RefuseSteps(TableReader pinned, PinnedFeeds p, Cutter cutter)
    {
        if (p.StepDown > cutter.FluteLength)
            pinned.Refuse("step_down", $"the step-down is {pinned.Show(p.StepDown.Value)}", $"at most {pinned.Show(cutter.FluteLength)}, the flutes of {cutter.Name}", "pin less, or nothing");
        if (p.StepOver is not { } over) return;
        var most = PinnedFeeds.WidestStepOver * cutter.Diameter;
        if (!cutter.IsFlat || p.Pass == Pass.Finishing)
            pinned.Refuse("step_over", "only the roughing passes of a flat cutter have a step-over to pin", "no `step_over` here", "remove it");
        else if (over > most)
            pinned.Refuse("step_over", $"the step-over is {pinned.Show(over)}", $"at most {pinned.Show(most)}: passes further apart leave wood in corners", "pin less, or nothing");
    }

    static void RefuseSpeeds(TableReader pinned, PinnedFeeds p, Cutter cutter, Machine machine)
    {
        var fastest = cutter.Kind == CutterKind.Drill ? machine.FeedMostZ : machine.FeedMostXY;
        if (p is { SpindleSpeed: not null, Feed: not null, ChipLoad: not null })
            pinned.Refuse("chip_load", "spindle speed, feed and chip load are pinned at once", "any two of them: the third follows", "remove one");
        else if (p.Pass is not null && (p.SpindleSpeed is not null || p is { Feed: not null, ChipLoad: not null }))
            pinned.Refuse("pass", "a spindle speed is pinned for one kind of pass, but a program turns at one speed", "no `pass` beside a spindle speed, or beside feed and chip load together", "remove `pass`, or the speed");
        else if (p.SpindleSpeed is { } turns && (turns < machine.SpindleSpeedLeast || turns > machine.SpindleSpeedMost))
            pinned.Refuse("spindle_speed", $"the spindle speed is {Turning(turns)}", $"{Turning(machine.SpindleSpeedLeast)} to {Turning(machine.SpindleSpeedMost)}, what the spindle turns", "pin one the spindle has");
        else if (p.Feed > fastest)
            pinned.Refuse("feed", $"the feed is {Feed(p.Feed.Value)}", $"at most {Feed(fastest)}, what the axes feed", "pin a slower one");
        else if (p is { Feed: { } feed, ChipLoad: { } chip } && feed / (chip * cutter.Flutes) is var asked && (asked < machine.SpindleSpeedLeast || asked > machine.SpindleSpeedMost))
            pinned.Refuse("chip_load", $"feed and chip load ask for {Turning(asked)}",
                $"{pinned.Show(feed / (machine.SpindleSpeedMost * cutter.Flutes))} to {pinned.Show(feed / (machine.SpindleSpeedLeast * cutter.Flutes))} at this feed, from what the spindle turns", "pin a chip load in that range");
        else if (p is { SpindleSpeed: { } speed, ChipLoad: { } load } && speed * load * cutter.Flutes > fastest)
            pinned.Refuse("chip_load", $"spindle speed and chip load ask for a feed of {Feed(speed * load * cutter.Flutes)}",
                $"at most {pinned.Show(fastest / (speed * cutter.Flutes))} at this speed, from what the axes feed", "pin a smaller chip load, or a slower spindle");
    }

    static string Turning(double turns) => Quantity.Turning.Show(Math.Round(turns * 60, 1));
    static string Feed(double feed) => Quantity.Speed.Show(Math.Round(feed * 60, 1));
}
