using Solidbody.Geometry;

namespace Solidbody.Machining.Planning;

/// <summary>Puts a set-up's jobs in order: what must come before comes before; within that, few changes of cutter.</summary>
internal static class JobOrder
{
    /// <summary>List scheduling over the jobs' precedence: the cutter in the spindle works on while it can; a new one is the one that can then
    /// finish all its jobs, else the one whose next job is earliest.</summary>
    public static IReadOnlyList<Job> Of(IReadOnlyList<Job> jobs, IReadOnlyDictionary<Job, Cutter> cutters)
    {
        var left = jobs.ToList();
        var done = new List<Job>();
        Cutter? inSpindle = null;
        while (left.Count > 0)
        {
            var ready = left.Where(j => left.All(before => before == j || !MustPrecede(before, j))).ToList();
            if (ready.Count == 0) throw new InvalidOperationException("The jobs of a set-up wait for one another in a ring.");
            if (inSpindle is null || ready.All(j => cutters[j] != inSpindle))
                inSpindle = ready.Select(j => cutters[j]).Distinct()
                    .OrderBy(c => Finishes(c, left, cutters) ? 0 : 1)
                    .ThenBy(c => ready.Where(j => cutters[j] == c).Min(j => j.Stage))
                    .ThenBy(c => ready.FindIndex(j => cutters[j] == c)).First();
            var next = ready.Where(j => cutters[j] == inSpindle).MinBy(j => (j.Stage, left.IndexOf(j)))!;
            done.Add(next);
            left.Remove(next);
        }
        return done;
    }

    /// <summary>What every later job trusts comes first; faces come before what is measured from them; what frees the part comes last.</summary>
    public static bool MustPrecede(Job before, Job job) =>
        job.After.Contains(before)
        || (before.Stage == Stage.Registration && job.Stage != Stage.Registration)
        || (job.Stage == Stage.Outline && before.Stage != Stage.Outline)
        || (before.Stage <= Stage.Surface && before.Stage < job.Stage);

    /// <summary>Whether the cutter, once in, does all its jobs without another one in between.</summary>
    private static bool Finishes(Cutter cutter, List<Job> left, IReadOnlyDictionary<Job, Cutter> cutters)
    {
        var own = left.Where(j => cutters[j] == cutter).ToHashSet();
        return own.All(j => left.All(before => own.Contains(before) || !MustPrecede(before, j)));
    }
}
