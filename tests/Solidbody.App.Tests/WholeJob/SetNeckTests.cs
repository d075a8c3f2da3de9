namespace Solidbody.App.Tests.WholeJob;

/// <summary>The example with its neck glued in by a tenon narrower than the board.</summary>
public sealed class SetNeckTests
{
    [Fact]
    public void It_is_made_and_proved()
    {
        var text = Job.ExampleText("school-six.toml")
            .Replace("[neck]\n", "[neck]\njoint = \"set\"\n", StringComparison.Ordinal)
            .Replace("[neck.heel]\n", "[neck.heel]\ntenon_width = 38\n", StringComparison.Ordinal);
        var job = Job.Of(text, AnyInstrument.LargeShop, Job.Coarse);
        Assert.True(!job.Stopping.Any(), string.Join("\n", job.Stopping.Select(f => $"{f.Code} {f.Place}: {f.Figure}")));
        // The board stands 3/4 in − 5/8 in over the body beside a tenon that is narrower.
        Assert.Contains(job.Worked.Findings, f => f.Code == "TENON-01" && f.Figure.Contains("3.1", StringComparison.Ordinal));
        Assert.Equal(38, job.Proof.Parts.Single(p => p.Part == "neck").Measures.Single(m => m.Name == "heel width").Measured, 0.1);
        Assert.Equal(38.2, job.Proof.Parts.Single(p => p.Part == "body").Measures.Single(m => m.Name == "neck pocket width in the middle").Measured, 0.1);
    }
}
