namespace Solidbody.Proof.Tests;

/// <summary>What is thinner than a column, and lies between the columns' middles, is told all the same. Columns of 0.2 mm stand at odd tenths.</summary>
public sealed class FineLineTests
{
    [Fact]
    public void A_fin_between_two_rows_of_columns_is_wood_left()
    {
        var texts = BlockJob.Texts();
        // Passes at y = ±3.05 in place of −2, 0 and 2: the 6 mm cutter leaves a fin a tenth thick on y = 0.
        texts[BlockJob.PocketFile] = texts[BlockJob.PocketFile].Replace("Y68 ", "Y66.95 ", StringComparison.Ordinal).Replace("Y70 ", "Y66.95 ", StringComparison.Ordinal).Replace("Y72 ", "Y73.05 ", StringComparison.Ordinal);
        var finding = BlockJob.Prove(texts).Findings.First(f => f.Code == "PROOF-02");
        Assert.Contains("pocket", finding.Place, StringComparison.Ordinal);
        Assert.InRange(double.Parse(finding.Figure.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 1.4, 8);
    }

    [Fact]
    public void A_wall_cut_less_than_a_column_too_far_is_a_gouge()
    {
        var texts = BlockJob.Texts();
        texts[BlockJob.PocketFile] = texts[BlockJob.PocketFile].Replace("M5\n", "G0 X105 Y65\nG0 Z22\nG1 Z13 F300\nG1 X107.09 F1200\nG1 Y75\nG1 X105\nG0 Z30\nM5\n", StringComparison.Ordinal);
        var proof = BlockJob.Prove(texts);
        var finding = proof.Findings.First(f => f.Code == "PROOF-01");
        Assert.Contains("pocket", finding.Place, StringComparison.Ordinal);
        Assert.InRange(proof.Parts[0].DeepestGouge, 0.07, 0.091);
    }

    [Theory] // The same figures, words and maps, however many threads share the work.
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(8)]
    public void Threads_change_nothing(int threads)
    {
        var settings = new ProofSettings { Cell = 0.3, ColletDiameter = 20 };
        ProofResult With(int n) => Prover.Prove(BlockJob.Design, BlockJob.SetUps(), BlockJob.Texts(), settings with { Threads = n }, null, TestContext.Current.CancellationToken);
        var (one, other) = (With(2), With(threads));
        Assert.Equal(one.Findings.AsEnumerable(), other.Findings.AsEnumerable());
        Assert.Equal((one.Parts[0].DeepestGouge, one.Parts[0].DeepestGougeAt, one.Parts[0].MostLeftover, one.Parts[0].MostLeftoverAt),
            (other.Parts[0].DeepestGouge, other.Parts[0].DeepestGougeAt, other.Parts[0].MostLeftover, other.Parts[0].MostLeftoverAt));
        Assert.Equal(one.Proofs[0].Front.Values, other.Proofs[0].Front.Values);
        Assert.Equal(one.Proofs[0].Back.Values, other.Proofs[0].Back.Values);
    }
}
