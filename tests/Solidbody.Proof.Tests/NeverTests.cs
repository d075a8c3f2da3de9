using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Proof.Tests;

/// <summary>What must never happen on a machine, done on purpose to a sound job: each gives its one finding, with program and line.</summary>
public sealed class NeverTests
{
    [Fact]
    public void A_rapid_through_wood_is_told_with_line_and_depth()
    {
        var texts = BlockJob.Texts();
        var line = BlockProofTests.Edit(texts, BlockJob.DrillFile, lines => Array.IndexOf(lines, "G0 Z16.5"), _ => "G0 Z14");
        var finding = Found(BlockJob.Prove(texts), "PROOF-04");
        Assert.Contains($"{BlockJob.DrillFile} line {line}", finding.Place, StringComparison.Ordinal);
        Assert.StartsWith("2.0", finding.Figure, StringComparison.Ordinal);
    }

    [Fact]
    public void Leaving_the_travel_is_told() =>
        Assert.StartsWith("3.0", Found(With(0, s => s with { Travel = s.Travel with { Z1 = 27 } }), "PROOF-05").Figure, StringComparison.Ordinal);

    [Fact]
    public void Cutting_into_the_bed_is_told_but_not_for_registration_holes()
    {
        Assert.StartsWith("0.1", Found(With(1, s => s with { BedAllowance = 0.1 }), "PROOF-06").Figure, StringComparison.Ordinal);
        Assert.DoesNotContain(With(0, s => s with { BedAllowance = 0.1, Registration = [new("dowel", new(60, -12), 8, 1)] }).Findings, f => f.Code == "PROOF-06");
    }

    [Theory] // A screw's head beside the outline's path: near enough for the cutter; or, low beside the deep cut, for nothing.
    [InlineData(-12, -8, 25, true)]
    [InlineData(-12, -9.5, 25, false)]
    public void A_keep_out_is_told_when_entered(double x0, double x1, double z1, bool entered)
    {
        // The outline's path runs at x = −3 of the part, its edge at −6.
        var box = new Box3(70 + x0 + (entered ? 3 : 0), 70 - 5, 21, 70 + x1 + (entered ? 3 : 0), 70 + 5, z1);
        var findings = With(1, s => s with { KeepOuts = [new("screw 1", box)] }).Findings.Where(f => f.Code == "PROOF-07").ToArray();
        Assert.Equal(entered, findings.Length > 0);
        if (entered) Assert.Contains("screw 1", findings[0].Place, StringComparison.Ordinal);
    }

    [Fact]
    public void Feeding_with_a_standing_spindle_is_told()
    {
        var texts = BlockJob.Texts();
        BlockProofTests.Edit(texts, BlockJob.CarveFile, lines => Array.IndexOf(lines, "M3 S18000"), _ => "M5");
        Assert.Contains(BlockJob.CarveFile, Found(BlockJob.Prove(texts), "PROOF-08").Place, StringComparison.Ordinal);
    }

    [Fact]
    public void Flutes_shank_and_collet_are_told()
    {
        ProofResult Cut(Func<Cutter, Cutter> change) => With(0, s => s with { Programs = s.Programs.SetItem(0, s.Programs[0] with { Cutter = change(s.Programs[0].Cutter) }) });
        // Steps of 4 mm with edges of 3.5 mm.
        Assert.StartsWith("0.5", Found(Cut(c => c with { FluteLength = 3.5 }), "PROOF-09").Figure, StringComparison.Ordinal);
        // The through hole is 21 mm deep: a thicker shank meets its wall above 15 mm of edges.
        Assert.Contains("through hole", Found(Cut(c => c with { FluteLength = 15, ShankDiameter = 8 }), "PROOF-10").Place, StringComparison.Ordinal);
        var beside = Found(Cut(c => c with { FluteLength = 15 }), "PROOF-11");
        Assert.Equal(Severity.Warns, beside.Severity);
        Assert.StartsWith("1.2", Found(Cut(c => c with { FluteLength = 15, StickOut = 20 }), "PROOF-12").Figure, StringComparison.Ordinal);
    }

    [Fact]
    public void Setting_out_below_the_wood_is_told()
    {
        var texts = BlockJob.Texts();
        BlockProofTests.Edit(texts, BlockJob.DrillFile, lines => Array.IndexOf(lines, "G0 Z30"), _ => "G0 Z20");
        Assert.Contains("line 2", Found(BlockJob.Prove(texts), "PROOF-16").Place, StringComparison.Ordinal);
    }

    [Fact]
    public void A_registration_hole_excuses_its_own_depth_only() =>
        Assert.StartsWith("0.1", Found(With(0, s => s with { BedAllowance = 0.1, Registration = [new("dowel", new(60, -12), 8, 0.1)] }), "PROOF-06").Figure, StringComparison.Ordinal);

    [Theory]
    [InlineData("G0 X131 Y82 Z25", "PROOF-24", "at once")]
    [InlineData("G0 X131", "PROOF-24", "below the clearance")]
    [InlineData("G0 Z-0.2", "PROOF-04", "spoilboard")]
    public void A_rapid_keeps_to_upright_and_clearance(string rapid, string code, string title)
    {
        var texts = BlockJob.Texts();
        var line = BlockProofTests.Edit(texts, BlockJob.DrillFile, lines => Array.IndexOf(lines, "G0 Z16.5"), _ => rapid);
        var finding = Found(BlockJob.Prove(texts, cell: 0.4), code);
        Assert.Contains($"{BlockJob.DrillFile} line {line}", finding.Place, StringComparison.Ordinal);
        Assert.Contains(title, finding.Title, StringComparison.Ordinal);
    }

    [Theory] // A beam over the blank; the cutter's edges end 60 mm above the tip, 90 mm over the bed at clearance.
    [InlineData(91, false)]
    [InlineData(89, true)]
    public void A_keep_out_has_an_underside(double underside, bool entered) =>
        Assert.Equal(entered, With(0, s => s with { KeepOuts = [new("beam", new(60, 60, underside, 100, 80, 200))] })
            .Findings.Any(f => f.Code == "PROOF-07" && f.Title.Contains("cutter", StringComparison.Ordinal)));

    [Fact]
    public void Setting_out_below_a_screw_is_told() =>
        Assert.StartsWith("Z 30", Found(With(0, s => s with { KeepOuts = [new("screw", new(0, 0, 0, 1, 1, 31))] }), "PROOF-16").Figure, StringComparison.Ordinal);

    [Fact]
    public void A_cutter_that_may_not_plunge_is_told_when_it_does()
    {
        var finding = Found(With(0, s => s with { Programs = s.Programs.SetItem(0, s.Programs[0] with { Cutter = s.Programs[0].Cutter with { Plunges = false } }) }), "PROOF-28");
        Assert.Equal(Severity.Stops, finding.Severity);
        Assert.Contains("pocket", finding.Place, StringComparison.Ordinal);
    }

    private static ProofResult With(int index, Func<SetUp, SetUp> change)
    {
        var setUps = BlockJob.SetUps();
        return BlockJob.Prove(null, setUps.SetItem(index, change(setUps[index])), cell: 0.4);
    }

    private static Finding Found(ProofResult proof, string code) =>
        proof.Findings.FirstOrDefault(f => f.Code == code) ?? throw new InvalidOperationException($"{code} was not told; told were: {string.Join("\n", proof.Findings)}");
}
