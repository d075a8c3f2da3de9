using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Machining.Feeds;
using Solidbody.Machining.Toolpaths;
using Solidbody.Materials;
using Solidbody.Programs;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>Plans one part: outline cutter → blank → jobs a side → cutters and order → screws → laying → set-ups.</summary>
internal sealed class PartPlanner(Part part, InstrumentDefinition definition, ShopDefinition shop)
{
    private readonly List<Finding> findings = [];
    private readonly Machine machine = shop.Machine;
    /// <summary>How deep the dowel holes go below the spoilboard, mm; known once the first side is planned.</summary>
    private double dowelDepth;

    /// <summary>A fretboard has all its features on one face; body and neck are turned over.</summary>
    private ImmutableArray<Side> Sides => part.Name == "fretboard" ? [Side.Front] : [Side.Front, Side.Back];
    private bool TurnsOver => Sides.Length > 1;
    /// <summary>Screws would stand in the way of a board that is all surface.</summary>
    private bool Taped => !TurnsOver && shop.HoldDowns.Tape;

    public Plan Plan()
    {
        if (part.Name == "neck" && definition.Headstock is { Angle: > 0, Scarf: not null }) return new([], [PlanFindings.Scarfed(part.Name)]);
        var rack = new CutterRack(shop);
        var heads = Taped ? 0 : shop.HoldDowns.ScrewHeadHeight;
        var overshoot = Math.Min(PlanPractice.Overshoot, machine.SpoilboardAllowance);
        var thick = Blank.Of(part, 0, shop.HoldDowns, Blank.Waste.Usual).Box;
        var outline = OutlineCut.Of(part, thick.Thickness, rack, heads, overshoot, TurnsOver);
        if (outline.Cutters.IsEmpty)
        {
            findings.Add(CutterFindings.NoOutlineCutter($"{part.Name}, outline", thick.Thickness + overshoot + heads + PlanPractice.ColletRoom, rack.Flat));
            return new([], [.. findings]);
        }
        if (outline.FrontDepth > 0) findings.Add(PlanFindings.OutlineInHalves(part.Name, outline.FrontDepth));

        var laid = LayOut(outline, thick);
        if (laid.Laying.Slack < 0) findings.Add(BedFindings.DoesNotFit(part.Name, laid.Blank, laid.Laying, machine));
        if (!Taped && laid.Screws.Length < 4) findings.Add(BedFindings.NoPlaceForScrews(part.Name, laid.Screws.Length, shop.HoldDowns.ScrewMargin));
        if (TurnsOver) findings.Add(FlipPlay(laid.Blank));
        var setUps = laid.Sides.Select(side => SetUpOf(side, laid)).ToImmutableArray();
        return new(setUps, [.. laid.Sides.SelectMany(s => s.Jobs.Findings), .. findings]);
    }

    private Finding FlipPlay(Blank blank)
    {
        var (play, baseline) = (shop.HoldDowns.DowelPlay, blank.First.DistanceTo(blank.Second));
        var furthest = Math.Max(part.Bounds.X1 - (blank.First.X + blank.Second.X) / 2, (blank.First.X + blank.Second.X) / 2 - part.Bounds.X0);
        return BedFindings.FlipPlay(part.Name, 2 * TwoPins.MostOffset(play, baseline, furthest), play, baseline);
    }

    private sealed record PlannedSide(LaidPart Laid, SideJobs Jobs)
    {
        public static PlannedSide Of(LaidPart laid, ShopDefinition shop, bool sparing)
        {
            var jobs = new SideJobs(laid, shop, sparing);
            jobs.AddFeatures();
            return new(laid, jobs);
        }
    }

    /// <summary>A blank with a given waste, as it lies on the bed.</summary>
    private sealed record LaidOut(OutlineCut Outline, ImmutableArray<PlannedSide> Sides, Blank Blank, Laying Laying, ImmutableArray<Point2> Screws);

    /// <summary>The usual waste, a narrower groove, more waste, less: the first that lies on the bed and can be screwed down.</summary>
    private LaidOut LayOut(OutlineCut outline, Box3 faces)
    {
        // Features know the blank by its two faces only, which no amount of waste moves.
        ImmutableArray<PlannedSide> Planned(bool sparing) => [.. Sides.Select(up => PlannedSide.Of(new LaidPart(part, up, faces), shop, sparing))];
        var usual = Planned(false);
        (OutlineCut Outline, Blank.Waste Waste)[] ways = [(outline, Blank.Waste.Usual), (outline.Narrow, Blank.Waste.Usual), (outline.Narrow, Blank.Waste.Ample), (outline.Narrow, Blank.Waste.Least)];
        var tried = new List<LaidOut>();
        foreach (var way in ways.Distinct())
        {
            tried.Add(Lay(way.Outline, way.Waste, way.Waste == Blank.Waste.Least ? Planned(true) : usual));
            if (IsGood(tried[^1])) return tried[^1];
        }
        return tried.FirstOrDefault(t => t.Laying.Slack >= 0) ?? tried.MaxBy(t => t.Laying.Slack)!;
    }

    private bool IsGood(LaidOut laid) => laid.Laying.Slack >= 0 && (Taped || laid.Screws.Length >= 4);

    /// <summary>Blank and laying for a given amount of waste. The groove is taken from the widest outline cutter, whichever is settled on.</summary>
    private LaidOut Lay(OutlineCut outline, Blank.Waste waste, ImmutableArray<PlannedSide> sides)
    {
        var blank = Blank.Of(part, outline.Cutters.Max(c => c.Diameter), shop.HoldDowns, waste);
        // Both sides lie by the same dowels, so one laying must serve the part and its mirror image.
        var box = blank.Box.Plan;
        Point2[] corners = [new(box.X0, box.Y0), new(box.X1, box.Y0), new(box.X1, box.Y1), new(box.X0, box.Y1)];
        var mouths = sides.SelectMany(s => s.Jobs.Mouths).ToList();
        ImmutableArray<Point2> BothWays(IEnumerable<Point2> points) => [.. points.SelectMany(p => new[] { p, new(p.X, -p.Y) })];
        var footprint = new Footprint(corners, BothWays(part.Outline.Loops.SelectMany(l => l.Points)),
            Math.Max(outline.Cutters.Max(c => c.Radius) + PlanPractice.RoughLeave, sides.Max(s => s.Jobs.Reach)))
        { Reached = BothWays(mouths.SelectMany(m => m.Loops[0].Points).Concat(TurnsOver ? [blank.First, blank.Second] : [])) };
        var sweep = Math.Max(outline.Cutters.Max(c => c.Diameter) + PlanPractice.RoughLeave, sides.Max(s => s.Jobs.Sweep));
        return new(outline, sides, blank, BedPlacement.Find(footprint, machine),
            Taped ? [] : ScrewPlanner.Of(part, blank, shop.HoldDowns, sweep, mouths));
    }

    private PlannedSetUp SetUpOf(PlannedSide side, LaidOut laidOut)
    {
        var (laid, blank, laying, screws, outline) = (side.Laid, laidOut.Blank, laidOut.Laying, laidOut.Screws, laidOut.Outline);
        var (first, last) = (laid.Up == Sides[0], laid.Up == Sides[^1]);
        if (TurnsOver && first) dowelDepth = side.Jobs.AddRegistration(blank, shop.HoldDowns);
        var way = WayRound(shop.Outline.Direction);
        (double Foot, double Top)? skin = last && shop.Outline.Hold == OutlineHold.Skin ? SkinPlanner.Of(laid, outline.FrontDepth, shop.Outline.Skin) : null;
        ImmutableArray<Bridge> bridges = last && skin is null ? TabPlanner.Of(laid, outline.FrontDepth, shop.Outline, laidOut.Sides[0].Jobs.BelowEdge) : [];
        if (last) side.Jobs.AddOutline(outline.Cutters, skin?.Top ?? (outline.FrontDepth > 0 ? outline.FrontDepth - PlanPractice.HalvesOverlap : side.Jobs.Lowest), bridges, way);
        else if (outline.FrontDepth > 0) side.Jobs.AddOutline(outline.Cutters, laid.Top - outline.FrontDepth, [], way);
        if (last) findings.AddRange(GrainFindings.Of(laid, way));
        var placement = laid.Place(laying.Turn, blank.First);
        var zeroOnBed = laying.OnBed(laid.Point(blank.First));
        var (travelX, travelY) = ((machine.BedX - machine.TravelX) / 2 - zeroOnBed.X, (machine.BedY - machine.TravelY) / 2 - zeroOnBed.Y);
        var lowest = -Math.Max(machine.SpoilboardAllowance, dowelDepth);
        var heads = screws.IsEmpty ? 0 : shop.HoldDowns.ScrewHeadHeight;
        var clearance = laid.Top + heads + PlanPractice.ClearanceOverAll;
        var name = TurnsOver ? $"{part.Name}-{(laid.Up == Side.Front ? "front" : "back")}" : part.Name;
        if (clearance > lowest + machine.TravelZ) findings.Add(BedFindings.TooHigh(name, clearance, lowest + machine.TravelZ));

        var operations = Operations(side, clearance);
        if (last && skin is null && bridges.Length < PlanPractice.TabsLeast) findings.Add(PlanFindings.FewTabs(part.Name, bridges.Length));
        if (bridges.Length > 0) findings.AddRange(HoldOf(bridges, operations, laid));
        var words = new SheetWords(part, definition, shop, laid, blank, placement, zeroOnBed, Sides);
        var setUp = new SetUp
        {
            Name = name,
            Part = part.Name,
            Title = words.Title,
            Order = 0,   // the planner's, which knows the other parts
            Blank = blank.Box,
            Placement = placement,
            Zero = words.Zero,
            ClearanceHeight = clearance,
            BedAllowance = machine.SpoilboardAllowance,
            Travel = new(travelX, travelY, lowest, travelX + machine.TravelX, travelY + machine.TravelY, lowest + machine.TravelZ),
            Bed = new(-zeroOnBed.X, -zeroOnBed.Y, machine.BedX - zeroOnBed.X, machine.BedY - zeroOnBed.Y),
            HoldDown = words.HoldDown(screws.Length),
            KeepOuts = [.. screws.Select((s, i) => ScrewRoom(i + 1, placement.ToWork(new(s.X, s.Y, 0)).Plan, laid.Top))],
            Registration = TurnsOver
                ? [Dowel("dowel 1", blank.First, dowelDepth), Dowel("dowel 2", blank.Second, dowelDepth)]
                : [],
            Tabs = [.. bridges.Select(b => TabOf(b, laid))],
            Skin = skin is var (foot, upper) ? SkinOf(foot, upper, laid) : null,
            Before = words.Before,
            After = words.After(last, skin is not null),
            Checks = words.Checks(operations.Select(o => o.Cutter).Distinct()),
        };
        return new(setUp, operations);
    }

    private ImmutableArray<Operation> Operations(PlannedSide side, double clearance)
    {
        var wood = WoodFor();
        var driven = new Dictionary<Cutter, DrivenCutter>();
        var roughing = new RoomRoughing(Driven, clearance);
        CutFeeds Usual(Cutter cutter) => FeedPlanner.For(cutter, wood, shop);
        var change = machine.ToolChanger ? PlanPractice.ChangerChange : PlanPractice.HandChange;
        IReadOnlyList<Job> Ordered(IReadOnlyList<Job> jobs, IReadOnlyDictionary<Job, Cutter> cutters) =>
            JobOrder.Of(jobs, cutters, job => job.Steps(cutters[job], Usual(cutters[job])).FirstOrDefault() is { } step ? WorkPlace.Of(step.Work) : default, change, machine.RapidXY);
        var (jobs, cutters) = new RestMachining(CutterCover.Of(side.Jobs.Jobs), Usual, roughing, Ordered, change).Of(side.Jobs.Jobs);
        var operations = ImmutableArray.CreateBuilder<Operation>();
        var judged = new HashSet<Cutter>();
        foreach (var job in Ordered(jobs, cutters))
        {
            var cutter = cutters[job];
            if (cutter.Kind != CutterKind.Drill && judged.Add(cutter))
                findings.AddRange(FeedChecks.Of(Driven(cutter), FeedPlanner.Roughing(Driven(cutter)), Pass.Roughing, $"cutter {cutter.Name} in {wood.Wood}"));
            foreach (var step in job.Steps(cutter, Usual(cutter))) operations.Add(Made(job, step, cutter));
        }
        return operations.ToImmutable();

        DrivenCutter Driven(Cutter cutter)
        {
            if (!driven.TryGetValue(cutter, out var own)) driven[cutter] = own = new(cutter, wood, shop);
            return own;
        }

        Operation Made(Job job, Job.Step step, Cutter cutter)
        {
            var name = step.Suffix.Length == 0 ? job.Name : $"{job.Name}, {step.Suffix}";
            if (cutter.Kind == CutterKind.Drill) return new(name, job.Stage, cutter, Usual(cutter), step.Work);
            var own = Driven(cutter);
            if (step is not { Skin: null, StepDown: null, Work: Work.Clear clear })
                return new(name, job.Stage, cutter, FeedsOf(step, own, $"{part.Name}, {name}, cutter {cutter.Name}"), step.Work) { Driven = own };
            var way = step.RestAfter is { } wider ? roughing.Rest(cutter, clear, wider)! : roughing.Quickest(cutter, clear);
            return new(way.Work.IsNarrow ? $"{name} in narrow bites" : name, job.Stage, cutter, way.Feeds, way.Work) { Driven = own };
        }
    }

    /// <summary>The tabs against the heaviest cut round the outline.</summary>
    private IEnumerable<Finding> HoldOf(ImmutableArray<Bridge> tabs, ImmutableArray<Operation> operations, LaidPart laid)
    {
        if (operations.Where(o => o.Stage == Stage.Outline).MaxBy(o => o.Feeds.Force) is not { } freeing) yield break;
        var (length, thickness) = (tabs[0].Length, TabPlanner.Thickness(laid, shop.Outline));
        var hold = TabHold.Of(tabs.Length, length, thickness, freeing.Cutter, freeing.Feeds.Force, AcrossTheGrain.Tension(definition.WoodOf(part.Wood)?.Gravity?.Value));
        if (hold.Safety < TabFindings.Safe) yield return TabFindings.Weak(part.Name, hold, tabs.Length, length, thickness);
    }

    private CutFeeds FeedsOf(Job.Step step, DrivenCutter driven, string place)
    {
        if (step.Skin is not { } skin) return FeedPlanner.Roughing(driven, step.StepDown);
        var feeds = FeedPlanner.Finishing(driven, skin.Depth, skin.Width);
        findings.AddRange(FeedChecks.Of(driven, feeds, Pass.Finishing, place));
        if (ShankCheck.Of(driven.Cutter, skin.Depth, place) is { } rubbing) findings.Add(rubbing);
        return feeds;
    }

    private WoodOnHand WoodFor()
    {
        if (part.Name != "body" || definition.Body.Top is not { } top || top.Wood == part.Wood) return OnHand(part.Wood);
        // A cutter meets two woods in one pass: the smaller chip and the greater force of both.
        WoodOnHand[] both = [OnHand(part.Wood), OnHand(top.Wood)];
        return both.MaxBy(w => w.Force.Most)! with { ChipLoad = both.Min(w => w.ChipLoad) };
    }

    private WoodOnHand OnHand(string wood)
    {
        if (shop.Woods.FirstOrDefault(w => w.Wood == wood) is { } own)
        {
            findings.AddRange(FeedChecks.Of(own).Except(findings));
            return own;
        }
        if (FeedFindings.WoodNotOnHand(part.Name, wood) is var missing && !findings.Contains(missing)) findings.Add(missing);
        return new(wood, 1);
    }

    private RegistrationHole Dowel(string name, Point2 at, double depth) => new(name, at, shop.HoldDowns.DowelDiameter, depth);

    private KeepOut ScrewRoom(int number, Point2 at, double top)
    {
        var r = shop.HoldDowns.ScrewHead / 2;
        return new($"screw {number}", new(at.X - r, at.Y - r, 0, at.X + r, at.Y + r, top + shop.HoldDowns.ScrewHeadHeight));
    }

    private static OutlineWay WayRound(OutlineDirection direction) => direction switch
    {
        OutlineDirection.Climb => OutlineWay.Climb,
        OutlineDirection.Conventional => OutlineWay.Conventional,
        OutlineDirection.WithGrain => OutlineWay.WithGrain,
        _ => throw new ArgumentOutOfRangeException(nameof(direction), direction, "Not a way round an outline."),
    };

    private static Skin SkinOf(double foot, double top, LaidPart laid) =>
        new(Math.Min(laid.PartZ(foot), laid.PartZ(top)), Math.Max(laid.PartZ(foot), laid.PartZ(top)));

    /// <summary>In the part frame the tab is all the wood left standing: from its upper face down to its foot.</summary>
    private static Tab TabOf(Bridge bridge, LaidPart laid)
    {
        var (a, b) = (laid.PartZ(bridge.Foot), laid.PartZ(bridge.Top));
        return new(laid.Point(bridge.At), bridge.Length, Math.Min(a, b), Math.Max(a, b));
    }
}
