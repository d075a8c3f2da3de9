using Solidbody.Geometry;

namespace Solidbody.Machining.Planning;

/// <summary>Puts a set-up's jobs in order: what must come before comes before; within that, the least time is lost between jobs.</summary>
/// <remarks>
/// The cost of an order is the sum over neighbours of what lies between them: a change of cutter, where there is one, and the rapid from job to job.
/// Up to <see cref="Few"/> jobs the best order is found outright, by dynamic programming over which jobs are done and which was last (as Held and
/// Karp's for walks, with precedence). More are put in order by always taking the cutter that can then finish, and improved by moving jobs.
/// Among orders that cost the same the one nearest to the given order stands.
/// </remarks>
internal sealed class JobOrder
{
    /// <summary>Most jobs whose best order is searched outright: 2ⁿ·n² steps, some hundredths of a second.</summary>
    private const int Few = 13;
    /// <summary>Costs nearer than this are the same, seconds.</summary>
    private const double Same = 1e-9;

    private readonly IReadOnlyList<Job> jobs;
    private readonly double[,] between;
    private readonly int[] before;   // for each job the jobs it waits for, as bits; only where few

    private JobOrder(IReadOnlyList<Job> jobs, Func<Job, Job, double> cost)
    {
        this.jobs = jobs;
        between = new double[jobs.Count, jobs.Count];
        for (var i = 0; i < jobs.Count; i++)
            for (var k = 0; k < jobs.Count; k++) between[i, k] = i == k ? 0 : cost(jobs[i], jobs[k]);
        before = jobs.Count > Few ? [] : [.. jobs.Select(j => Enumerable.Range(0, jobs.Count).Where(b => jobs[b] != j && MustPrecede(jobs[b], j)).Sum(b => 1 << b))];
    }

    /// <summary>The jobs in running order.</summary>
    /// <param name="jobs">In the design's order.</param>
    /// <param name="cutters">Each job's cutter.</param>
    /// <param name="place">Where in the plan a job lies, mm.</param>
    /// <param name="change">Seconds a change of cutter takes.</param>
    /// <param name="rapid">Rapid in the plan, mm/s.</param>
    /// <exception cref="InvalidOperationException">Jobs wait for one another in a ring.</exception>
    public static IReadOnlyList<Job> Of(IReadOnlyList<Job> jobs, IReadOnlyDictionary<Job, Cutter> cutters, Func<Job, Point2> place, double change, double rapid)
    {
        // The design's order is by stages: among equals the earlier stage comes first.
        Job[] given = [.. jobs.OrderBy(j => j.Stage)];
        var places = given.ToDictionary(j => j, place);
        var order = new JobOrder(given, (a, b) => (cutters[a] == cutters[b] ? 0 : change) + places[a].DistanceTo(places[b]) / rapid);
        return [.. (given.Length <= Few ? order.Best() : order.Improved(order.Scheduled(cutters))).Select(i => given[i])];
    }

    /// <summary>What every later job trusts comes first; faces come before what is measured from them; what frees the part comes last.</summary>
    public static bool MustPrecede(Job before, Job job) =>
        job.After.Contains(before)
        || (before.Stage == Stage.Registration && job.Stage != Stage.Registration)
        || (job.Stage == Stage.Outline && before.Stage != Stage.Outline)
        || (before.Stage <= Stage.Surface && before.Stage < job.Stage);

    private List<int> Best()
    {
        var n = jobs.Count;
        if (n == 0) return [];
        var (least, next) = (new double[1 << n, n], new int[1 << n, n]);
        var all = (1 << n) - 1;
        // Backward: what is still to be paid once a set of jobs is done, the last of them given.
        for (var done = all; done > 0; done--)
            for (var last = 0; last < n; last++)
            {
                if ((done >> last & 1) == 0) continue;
                (least[done, last], next[done, last]) = (done == all ? 0 : double.PositiveInfinity, -1);
                for (var k = 0; k < n; k++)
                    if (MayFollow(done, k) && between[last, k] + least[done | 1 << k, k] is var cost && cost < least[done, last] - Same)
                        (least[done, last], next[done, last]) = (cost, k);
            }
        var first = Enumerable.Range(0, n).Where(k => before[k] == 0).Cast<int?>().MinBy(k => Math.Round(least[1 << k!.Value, k.Value] / Same));
        if (first is not { } at || double.IsInfinity(least[1 << at, at])) throw Ring();
        var order = new List<int>();
        for (var done = 1 << at; at >= 0; at = next[done, at], done |= at >= 0 ? 1 << at : 0) order.Add(at);
        return order;
    }

    private bool MayFollow(int done, int job) => (done >> job & 1) == 0 && (before[job] & ~done) == 0;

    /// <summary>The cutter in the spindle works on while it can, always the nearest job; a new one is the one that can then finish all its jobs, else the one whose next job is earliest.</summary>
    private List<int> Scheduled(IReadOnlyDictionary<Job, Cutter> cutters)
    {
        var left = Enumerable.Range(0, jobs.Count).ToList();
        var done = new List<int>();
        Cutter? inSpindle = null;
        while (left.Count > 0)
        {
            var ready = left.Where(j => left.All(b => b == j || !MustPrecede(jobs[b], jobs[j]))).ToList();
            if (ready.Count == 0) throw Ring();
            if (inSpindle is null || ready.All(j => cutters[jobs[j]] != inSpindle))
                inSpindle = ready.Select(j => cutters[jobs[j]]).Distinct().OrderBy(c => Finishes(c, left, cutters) ? 0 : 1).First();
            var next = ready.Where(j => cutters[jobs[j]] == inSpindle).MinBy(j => done.Count == 0 ? 0 : between[done[^1], j]);
            done.Add(next);
            left.Remove(next);
        }
        return done;
    }

    /// <summary>Whether the cutter, once in, does all its jobs without another one in between.</summary>
    private bool Finishes(Cutter cutter, List<int> left, IReadOnlyDictionary<Job, Cutter> cutters)
    {
        var own = left.Where(j => cutters[jobs[j]] == cutter).ToHashSet();
        return own.All(j => left.All(b => own.Contains(b) || !MustPrecede(jobs[b], jobs[j])));
    }

    /// <summary>Moves runs of jobs elsewhere while that makes the order cheaper and keeps what must come before.</summary>
    private List<int> Improved(List<int> order)
    {
        for (var better = true; better;)
        {
            better = false;
            for (var length = 1; length < order.Count && !better; length++)
                for (var i = 0; i + length <= order.Count && !better; i++)
                    for (var at = 0; at + length <= order.Count && !better; at++)
                    {
                        var moved = order.Take(i).Concat(order.Skip(i + length)).ToList();
                        moved.InsertRange(at, order.GetRange(i, length));
                        if (!(Cost(moved) < Cost(order) - Same) || !IsAllowed(moved)) continue;
                        (order, better) = (moved, true);
                    }
        }
        return order;
    }

    private double Cost(List<int> order) => Enumerable.Range(1, Math.Max(0, order.Count - 1)).Sum(i => between[order[i - 1], order[i]]);

    private bool IsAllowed(List<int> order) =>
        !Enumerable.Range(0, order.Count).Any(i => Enumerable.Range(i + 1, order.Count - i - 1).Any(k => MustPrecede(jobs[order[k]], jobs[order[i]])));

    private static InvalidOperationException Ring() => new("The jobs of a set-up wait for one another in a ring.");
}
