namespace Solidbody.App.Tests.WholeJob;

/// <summary>The example with a headstock that leans back.</summary>
public sealed class AngledHeadTests
{
    private static string Leaning(string more) => Job.ExampleText("school-six.toml").Replace("[headstock]\n", $"[headstock]\nangle = \"8 deg\"\n{more}", StringComparison.Ordinal);

    [Fact]
    public void It_is_made_and_proved()
    {
        var job = Job.Of(Leaning(""), AnyInstrument.LargeShop, Job.Coarse);
        Assert.True(!job.Stopping.Any(), string.Join("\n", job.Stopping.Select(f => $"{f.Code} {f.Place}: {f.Figure}")));
        Assert.Contains(job.Worked.Plan.SetUps.Single(s => s.SetUp.Name == "neck-front").Operations, o => o.Name == "headstock face");
        Assert.Contains(job.Made.SetUps.Single(s => s.Name == "neck-back").After, line => line.Contains("tuner hole 6", StringComparison.Ordinal));
        Programs.StayInside(job);
    }

    [Fact]
    public void With_a_scarf_joint_no_program_is_written() =>
        Assert.Contains(Job.Of(Leaning("scarf = true\n"), AnyInstrument.LargeShop).Stopping, f => f.Code == "PLAN-05");
}
