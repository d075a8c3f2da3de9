using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Planning;
using Solidbody.Machining.Tests.Toolpaths;

namespace Solidbody.Machining.Tests.Planning;

/// <summary>Orders against every order there is, and laws for more jobs than can be tried.</summary>
public class JobOrderTests
{
    private const double Change = 100, Rapid = 10;

    private sealed record Sample(Job[] Jobs, Dictionary<Job, Cutter> Cutters, Dictionary<Job, Point2> Places)
    {
        public double Cost(IReadOnlyList<Job> order) => order.Zip(order.Skip(1), (a, b) => (Cutters[a] == Cutters[b] ? 0 : Change) + Places[a].DistanceTo(Places[b]) / Rapid).Sum();
        public IReadOnlyList<Job> Ordered => JobOrder.Of(Jobs, Cutters, j => Places[j], Change, Rapid);
        public static bool Keeps(IReadOnlyList<Job> order) => !order.Select((j, i) => order.Skip(i + 1).Any(later => JobOrder.MustPrecede(later, j))).Any(wrong => wrong);
    }

    /// <summary>Random jobs: each may wait for some that were drawn before it and are of no later stage.</summary>
    private static Gen<Sample> Some(int least, int most) => Gen.Select(Gen.Enum<Stage>(), Gen.Int[0, 2], Gen.Double[0, 400], Gen.Double[0, 300], Gen.Int[0, 255]).Array[least, most].Select(drawn =>
    {
        Cutter[] rack = [Given.Flat(12), Given.Flat(6), Given.Drill(3)];
        var jobs = new List<Job>();
        foreach (var (stage, cutter, _, _, waits) in drawn)
            jobs.Add(new()
            {
                Name = $"job {jobs.Count}",
                Stage = stage,
                Candidates = [rack[cutter]],
                Steps = (_, _) => [],
                After = [.. jobs.Where((j, i) => (waits >> (i % 8) & 3) == 3 && j.Stage <= stage)],
            });
        return new Sample([.. jobs], jobs.Select((j, i) => (j, i)).ToDictionary(p => p.j, p => rack[drawn[p.i].Item2]), jobs.Select((j, i) => (j, i)).ToDictionary(p => p.j, p => new Point2(drawn[p.i].Item3, drawn[p.i].Item4)));
    });

    [Fact]
    public void No_order_of_few_jobs_is_cheaper() => Some(1, 6).Sample(given =>
    {
        var order = given.Ordered;
        Assert.Equal(given.Jobs.ToHashSet(), order.ToHashSet());
        Assert.True(Sample.Keeps(order));
        Assert.Equal(Orders([.. given.Jobs]).Where(Sample.Keeps).Min(given.Cost), given.Cost(order), 1e-6);
    }, iter: 60);

    [Fact] // More than are searched outright: every job once, nothing before what it waits for, and no single job moved makes it cheaper.
    public void Many_jobs_keep_their_constraints_and_no_job_lies_better_elsewhere() => Some(14, 22).Sample(given =>
    {
        var order = given.Ordered;
        Assert.Equal(given.Jobs.ToHashSet(), order.ToHashSet());
        Assert.Equal(given.Jobs.Length, order.Count);
        Assert.True(Sample.Keeps(order));
        for (var i = 0; i < order.Count; i++)
            for (var at = 0; at < order.Count; at++)
            {
                var moved = order.Where((_, k) => k != i).ToList();
                moved.Insert(at, order[i]);
                if (Sample.Keeps(moved)) Assert.True(given.Cost(moved) >= given.Cost(order) - 1e-6);
            }
    }, iter: 10);

    [Fact]
    public void A_ring_is_no_order()
    {
        var first = new Job { Name = "edge", Stage = Stage.Outline, Candidates = [Given.Flat(6)], Steps = (_, _) => [] };
        var second = new Job { Name = "hole", Stage = Stage.Rooms, Candidates = [Given.Flat(6)], Steps = (_, _) => [], After = [first] };
        Assert.Throws<InvalidOperationException>(() => JobOrder.Of([first, second], new Dictionary<Job, Cutter> { [first] = Given.Flat(6), [second] = Given.Flat(6) }, _ => default, Change, Rapid));
    }

    private static IEnumerable<List<Job>> Orders(List<Job> jobs) => jobs.Count <= 1 ? [jobs]
        : jobs.SelectMany((j, i) => Orders([.. jobs.Where((_, k) => k != i)]).Select(rest => rest.Prepend(j).ToList()));
}
