namespace Solidbody.Geometry.Arcs;

/// <summary>Runs strung together to loops, end to start, keeping to the left where several go on: the inside lies there, so loops that touch come apart.</summary>
internal sealed class LoopTrace
{
    /// <summary>Ends this near to a start go on there, mm.</summary>
    public const double Gap = 4e-6;
    /// <summary>How far from a meeting the runs' directions are compared, mm: near enough to be alone, far enough that tangents part.</summary>
    private const double Look = 0.01;
    /// <summary>Runs shorter than this may serve as crumbs between longer ones where several curves run on as one, mm.</summary>
    private const double Crumb = 1e-3;

    private readonly OffsetRun[] byX;
    private readonly double[] xs;
    private readonly bool overCrumbs;

    /// <summary>Greatest distance over which an end was drawn to a start, mm.</summary>
    public double Moved { get; private set; }

    /// <param name="open">The runs.</param>
    /// <param name="overCrumbs">Whether the shortest runs are only ways between the others: for places where curves cross at next to no angle and lie in crumbs on each other.</param>
    public LoopTrace(IEnumerable<OffsetRun> open, bool overCrumbs)
    {
        this.overCrumbs = overCrumbs;
        byX = [.. open.OrderBy(r => r.From.X)];
        xs = [.. byX.Select(r => r.From.X)];
        foreach (var run in byX) run.Used = false;
    }

    private bool IsCrumb(OffsetRun run) => overCrumbs && run.Length < Crumb;

    /// <summary>Loops through all certain runs; null when one of them leads nowhere.</summary>
    public List<List<Segment>>? Loops()
    {
        var loops = new List<List<Segment>>();
        var strung = new List<OffsetRun>();
        foreach (var first in byX)
        {
            if (!first.Certain || first.Used || IsCrumb(first)) continue;
            var chain = Chain(first, out var closed);
            if (closed)
            {
                strung.AddRange(chain);
                loops.Add(Joined(chain));
            }
            // Where two neighbours cross at next to no angle both run on as one for a way: the second is left over.
            else if (!chain.TrueForAll(r => Doubled(r, strung))) return null;
        }
        return loops;
    }

    private List<OffsetRun> Chain(OffsetRun first, out bool closed)
    {
        var chain = new List<OffsetRun>();
        var run = first;
        do
        {
            run.Used = true;
            chain.Add(run);
            if (Next(run, first, chain) is not { } next)
            {
                closed = false;
                return chain;
            }
            run = next;
        }
        while (run != first);
        closed = true;
        return chain;
    }

    private List<Segment> Joined(List<OffsetRun> chain)
    {
        var loop = new List<Segment>();
        for (var i = 0; i < chain.Count; i++)
        {
            var (run, end) = (chain[i], chain[(i + 1) % chain.Count].From);
            Moved = Math.Max(Moved, run.To.DistanceTo(end));
            loop.AddRange(run.Segments);
            loop[^1] = loop[^1].Between(loop[^1].From, end);
        }
        return loop;
    }

    private static bool Doubled(OffsetRun run, List<OffsetRun> strung) =>
        strung.Exists(other => other.Segments.Exists(s => s.DistanceTo(run.Middle) <= SegmentCrossings.Touch));

    /// <summary>The run that goes on from the end of one, certain ones first, then the leftmost; the crumbs on the way to it are added to the chain.</summary>
    private OffsetRun? Next(OffsetRun run, OffsetRun first, List<OffsetRun> chain)
    {
        OffsetRun? best = null;
        var cameBy = new Dictionary<OffsetRun, OffsetRun?>();
        var ends = new Queue<OffsetRun>([run]);
        while (ends.TryDequeue(out var end))
            foreach (var next in StartingAt(end.To))
            {
                if (IsCrumb(next) ? cameBy.ContainsKey(next) : next.Used && next != first) continue;
                if (IsCrumb(next)) ends.Enqueue(next);
                else if (best is null || (next.Certain && !best.Certain) || (next.Certain == best.Certain && TurnOnto(run, next, best) > TurnOnto(run, best, next))) best = next;
                cameBy.TryAdd(next, end == run ? null : end);
            }
        if (best is null) return null;
        var at = chain.Count;
        for (var crumb = cameBy[best]; crumb is not null; crumb = cameBy[crumb]) chain.Insert(at, crumb);
        return best;
    }

    private IEnumerable<OffsetRun> StartingAt(Point2 p)
    {
        var start = Array.BinarySearch(xs, p.X - Gap);
        if (start < 0) start = ~start;
        while (start > 0 && xs[start - 1] >= p.X - Gap) start--;
        for (var i = start; i < xs.Length && xs[i] <= p.X + Gap; i++)
            if (byX[i].From.DistanceTo(p) <= Gap) yield return byX[i];
    }

    /// <summary>Turn from a run onto the next, (−π, π], seen as far off the meeting as it and its rival allow.</summary>
    private static double TurnOnto(OffsetRun run, OffsetRun next, OffsetRun rival)
    {
        var look = Math.Min(Look, Math.Min(run.Length, Math.Min(next.Length, rival.Length)) / 2);
        var (u, v) = (run.To - run.At(-look), next.At(look) - next.From);
        return Math.Atan2(u.Cross(v), u.Dot(v));
    }
}
