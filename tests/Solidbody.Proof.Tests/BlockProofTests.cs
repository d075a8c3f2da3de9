using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Proof.Tests;

/// <summary>A whole job is proved; every damage to it is caught with its place.</summary>
public sealed class BlockProofTests
{
    private static readonly Lazy<ProofResult> Sound = new(() => BlockJob.Prove());

    [Fact]
    public void A_sound_job_passes_with_small_figures()
    {
        var proof = Sound.Value;
        Assert.True(proof.Passes, string.Join("\n", proof.Findings));
        var part = Assert.Single(proof.Parts);
        Assert.InRange(part.DeepestGouge, 0, 0.02);
        Assert.InRange(part.MostLeftover, 0.01, 0.03);
        Assert.All(part.Measures, m => Assert.InRange(Math.Abs(m.Measured - m.Expected), 0, m.Name switch { "thickness in the middle" => 0.02, "bore from the end" => 0.005, _ => 0.016 }));
    }

    [Fact]
    public void The_same_job_gives_the_same_figures_and_words()
    {
        var (one, two) = (Sound.Value, BlockJob.Prove());
        Assert.Equal(one.Findings.AsEnumerable(), two.Findings.AsEnumerable());
        Assert.Equal(one.Proofs[0].Back.Values, two.Proofs[0].Back.Values);
        Assert.Equal(one.Parts[0].DeepestGougeAt, two.Parts[0].DeepestGougeAt);
    }

    [Theory] // The wood of the same job, turned on the bed: programs carry 0.001 mm, which a ball's flank hardly magnifies.
    [InlineData(45)]
    [InlineData(-17)]
    public void A_job_turned_on_the_bed_gives_the_same_wood(double degrees)
    {
        var turn = degrees * Math.PI / 180;
        var turned = BlockJob.Prove(BlockJob.Texts(turn), BlockJob.SetUps(turn));
        Assert.True(turned.Passes, string.Join("\n", turned.Findings));
        Assert.InRange(turned.Proofs[0].Field.Volume / Sound.Value.Proofs[0].Field.Volume, 0.9999, 1.0001);
        foreach (var (a, b) in turned.Parts[0].Measures.Zip(Sound.Value.Parts[0].Measures)) Assert.InRange(Math.Abs(a.Measured - b.Measured), 0, 0.011);
    }

    [Fact]
    public void A_z_deeper_by_two_tenths_is_a_gouge_of_two_tenths_in_that_pocket()
    {
        var texts = BlockJob.Texts();
        var line = Edit(texts, BlockJob.PocketFile, lines => Array.FindLastIndex(lines, l => l.Contains("Z13", StringComparison.Ordinal) && l.StartsWith("G1 X", StringComparison.Ordinal)), l => l.Replace("Z13", "Z12.8", StringComparison.Ordinal));
        var finding = Caught(texts, "PROOF-01");
        Assert.Contains("pocket", finding.Place, StringComparison.Ordinal);
        Assert.Contains($"{BlockJob.PocketFile} line {line}", finding.Place, StringComparison.Ordinal);
        Assert.StartsWith("0.2", finding.Figure, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_left_out_is_caught_in_that_pocket()
    {
        var texts = BlockJob.Texts();
        Edit(texts, BlockJob.PocketFile, lines => Array.FindIndex(lines, l => l.StartsWith("G3", StringComparison.Ordinal) && l.Contains("Z13", StringComparison.Ordinal)), _ => "");
        Assert.Contains("pocket", Caught(texts, "PROOF-02").Place, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pass_left_out_of_the_carve_is_wood_left_on_the_back()
    {
        var texts = BlockJob.Texts();
        var lines = texts[BlockJob.CarveFile].Split('\n');
        var from = Array.FindIndex(lines, l => l.StartsWith("G1 X112.4 ", StringComparison.Ordinal));
        texts[BlockJob.CarveFile] = string.Join('\n', lines.Where((_, i) => i < from || i >= from + 121 * 2));
        Assert.Contains("back", Caught(texts, "PROOF-02").Place, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flip_the_wrong_way_is_caught()
    {
        // The blank turned over end for end instead: as if the back's programs met the part at −x.
        var setUps = BlockJob.SetUps();
        setUps = setUps.SetItem(1, setUps[1] with { Placement = new(Side.Back, Math.PI, new(70 + 90, 70, 0)) });
        Assert.Contains(BlockJob.Prove(null, setUps, 0.4).Findings, f => f.Code == "PROOF-01" && f.Severity == Severity.Stops);
        // Not turned over at all.
        setUps = setUps.SetItem(1, setUps[1] with { Placement = new(Side.Front, 0, new(70, 70, 21)) });
        Assert.Contains(BlockJob.Prove(null, setUps, 0.4).Findings, f => f.Code == "PROOF-01");
    }

    [Theory]
    [InlineData(8, "PROOF-01")]
    [InlineData(5, "PROOF-02")]
    public void The_wrong_cutter_is_caught(double diameter, string code)
    {
        var setUps = BlockJob.SetUps();
        setUps = setUps.SetItem(0, setUps[0] with { Programs = setUps[0].Programs.SetItem(0, setUps[0].Programs[0] with { Cutter = Cutters.Flat(diameter) }) });
        var finding = BlockJob.Prove(null, setUps).Findings.First(f => f.Code == code);
        // A cutter 2 mm thicker cuts 1 mm into a wall; one 1 mm thinner leaves half a millimetre, more in the corners.
        Assert.StartsWith(diameter == 8 ? "1.0" : "0.", finding.Figure, StringComparison.Ordinal);
    }

    [Fact]
    public void A_zero_off_by_three_tenths_is_a_gouge_of_three_tenths()
    {
        var setUps = BlockJob.SetUps();
        setUps = setUps.SetItem(1, setUps[1] with { Placement = setUps[1].Placement with { Origin = new(70.3, 70, 0) } });
        var proof = BlockJob.Prove(null, setUps);
        Assert.Contains(proof.Findings, f => f.Code == "PROOF-01" && f.Place.Contains("outline", StringComparison.Ordinal) && f.Figure.StartsWith("0.3", StringComparison.Ordinal));
        Assert.InRange(proof.Parts[0].DeepestGouge, 0.25, 0.35);
    }

    [Fact]
    public void A_missing_and_an_unreadable_program_stop_the_proof()
    {
        var texts = BlockJob.Texts();
        texts.Remove(BlockJob.DrillFile);
        Assert.Equal(["PROOF-13", "PROOF-15"], BlockJob.Prove(texts).Findings.Select(f => f.Code));
        texts[BlockJob.DrillFile] = "G17 G21 G90 G94\nG38.2 Z0\nM2\n";
        var codes = BlockJob.Prove(texts).Findings.Select(f => f.Code).ToArray();
        Assert.Contains("PROOF-14", codes);
        Assert.Contains("PROOF-15", codes);
    }

    private static IEnumerable<Finding> Stopping(Dictionary<string, string> texts) => BlockJob.Prove(texts).Findings.Where(f => f.Severity == Severity.Stops);
    private static Finding Caught(Dictionary<string, string> texts, string code) => Stopping(texts).First(f => f.Code == code);

    /// <summary>Changes one line of a text; returns its number.</summary>
    internal static int Edit(Dictionary<string, string> texts, string file, Func<string[], int> which, Func<string, string> change)
    {
        var lines = texts[file].Split('\n');
        var at = which(lines);
        lines[at] = change(lines[at]);
        texts[file] = string.Join('\n', lines);
        return at + 1;
    }
}
