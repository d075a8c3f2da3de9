using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;

namespace Solidbody.Machining.Planning;

/// <summary>Offers to rough rooms with a wider cutter and to take with the thinner one only what it left, where that saves more than changing cutters costs.</summary>
/// <param name="cutters">The cutter of every job.</param>
/// <param name="feeds">How a cutter is usually driven.</param>
/// <param name="roughing">Times of roughing.</param>
/// <param name="ordered">Puts jobs in their order.</param>
/// <param name="change">What a change of cutter costs, s.</param>
internal sealed class RestMachining(IReadOnlyDictionary<Job, Cutter> cutters, Func<Cutter, CutFeeds> feeds, RoomRoughing roughing,
    Func<IReadOnlyList<Job>, IReadOnlyDictionary<Job, Cutter>, IReadOnlyList<Job>> ordered, double change)
{
    /// <summary>Rooms roughed quicker than this gain nothing worth looking for, s.</summary>
    private const double Shortest = 20;

    private sealed record Split(Job Job, Cutter Wider, Job.Step Rough, Job.Step Rest, double Gain);

    /// <summary>The set-up's jobs and their cutters, with rooms divided between two cutters where that is quicker; as they were where it is not.</summary>
    public (IReadOnlyList<Job> Jobs, IReadOnlyDictionary<Job, Cutter> Cutters) Of(IReadOnlyList<Job> jobs)
    {
        var best = (Jobs: jobs, Cutters: cutters);
        var gained = 0.0;
        foreach (var wider in jobs.SelectMany(j => j.Wider).Distinct())
        {
            var splits = jobs.Where(j => j.Wider.Contains(wider)).Select(j => SplitOf(j, wider)).OfType<Split>().ToList();
            if (splits.Count == 0) continue;
            var divided = Divided(jobs, splits);
            var gain = splits.Sum(s => s.Gain) - change * (Changes(divided) - Changes((jobs, cutters)));
            if (gain > gained) (best, gained) = (divided, gain);
        }
        return best;
    }

    private Split? SplitOf(Job job, Cutter wider)
    {
        var cutter = cutters[job];
        if (wider.Diameter <= cutter.Diameter || job.Steps(cutter, feeds(cutter)).FirstOrDefault(s => s.Work is Work.Clear && s.Skin is null) is not { } rough) return null;
        var work = (Work.Clear)rough.Work;
        var alone = roughing.Quickest(cutter, work).Seconds;
        if (alone < Shortest || roughing.Rest(cutter, work, wider) is not { } rest) return null;
        var gain = alone - roughing.Quickest(wider, work).Seconds - rest.Seconds;
        return gain > 0 ? new(job, wider, rough, rough with { Suffix = "rest", RestAfter = wider }, gain) : null;
    }

    private (IReadOnlyList<Job> Jobs, IReadOnlyDictionary<Job, Cutter> Cutters) Divided(IReadOnlyList<Job> jobs, List<Split> splits)
    {
        var divided = new List<Job>();
        var settled = new Dictionary<Job, Cutter>();
        var replaced = new Dictionary<Job, Job>();
        foreach (var job in jobs)
        {
            var after = job.After.Select(b => replaced.GetValueOrDefault(b, b)).ToImmutableArray();
            var now = job with { After = after };
            if (splits.Find(s => s.Job == job) is { } split)
            {
                var rough = now with { Candidates = [split.Wider], Steps = (_, _) => [split.Rough] };
                now = now with { After = after.Add(rough), Steps = (c, f) => job.Steps(c, f).Select(s => s.Work == split.Rough.Work ? split.Rest : s) };
                divided.Add(rough);
                settled[rough] = split.Wider;
            }
            divided.Add(now);
            settled[now] = cutters[job];
            replaced[job] = now;
        }
        return (divided, settled);
    }

    private int Changes((IReadOnlyList<Job> Jobs, IReadOnlyDictionary<Job, Cutter> Cutters) plan)
    {
        var order = ordered(plan.Jobs, plan.Cutters).Select(j => plan.Cutters[j]).ToList();
        return order.Zip(order.Skip(1)).Count(pair => pair.First != pair.Second);
    }
}
