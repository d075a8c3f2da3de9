using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Machining.Planning;
using Solidbody.Shop;

namespace Solidbody.Machining.Tests.Planning;

public class PlannerTests
{
    private static readonly Plan Plan = Planner.Plan(SampleParts.Design, Samples.Shop);
    private static PlannedSetUp Named(string name) => Plan.SetUps.Single(s => s.SetUp.Name == name);

    [Fact]
    public void Nothing_stops_the_sample() => Assert.Empty(Plan.Findings.Where(f => f.Severity == Severity.Stops));

    [Fact]
    public void Set_ups_run_in_order_front_before_back() =>
        Assert.Equal(["body-front", "body-back", "neck-front", "neck-back", "fretboard"], Plan.SetUps.OrderBy(s => s.SetUp.Order).Select(s => s.SetUp.Name));

    [Fact]
    public void Registration_comes_first_and_the_outline_last() => Assert.All(Plan.SetUps, s =>
    {
        Assert.Equal(s.Operations.Select(o => o.Stage == Stage.Registration).OrderDescending(), s.Operations.Select(o => o.Stage == Stage.Registration));
        Assert.Equal(s.Operations.Select(o => o.Stage == Stage.Outline).Order(), s.Operations.Select(o => o.Stage == Stage.Outline));
    });

    [Fact]
    public void Only_first_sides_bore_dowel_holes_and_only_last_sides_free_the_part()
    {
        Assert.All(Plan.SetUps, s => Assert.Equal(s.SetUp.Name.EndsWith("front", StringComparison.Ordinal), s.Operations.Any(o => o.Stage == Stage.Registration)));
        Assert.All(Plan.SetUps, s => Assert.Equal(!s.SetUp.Name.EndsWith("front", StringComparison.Ordinal), s.Operations.Any(o => o.Stage == Stage.Outline)));
    }

    /// <summary>The sample with a neck pocket whose floor is 16 mm deep near its end; its mouth's corners lie outside.</summary>
    private static Plan Sloping(double degrees, ShopDefinition shop)
    {
        Part Leaning(Part p) => p with { Pockets = [.. p.Pockets.Select(k => k.Name == "neck pocket" ? k with { Region = new(Shapes.Rectangle(new(420, 0), 86, 56, 6)), Floor = new SlopedHeight(-16, 450, Math.Tan(double.DegreesToRadians(degrees))) } : k)] };
        return Planner.Plan(SampleParts.Design with { Parts = [.. SampleParts.Design.Parts.Select(Leaning)] }, shop);
    }

    private static ShopDefinition Without(params string[] cutters) => Samples.Shop with { Cutters = [.. Samples.Shop.Cutters.Where(c => !cutters.Contains(c.Name))] };

    private static string CutterOf(Plan plan, string operation) => plan.SetUps.SelectMany(s => s.Operations).Single(o => o.Name == operation).Cutter.Name;

    [Theory] // A strip of 0.05 mm: 11.4 mm wide at 0.5°, 5.7 at 1°, 2.8 at 2°; a hair less where the sides taper.
    [InlineData(0.5, "flat 6")]
    [InlineData(0.9, "flat 6")]
    [InlineData(1.0, "flat 3")]
    [InlineData(1.8, "flat 3")]
    [InlineData(-0.4, "flat 6")]
    [InlineData(-0.6, "flat 3")]   // its end wall lies downhill
    public void A_sloping_floor_is_finished_by_the_widest_cutter_that_leaves_little(double degrees, string cutter)
    {
        var plan = Sloping(degrees, Samples.Shop);
        Assert.DoesNotContain(plan.Findings, f => f.Severity == Severity.Stops);
        Assert.Equal(cutter, CutterOf(plan, "neck pocket, floor"));
        Assert.Equal(cutter, CutterOf(plan, "neck pocket, foot of the walls"));
        Assert.NotEqual("flat 3", plan.SetUps[0].Operations.First(o => o.Name.StartsWith("neck pocket, rough", StringComparison.Ordinal)).Cutter.Name);
        Assert.Contains(plan.SetUps[0].SetUp.After, line => line.Contains("neck pocket's depth at both ends", StringComparison.Ordinal));
        Assert.DoesNotContain(Plan.SetUps.SelectMany(p => p.SetUp.After), line => line.Contains("both ends", StringComparison.Ordinal));
        var names = plan.SetUps[0].Operations.Select(o => o.Name).ToList();
        Assert.True(names.IndexOf("neck pocket, walls") < names.IndexOf("neck pocket, floor"));
        Assert.True(names.IndexOf("neck pocket, floor") < names.IndexOf("neck pocket, foot of the walls"));
    }

    [Fact]
    public void A_floor_too_steep_for_the_rack_is_refused_with_the_cutter_that_would_do_and_the_wedge()
    {
        var plan = Sloping(1.5, Without("flat 3"));
        var finding = Assert.Single(plan.Findings, f => f.Code == "PLAN-01");
        Assert.Equal(Severity.Stops, finding.Severity);
        // 3 mm × tan 1.5° = 0.0786 beside the slope; 2 × 0.05 / tan 1.5° = 3.8 mm.
        Assert.Contains("0.079 mm would stand along its walls, left by flat 6", finding.Figure, StringComparison.Ordinal);
        Assert.Contains("a flat cutter of 3.8 mm or less", finding.Remedy, StringComparison.Ordinal);
        Assert.Contains("mm at its thick end", finding.Remedy, StringComparison.Ordinal);
        Assert.DoesNotContain(plan.SetUps.SelectMany(s => s.Operations), o => o.Name.StartsWith("neck pocket", StringComparison.Ordinal));
        Assert.DoesNotContain(Plan.Findings, f => f.Code == "PLAN-01");
    }

    [Fact]
    public void A_floor_steeper_than_a_ramp_offers_the_wedge_alone()
    {
        var finding = Assert.Single(Sloping(3, Samples.Shop).Findings, f => f.Code == "PLAN-01");
        Assert.StartsWith("keep the floor level", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_neck_that_goes_through_the_body_is_refused_whole_with_a_way_out()
    {
        var definition = SampleParts.Design.Definition;
        var through = SampleParts.Design with { Definition = definition with { Neck = definition.Neck with { Joint = JointKind.Through, Core = new(60) } } };
        Assert.DoesNotContain(Plan.Findings, f => f.Code == "PLAN-06");
        var plan = Planner.Plan(through, Samples.Shop);
        Assert.Empty(plan.SetUps);
        Assert.Contains("joint = \"set\"", Assert.Single(plan.Findings, f => f is { Code: "PLAN-06", Severity: Severity.Stops }).Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_top_is_glued_on_before_the_blank_is_planed()
    {
        var definition = SampleParts.Design.Definition;
        var capped = SampleParts.Design with { Definition = definition with { Body = definition.Body with { Top = new("black-walnut", 6, Solidbody.Materials.Grain.Flat, 2) } } };
        var plan = Planner.Plan(capped, Samples.Shop);
        var words = plan.SetUps.Single(s => s.SetUp.Name == "body-front").SetUp.Before;
        var (glued, planed) = (words.ToList().FindIndex(w => w.StartsWith("Glue the top on", StringComparison.Ordinal)), words.ToList().FindIndex(w => w.StartsWith("Plane the blank", StringComparison.Ordinal)));
        Assert.True(glued >= 0 && glued < planed);
        Assert.Contains("off its back only, so that the top stays 6.0 mm thick", words[planed], StringComparison.Ordinal);
        // The cutters meet its wood too: one the shop does not know is asked for.
        Assert.DoesNotContain(Plan.Findings, f => f.Code == "FEED-03" && f.Figure.Contains("black-walnut", StringComparison.Ordinal));
        Assert.Contains(plan.Findings, f => f.Code == "FEED-03" && f.Figure.Contains("black-walnut", StringComparison.Ordinal));
    }

    /// <summary>The sample with a ledge round its body's front, so wide and 5 mm deep, in place of the rounded edge.</summary>
    private static Design Ledged(double width)
    {
        Part Cut(Part p) => p.Name != "body" ? p : p with { Edges = [.. p.Edges.Where(e => e.From != Side.Front)], Ledges = [new("front binding ledge", Side.Front, Offsets.Of(p.Outline, -width)[0], p.Bounds.Z1 - 5)] };
        return SampleParts.Design with { Parts = [.. SampleParts.Design.Parts.Select(Cut)] };
    }

    [Fact]
    public void A_ledge_is_cut_round_its_wall_after_the_rooms_with_the_widest_flat_cutter()
    {
        var operations = Planner.Plan(Ledged(2), Samples.Shop).SetUps.Single(s => s.SetUp.Name == "body-front").Operations.ToList();
        var ledge = operations.Where(o => o.Name.StartsWith("front binding ledge", StringComparison.Ordinal)).ToList();
        Assert.Equal(["front binding ledge, rough", "front binding ledge, finish"], ledge.Select(o => o.Name));
        Assert.All(ledge, o => Assert.True(o.Stage == Stage.Edges && o.Cutter.IsFlat));
        var (rough, finish) = (Assert.IsType<Work.Outline>(ledge[0].Work), Assert.IsType<Work.FinishOutline>(ledge[1].Work));
        Assert.Equal((0.3, 5, 5), (rough.Leave, rough.Top - rough.Bottom, finish.Top - finish.Bottom));
        Assert.True(operations.FindIndex(o => o.Stage == Stage.Rooms) < operations.IndexOf(ledge[0]));
    }

    [Fact]
    public void A_ledge_wider_than_the_cutter_is_cut_in_laps()
    {
        var thin = Samples.Shop with { Cutters = [.. Samples.Shop.Cutters.Where(c => !c.IsFlat || c.Diameter < 7)] };
        var widest = thin.Cutters.Where(c => c.IsFlat).Max(c => c.Diameter);
        var laps = Planner.Plan(Ledged(10), thin).SetUps.Single(s => s.SetUp.Name == "body-front").Operations.Where(o => o.Name.StartsWith("front binding ledge", StringComparison.Ordinal)).Select(o => o.Work).OfType<Work.Outline>().Select(w => w.Leave).ToList();
        Assert.Equal(laps.OrderDescending(), laps);
        Assert.True(laps[0] + widest >= 10 && laps.Zip(laps.Skip(1)).All(l => l.First - l.Second < widest));
    }

    [Fact]
    public void A_skin_stands_on_a_ledge_of_the_face_that_lies_down()
    {
        var plan = Planner.Plan(Ledged(2), Samples.Shop with { Outline = new(Hold: OutlineHold.Skin, Skin: 0.6) });
        var skin = plan.SetUps.Single(s => s.SetUp.Name == "body-back").SetUp.Skin!;
        Assert.Equal(-5.6, skin.Z0, 1e-9);
        Assert.Equal(0, skin.Z1, 1e-9);
    }

    [Fact]
    public void A_ledge_with_a_hollow_no_cutter_enters_is_refused()
    {
        Part Hollow(Part p) => p.Name != "body" ? p : p with { Ledges = [new("front binding ledge", Side.Front, Offsets.Difference(Offsets.Of(p.Outline, -2)[0], new(Shapes.Capsule(p.Bounds.Plan.Centre, new(p.Bounds.X1, p.Bounds.Plan.Centre.Y), 0.5)))[0], p.Bounds.Z1 - 5)] };
        var plan = Planner.Plan(SampleParts.Design with { Parts = [.. SampleParts.Design.Parts.Select(Hollow)] }, Samples.Shop);
        Assert.DoesNotContain(Planner.Plan(Ledged(2), Samples.Shop).Findings, f => f.Code == "CUTTER-10");
        Assert.Equal(Severity.Stops, Assert.Single(plan.Findings, f => f.Code == "CUTTER-10").Severity);
    }

    [Fact]
    public void A_room_inside_a_ledge_starts_on_the_ledges_floor()
    {
        var names = Named("body-back").Operations.Select(o => o.Name).ToList();
        Assert.True(names.IndexOf("cover ledge, walls") < names.FindIndex(n => n.StartsWith("control cavity, rough", StringComparison.Ordinal)));
        // Thickness 44, ledge 3 deep: its floor lies at 41 above the bed; the cavity's at 6.
        var cavity = (Work.Clear)Named("body-back").Operations.Single(o => o.Name.StartsWith("control cavity, rough", StringComparison.Ordinal)).Work;
        Assert.Equal((41, 6), (cavity.Top, cavity.Floor));
    }

    [Fact]
    public void A_fit_gets_a_spring_pass_and_other_rooms_none()
    {
        int Passes(string name) => ((Work.Walls)Named("body-front").Operations.Single(o => o.Name == name).Work).SpringPasses;
        Assert.Equal(1, Passes("neck pocket, walls"));
        Assert.Equal(0, Passes("pickup, walls"));
    }

    [Fact]
    public void A_channel_as_wide_as_a_cutter_is_one_slot_along_its_middle()
    {
        var channel = (Work.Channel)Named("neck-front").Operations.Single(o => o.Name == "rod channel").Work;
        Assert.Equal(-20, channel.A.X, 2);
        Assert.Equal(380, channel.B.X, 2);
        Assert.Equal(0, channel.A.Y, 2);
    }

    [Fact]
    public void The_neck_is_longer_than_the_travel_and_lies_turned_the_same_on_both_sides()
    {
        var (front, back) = (Named("neck-front").SetUp, Named("neck-back").SetUp);
        Assert.NotEqual(0, front.Placement.Turn);
        Assert.Equal(front.Placement.Turn, back.Placement.Turn);
        Assert.Equal(front.Bed, back.Bed);
    }

    [Fact]
    public void Turning_over_keeps_the_dowels_where_they_are() => Assert.All((string[])["body", "neck"], part =>
    {
        var (front, back) = (Named($"{part}-front").SetUp, Named($"{part}-back").SetUp);
        Assert.Equal(2, front.Registration.Length);
        foreach (var hole in front.Registration)
        {
            var before = front.Placement.ToWork(new(hole.Centre.X, hole.Centre.Y, 0));
            var after = back.Placement.ToWork(new(hole.Centre.X, hole.Centre.Y, 0));
            Assert.True(before.Plan.DistanceTo(after.Plan) < 1e-9);
        }
        var first = front.Placement.ToWork(new(front.Registration[0].Centre.X, 0, 0));
        Assert.True(first.Plan.Length < 1e-9);
    });

    // Plane geometry of two pins (TwoPinsTests): the part lies wholly between its dowels, so the plain shift c/2 rules, twice over.
    [Theory]
    [InlineData(0.05, Severity.Notes)]
    [InlineData(0.4, Severity.Warns)]
    public void The_flip_may_be_off_by_the_dowels_play(double play, Severity severity)
    {
        var plan = Planner.Plan(SampleParts.Design, Samples.Shop with { HoldDowns = Samples.Shop.HoldDowns with { DowelPlay = play } });
        var said = plan.Findings.Where(f => f.Code == "BED-04").ToList();
        Assert.Equal(2, said.Count);
        Assert.All(said, f => Assert.Equal(severity, f.Severity));
        Assert.All(said, f => Assert.Contains(FormattableString.Invariant($"up to {play:0.00} mm"), f.Figure, StringComparison.Ordinal));
    }

    [Fact]
    public void Dowel_holes_lie_outside_the_part_and_say_how_deep_they_go() => Assert.All(Plan.SetUps.SelectMany(s => s.SetUp.Registration.Select(h => (s, h))), x =>
    {
        var part = SampleParts.Design.Part(x.s.SetUp.Part);
        Assert.True(part.Outline.SignedDistance(x.h.Centre) > x.h.Diameter / 2 + 6);
        Assert.InRange(x.h.Depth, Samples.Shop.HoldDowns.DowelDepth, Samples.Shop.HoldDowns.DowelDepth + 3);
    });

    [Fact]
    public void Tabs_stand_on_the_outline_in_wood_that_the_other_side_left()
    {
        // The front edge is rounded by 6: the body's tabs begin above that.
        var tabs = Named("body-back").SetUp.Tabs;
        Assert.InRange(tabs.Length, 4, 6);
        Assert.All(tabs, t => { Assert.Equal(-9, t.Z0, 9); Assert.Equal(0, t.Z1, 9); Assert.InRange(Math.Abs(SampleParts.Body.Outline.SignedDistance(t.At)), 0, 0.01); });
        // The headstock's face is dropped by 3: its tab reaches 6 from the bed, the heel's only 3.
        Assert.Equal(-6, Named("neck-back").SetUp.Tabs.MinBy(t => t.At.X)!.Z0, 9);
        Assert.Equal(-3, Named("neck-back").SetUp.Tabs.MaxBy(t => t.At.X)!.Z0, 9);
    }

    [Fact]
    public void Screws_stand_in_the_waste_inside_the_blank() => Assert.All(Plan.SetUps.Where(s => s.SetUp.Part != "fretboard"), s =>
    {
        Assert.True(s.SetUp.KeepOuts.Length >= 4);
        var part = SampleParts.Design.Part(s.SetUp.Part);
        foreach (var screw in s.SetUp.KeepOuts)
        {
            var box = screw.Box.Plan;
            var at = s.SetUp.Placement.ToPart(new(box.Centre.X, box.Centre.Y, 0)).Plan;
            Assert.True(s.SetUp.Blank.Plan.Grown(-box.Width / 2).Contains(at));
            Assert.True(part.Outline.SignedDistance(at) > box.Width / 2 + 6);
            Assert.True(s.SetUp.ClearanceHeight > screw.Box.Z1);
        }
    });

    [Fact]
    public void Both_sides_use_the_same_screw_holes() => Assert.All((string[])["body", "neck"], part =>
    {
        Point2[] Places(string side) => [.. Named($"{part}-{side}").SetUp.KeepOuts.Select(k => k.Box.Plan.Centre).OrderBy(p => p.X).ThenBy(p => p.Y)];
        Assert.All(Places("front").Zip(Places("back")), p => Assert.True(p.First.DistanceTo(p.Second) < 1e-6));
    });

    [Fact]
    public void A_rack_without_a_ball_end_stops_with_the_way_out()
    {
        var shop = Samples.Shop with { Cutters = [.. Samples.Shop.Cutters.Where(c => c.Kind != CutterKind.BallEnd)] };
        var finding = Planner.Plan(SampleParts.Design, shop).Findings.First(f => f.Code == "CUTTER-05");
        Assert.Equal(Severity.Stops, finding.Severity);
        Assert.NotEmpty(finding.Remedy);
    }

    [Fact]
    public void A_bed_too_small_for_the_body_says_by_how_much()
    {
        var shop = Samples.Shop with { Machine = Samples.Machine with { TravelX = 300, TravelY = 300, BedX = 320, BedY = 320 } };
        Assert.Contains("mm short", Planner.Plan(SampleParts.Design, shop).Findings.First(f => f.Code == "BED-01").Figure, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_design_gives_the_same_plan() =>
        Assert.Equal(Say(Plan), Say(Planner.Plan(SampleParts.Design, Samples.Shop)));

    private static string Say(Plan plan) => string.Join("\n", plan.SetUps.SelectMany(s => s.Operations.Select(o => $"{s.SetUp.Name} {s.SetUp.Placement} {o.Name} {o.Cutter.Name} {o.Feeds}")));

    /// <summary>A ball of 0.25 mm radius 0.15 mm deep leaves a line 2·√(0.15 · 0.35) = 0.458 mm wide: closed form.</summary>
    [Theory]
    [InlineData(0.46, true)]
    [InlineData(0.45, false)]
    public void Lines_are_scribed_by_a_cutter_thin_enough_or_not_at_all(double width, bool can)
    {
        var tapered = Samples.Cutter("ball 6") with { Name = "tapered", Kind = CutterKind.TaperedBallEnd, TipRadius = 0.25, Angle = 0.1 };
        var shop = Samples.Shop with { Cutters = [.. Samples.Shop.Cutters.Where(c => c.Diameter > 1), tapered] };
        var board = SampleParts.Design.Part("fretboard");
        var scribed = board with { Slots = [.. board.Slots.Select(slot => slot with { Width = width, Depth = 0.15, Scribed = true })] };
        var plan = Planner.Plan(SampleParts.Design with { Parts = [scribed] }, shop);

        Assert.Equal(!can, plan.Findings.Any(f => f.Code == "CUTTER-08"));
        var lines = plan.SetUps.SelectMany(p => p.Operations).Where(o => o.Name == "fret lines").ToList();
        if (can) Assert.Equal("tapered", Assert.Single(lines).Cutter.Name);
        else Assert.Empty(lines);
    }

    [Fact]
    public void A_sheet_asks_only_for_what_its_set_up_has_made()
    {
        var neck = SampleParts.Design.Part("neck");
        var own = neck with
        {
            Measures =
            [
                new("tuner hole 1 from the nut", -30, 0.1, new Caliper.Thickness(new(0, 0))),
                new("tuner hole 2 from the nut", -55, 0.1, new Caliper.Thickness(new(0, 0))),
                new("tuner hole 3 from the nut", -80, 0.1, new Caliper.Thickness(new(0, 0))),
                new("heel thickness", 19, 0.1, new Caliper.Thickness(new(0, 0))),
            ],
            Holes = [.. Enumerable.Range(1, 3).Select(i => new Hole($"tuner hole {i}", Side.Front, new(-5 - 25 * i, 5), 10, 0, -15, -15, true))],
        };
        var plan = Planner.Plan(SampleParts.Design with { Parts = [own] }, Samples.Shop);
        string[] After(string name) => [.. plan.SetUps.Single(s => s.SetUp.Name == name).SetUp.Checks.Select(c => c.What).Where(w => w.StartsWith("after", StringComparison.Ordinal))];

        Assert.Contains("after: tuner hole 1 from the nut", After("neck-front"));
        Assert.DoesNotContain("after: heel thickness", After("neck-front"));
        Assert.Contains("after: heel thickness", After("neck-back"));
        Assert.DoesNotContain("after: tuner hole 1 from the nut", After("neck-back"));
        Assert.DoesNotContain("after: tuner hole 2 from the nut", After("neck-back").Concat(After("neck-front")));
    }
}
