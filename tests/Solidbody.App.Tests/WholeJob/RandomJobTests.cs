using System.Globalization;
using Solidbody.Findings;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>The whole job on instruments nobody drew: it is made and proved, or it is said beforehand why not.</summary>
public sealed class RandomJobTests
{
    /// <summary>Which instruments are taken whole: a few, or by hand as many as <c>SOLIDBODY_JOBS</c> says (<c>1-40</c>).</summary>
    public static TheoryData<int> Whole
    {
        get
        {
            if (Environment.GetEnvironmentVariable("SOLIDBODY_JOBS") is not { } range) return [.. Enumerable.Range(1, 16)];
            var ends = range.Split('-').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToArray();
            return [.. Enumerable.Range(ends[0], ends[1] - ends[0] + 1)];
        }
    }

    [Theory, MemberData(nameof(Whole)), Trait("speed", "slow")]
    public void What_is_not_refused_beforehand_is_made_and_proved(int number)
    {
        var text = AnyInstrument.Text(number);
        var job = Job.Of(text, AnyInstrument.LargeShop, Job.Coarse);
        var before = job.Worked.Findings.Where(f => f.Severity == Severity.Stops).ToList();
        TestContext.Current.SendDiagnosticMessage($"{number}: {(before.Count > 0 ? "refused, " + string.Join(", ", before.Select(f => $"{f.Code} {f.Place}: {f.Figure}")) : job.Proof.Passes ? "proved" : "not proved")}");
        Assert.All(before, f => Assert.All((string[])[f.Place, f.Figure, f.Limit, f.Source, f.Remedy], Assert.NotEmpty));
        if (before.Count > 0) return;
        Assert.True(job.Proof.Passes && job.Proof.Parts.Length == 3, $"{text}\n{string.Join("\n", job.Stopping.Select(f => $"{f.Code} {f.Place}: {f.Figure}"))}");
        Programs.StayInside(job);
    }

    [Fact] // Quick enough for many: up to the plan, every answer is a finding with its place and its remedy, never a fault.
    public void Every_instrument_is_planned_or_refused_with_a_reason()
    {
        for (var number = 101; number <= 112; number++)
        {
            var text = AnyInstrument.Text(number);
            var read = MainJob.Read(new("any.toml", text, "shop.toml", AnyInstrument.LargeShop));
            Assert.True(read.IsGood, $"{text}\n{string.Join("\n", read.Mistakes)}");
            var worked = MainJob.WorkOut(read.Instrument!, read.Shop!);
            Assert.True(worked.Plan.SetUps.Length == 5 || worked.Findings.Any(f => f.Severity == Severity.Stops), text);
        }
    }
}
