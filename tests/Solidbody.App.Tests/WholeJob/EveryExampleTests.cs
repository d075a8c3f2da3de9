using Solidbody.Findings;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>The school's instruments, each in the shop it is cut in: nothing to warn of in the plan, and what is cut is what was drawn.</summary>
public sealed class EveryExampleTests
{
    private const string School = "school-shop.toml", Town = "town-shop.toml";

    /// <summary>Instrument and shop; the six-string and its left-handed sister are looked at closely elsewhere.</summary>
    public static TheoryData<string, string> Instruments => new()
    {
        { "school-six.toml", School },
        { "school-six-left.toml", School },
        { "school-angled.toml", School },
        { "school-travel.toml", School },
        { "school-baritone.toml", School },
        { "school-fan-seven.toml", School },
        { "school-eight.toml", Town },
        { "school-short-bass.toml", School },
        { "school-bass.toml", Town },
        { "school-drawn.toml", School },
        { "school-bound.toml", School },
        { "school-bought-neck.toml", School },
        { "school-bought-body.toml", School },
    };

    [Fact]
    public void Every_example_is_in_the_list() => Assert.Equal(
        Directory.EnumerateFiles(Path.Combine(Repository.Root, "examples"), "*.toml").Select(Path.GetFileName).Where(f => !f!.EndsWith("-shop.toml", StringComparison.Ordinal)).Order(StringComparer.Ordinal),
        Instruments.Select(row => row.Data.Item1).Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(Instruments))]
    public void It_passes_its_check(string instrument, string shop)
    {
        var worked = Worked(instrument, shop);
        // The travel guitar's small body cannot hold its neck up: its file says so too.
        Assert.Empty(worked.Findings.Where(f => f.Severity != Severity.Notes && !(f.Code == "BALANCE-01" && instrument == "school-travel.toml")).Select(f => $"{f.Code} {f.Place}: {f.Figure}, {f.Limit}"));
    }

    [Theory, MemberData(nameof(Instruments)), Trait("speed", "slow")]
    public void It_is_cut_as_drawn(string instrument, string shop)
    {
        var job = Job.Of(Job.ExampleText(instrument), Job.ExampleText(shop), Job.Coarse);
        Assert.True(job.Proof.Passes, string.Join("\n", job.Stopping.Select(f => $"{f.Code} {f.Place}: {f.Figure}")));
        Assert.Equal(job.Worked.Design.Parts.Select(p => p.Name), job.Proof.Parts.Select(p => p.Part));
        Programs.StayInside(job);
        Assert.All(job.Made.SetUps.SelectMany(s => s.Programs).SelectMany(p => p.Operations), o => Assert.True(o.BoundSeconds > 0 && o.BoundSeconds <= o.Seconds, $"{o}"));
    }

    private static WorkedOut Worked(string instrument, string shop)
    {
        var read = MainJob.Read(new(instrument, Job.ExampleText(instrument), shop, Job.ExampleText(shop), Job.ExampleDrawings));
        Assert.True(read.IsGood, string.Join("\n", read.Mistakes));
        return MainJob.WorkOut(read.Instrument!, read.Shop!);
    }
}
