using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Programs;

namespace Solidbody.Proof.Tests;

/// <summary>An index that lies: set-ups, tabs, dowels and program entries that do not fit the texts, the part or the shop.</summary>
public sealed class IndexTests
{
    [Fact]
    public void Set_ups_of_a_part_share_one_blank() => Told(1, s => s with { Blank = s.Blank with { X1 = 96 } }, "PROOF-17", "1.0");

    [Fact]
    public void A_blank_holds_its_part() => Told(s => s with { Blank = s.Blank with { X0 = 0.5 } }, "PROOF-18", "0.5");

    [Theory] // Too low and it would be cut through the bed, too high and the part would not come free.
    [InlineData(-0.4)]
    [InlineData(0.4)]
    public void A_blank_lies_on_the_spoilboard(double by) =>
        Told(1, s => s with { Placement = s.Placement with { Origin = s.Placement.Origin with { Z = by } } }, "PROOF-19", FormattableString.Invariant($"its lower face at Z {by:0.00}"));

    [Fact]
    public void A_dowel_meets_its_hole_after_the_flip()
    {
        static SetUp Doweled(SetUp s) => s with { Registration = [new("dowel 1", new(-8, 0), 6, 8)] };
        Assert.DoesNotContain(Prove(Doweled).Findings, f => f.Code == "PROOF-20");
        Assert.Equal("PROOF-20", Prove(s => Doweled(s) with { Placement = s.Placement with { Origin = s.Placement.Origin with { X = 70 + (s.Order - 1) * 0.2 } } }).Findings.First(f => f.Code == "PROOF-20").Code);
        // Off the axis of the flip it comes to lie on the other side.
        Assert.StartsWith("10.0", Prove(s => s with { Registration = [new("dowel 1", new(-8, 5), 6, 8)] }).Findings.First(f => f.Code == "PROOF-20").Figure, StringComparison.Ordinal);
        Assert.StartsWith("1.0", Prove(s => s with { Registration = [new("dowel 1", new(-2, 0), 6, 8)] }).Findings.First(f => f.Code == "PROOF-20").Figure, StringComparison.Ordinal);
    }

    [Theory] // The tip goes 8 mm into the bed at x = −8; a millimetre beside the stated place, or not at all.
    [InlineData(-8, 6, 6, null)]
    [InlineData(-8.2, 6, 6, "its middle 0.2")]
    [InlineData(-8, 5, 6, "5.0")]
    [InlineData(40, 6, 6, "no hole")]
    public void A_dowels_hole_is_cut_where_it_is_said_to_be(double x, double drilled, double said, string? figure)
    {
        var setUps = BlockJob.SetUps();
        var entry = setUps[0].Programs[1] with { File = "dowels.nc", Cutter = Cutters.Drill(drilled, 118) };
        var dowels = ImmutableArray.Create(new RegistrationHole("dowel 1", new(-8, 0), said, 12));
        setUps = [setUps[0] with { Registration = dowels, Travel = setUps[0].Travel with { Z0 = -20 }, Programs = setUps[0].Programs.Add(entry with { Bounds = entry.Bounds with { Z0 = -20 } }) }, setUps[1] with { Registration = dowels }];
        var texts = BlockJob.Texts();
        texts["dowels.nc"] = new ProgramText(30).Over(70 + x, 70).Down(x > 0 ? 22 : -8).End();
        var told = BlockJob.Prove(texts, setUps, 0.4).Findings.Where(f => f.Code == "PROOF-21").ToArray();
        if (figure is null) Assert.Empty(told);
        else Assert.StartsWith(figure, Assert.Single(told).Figure, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("S18000", "S12000", "12000 turns a minute")]
    [InlineData("F1200", "F1300", "1300 mm/min")]
    [InlineData("G1 Z8", "G1 Z-1.5", "0.50 mm outside it")]
    public void The_text_does_what_the_index_says(string was, string now, string figure)
    {
        var texts = BlockJob.Texts();
        var file = was[0] == 'G' ? BlockJob.DrillFile : BlockJob.PocketFile;
        if (was[0] == 'G') BlockProofTests.Edit(texts, file, lines => Array.FindLastIndex(lines, l => l.StartsWith("G1 Z", StringComparison.Ordinal)), _ => now + " F300");
        else texts[file] = texts[file].Replace(was, now, StringComparison.Ordinal);
        var finding = BlockJob.Prove(texts, cell: 0.4).Findings.First(f => f.Code == "PROOF-22");
        Assert.StartsWith(figure, finding.Figure, StringComparison.Ordinal);
        Assert.Contains(file + " line ", finding.Place, StringComparison.Ordinal);
    }

    [Fact]
    public void The_machine_can_do_what_the_text_says()
    {
        var able = new ProofSettings { Cell = 0.4, SpindleSpeedLeast = 100, SpindleSpeedMost = 300, FeedMostXY = 20, FeedMostZ = 20 };
        Assert.DoesNotContain(Settings(able).Findings, f => f.Code == "PROOF-23");
        Assert.Contains(Settings(able with { SpindleSpeedMost = 299 }).Findings, f => f.Code == "PROOF-23" && f.Limit.Contains("17940", StringComparison.Ordinal));
        Assert.Contains(Settings(able with { FeedMostXY = 19 }).Findings, f => f.Code == "PROOF-23" && f.Figure.Contains("in the plan", StringComparison.Ordinal));
        Assert.Contains(Settings(able with { FeedMostZ = 4 }).Findings, f => f.Code == "PROOF-23" && f.Figure.Contains("300 mm/min along Z", StringComparison.Ordinal));
    }

    [Fact]
    public void The_cutter_is_the_racks_and_comes_from_its_own_place()
    {
        var rack = BlockJob.SetUps().SelectMany(s => s.Programs).Select(p => p.Cutter).Distinct().ToImmutableArray();
        var settings = new ProofSettings { Cell = 0.4, Rack = rack };
        Assert.DoesNotContain(Settings(settings).Findings, f => f.Code == "PROOF-22");
        Assert.Contains("other measures", Settings(settings with { Rack = [.. rack.Select(c => c with { Diameter = c.Diameter + 0.1 })] }).Findings.First(f => f.Code == "PROOF-22").Figure, StringComparison.Ordinal);
        Assert.Contains("no such cutter", Settings(settings with { Rack = [rack[0]] }).Findings.First(f => f.Code == "PROOF-22").Figure, StringComparison.Ordinal);
        Assert.Contains("no T word", Settings(settings with { ToolChanger = true }).Findings.First(f => f.Code == "PROOF-22").Figure, StringComparison.Ordinal);
        var texts = BlockJob.Texts();
        texts[BlockJob.DrillFile] = texts[BlockJob.DrillFile].Replace("M3 S18000", "T1 M6\nG0 Z30\nM3 S18000", StringComparison.Ordinal);
        var told = Settings(settings with { ToolChanger = true }, texts).Findings.First(f => f.Code == "PROOF-22" && f.Place == BlockJob.DrillFile);
        Assert.Equal(("T1", "T2"), (told.Figure, told.Limit));
    }

    [Fact]
    public void A_tab_list_excuses_no_more_than_tabs()
    {
        Tab honest = new(new(40, 25), 8, -3, 0);
        Assert.Contains("together", Tabs([honest with { Length = 15 }, honest with { Length = 15 }], "PROOF-25"), StringComparison.Ordinal);
        Assert.Contains("long", Tabs([honest with { Length = 22 }], "PROOF-25"), StringComparison.Ordinal);
        Assert.Contains("thick", Tabs([honest with { Z0 = -12 }], "PROOF-25"), StringComparison.Ordinal);
        Assert.Contains("off the outline", Tabs([honest with { At = new(40, 20) }], "PROOF-25"), StringComparison.Ordinal);
        // What no sound tab excuses is left over: here the two real tabs.
        Assert.NotEmpty(Tabs([honest with { Length = 22 }], "PROOF-02"));
    }

    [Fact]
    public void A_tab_that_is_cut_away_is_told()
    {
        Tab gone = new(new(79.999, 0), 8, -3, 0);
        Assert.StartsWith("0.0", Tabs([new(new(40, 25), 8, -3, 0), new(new(40, -25), 8, -3, 0), gone], "PROOF-26"), StringComparison.Ordinal);
    }

    [Fact]
    public void An_outline_that_is_not_cut_through_leaves_wood()
    {
        var texts = BlockJob.Texts();
        texts[BlockJob.OutlineFile] = texts[BlockJob.OutlineFile].Replace("Z-0.2", "Z0.3", StringComparison.Ordinal);
        Assert.Contains(BlockJob.Prove(texts, cell: 0.4).Findings, f => f.Code == "PROOF-02" && f.Place.Contains("outline", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_in_a_packet_goes_unproved()
    {
        var texts = BlockJob.Texts();
        texts["programs/9-more.nc"] = "";
        var setUps = BlockJob.SetUps();
        setUps = setUps.Add(setUps[0] with { Part = "blok", Order = 3 });
        var told = BlockJob.Prove(texts, setUps, 0.4).Findings.Where(f => f.Code == "PROOF-27").Select(f => f.Place).ToArray();
        Assert.Equal(2, told.Length);
        Assert.Contains("blok", told[0], StringComparison.Ordinal);
        Assert.Equal("programs/9-more.nc", told[1]);
    }

    private static ProofResult Prove(Func<SetUp, SetUp> change) => BlockJob.Prove(null, [.. BlockJob.SetUps().Select(change)], 0.4);
    private static ProofResult Settings(ProofSettings settings, Dictionary<string, string>? texts = null) =>
        Prover.Prove(BlockJob.Design, BlockJob.SetUps(), texts ?? BlockJob.Texts(), settings, null, TestContext.Current.CancellationToken);
    private static string Tabs(ImmutableArray<Tab> tabs, string code) => Prove(s => s with { Tabs = s.Order == 1 ? [] : tabs }).Findings.First(f => f.Code == code).Figure;
    private static void Told(int index, Func<SetUp, SetUp> change, string code, string figure) => Told(s => s.Order == index + 1 ? change(s) : s, code, figure);
    private static void Told(Func<SetUp, SetUp> change, string code, string figure)
    {
        var finding = Prove(change).Findings.First(f => f.Code == code);
        Assert.Equal(Severity.Stops, finding.Severity);
        Assert.StartsWith(figure, finding.Figure, StringComparison.Ordinal);
    }
}
