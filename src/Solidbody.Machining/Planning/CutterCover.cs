using Solidbody.Geometry;

namespace Solidbody.Machining.Planning;

/// <summary>Settles cutters so that few are changed: greedy set cover (Chvátal, Mathematics of Operations Research 4 (1979) 233–235, from memory).</summary>
internal static class CutterCover
{
    /// <summary>A cutter for every job: again and again the one that serves most of the jobs left; among equals the one best liked by them, then the wider.</summary>
    public static Dictionary<Job, Cutter> Of(IReadOnlyList<Job> jobs)
    {
        var settled = new Dictionary<Job, Cutter>();
        var left = jobs.ToList();
        while (left.Count > 0)
        {
            var best = left.SelectMany(j => j.Candidates).Distinct()
                .OrderByDescending(c => left.Count(j => j.Candidates.Contains(c)))
                .ThenBy(c => left.Where(j => j.Candidates.Contains(c)).Sum(j => j.Candidates.IndexOf(c)))
                .ThenByDescending(c => c.Diameter).ThenBy(c => c.Name, StringComparer.Ordinal).First();
            foreach (var job in left.Where(j => j.Candidates.Contains(best))) settled[job] = best;
            left.RemoveAll(settled.ContainsKey);
        }
        return settled;
    }
}
