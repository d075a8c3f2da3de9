using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Collects motions end to end: starts at clearance over the first entry, never leaves a gap, slows where it goes down, ends at clearance.</summary>
internal sealed class PathBuilder(CutSettings settings)
{
    /// <summary>Farthest a dropped point of a straight run may lie from it, mm: a tenth of the output's resolution over a whole run.</summary>
    private const double StraightSlack = Tolerances.Output / 10;

    private readonly ImmutableArray<Motion>.Builder motions = ImmutableArray.CreateBuilder<Motion>();
    private bool started;
    private double slackUsed;

    /// <summary>Where the tip is.</summary>
    public WorkPoint At { get; private set; }

    /// <summary>Rises to clearance, travels over <paramref name="p"/> and descends by rapid to the approach height over <paramref name="wood"/>.</summary>
    public void EnterAbove(Point2 p, double wood)
    {
        var over = new WorkPoint(p.X, p.Y, settings.Clearance);
        if (started)
        {
            Retract();
            Rapid(over);
        }
        else
        {
            At = over;
            started = true;
        }
        Rapid(over with { Z = Math.Min(settings.Clearance, wood + settings.Approach) });
    }

    public void Rapid(WorkPoint to) => Add(new(MotionKind.Rapid, At, to, default, 0));

    /// <summary>Straight at feed; going down, as slow as keeps the vertical speed within the plunge feed.</summary>
    public void Line(WorkPoint to)
    {
        var length = At.DistanceTo(to);
        if (length <= Tolerances.Geometry) return;
        var motion = new Motion(MotionKind.Line, At, to, default, FeedFor(At.Z - to.Z, length));
        if (motions.Count > 0 && Extends(motions[^1], motion, out var stray) && slackUsed + stray <= StraightSlack)
        {
            slackUsed += stray;
            var from = motions[^1].From;
            motions[^1] = motion with { From = from, Feed = FeedFor(from.Z - to.Z, from.DistanceTo(to)) };
            At = to;
            return;
        }
        Add(motion);
    }

    public void Line(Point2 p, double z) => Line(new(p.X, p.Y, z));

    /// <summary>An arc in the plan about <paramref name="centre"/>, climbing or sinking evenly; as chords where the machine takes no arcs.</summary>
    public void Arc(WorkPoint to, Point2 centre, bool counterClockwise)
    {
        var motion = new Motion(counterClockwise ? MotionKind.ArcCounterClockwise : MotionKind.ArcClockwise, At, to, centre, 0);
        if (settings.Arcs)
        {
            Add(motion with { Feed = FeedFor(At.Z - to.Z, motion.Length) });
            return;
        }
        var (from, sweep) = (At, motion.Sweep);
        var radius = (from.Plan - centre).Length;
        var n = Shapes.ChordsFor(radius, sweep);
        for (var i = 1; i < n; i++)
            Line(centre + (from.Plan - centre).Turned(sweep * i / n), from.Z + (to.Z - from.Z) * i / n);
        Line(to);
    }

    /// <summary>Along a line in the plan from station to station, the height running evenly from where the tip is to <paramref name="z"/>.</summary>
    public void Follow(PathLine line, double from, double to, double z)
    {
        var (start, last) = (At.Z, from);
        foreach (var station in line.Stations(from, to))
        {
            var (p, under) = (line.At(station), line.Under(last, station));
            var end = new WorkPoint(p.X, p.Y, to == from ? z : start + (z - start) * (station - from) / (to - from));
            if (under.IsArc && Bends(At.Plan, p, under.Radius)) Arc(end, under.Centre, under.Sweep > 0);
            else Line(end);
            last = station;
        }
    }

    /// <summary>Whether an arc shows in the program's text: it stands off its chord c by c²/8r, half a step of the output or more.</summary>
    private static bool Bends(Point2 from, Point2 to, double radius) =>
        from.DistanceTo(to) is var chord && chord * chord > 4 * radius * Tolerances.Output;

    public void Retract() => Rapid(At with { Z = settings.Clearance });

    /// <summary>The finished path; empty when nothing was entered.</summary>
    public ImmutableArray<Motion> Build()
    {
        if (started) Retract();
        return motions.ToImmutable();
    }

    private double FeedFor(double drop, double length) =>
        drop > 0 ? Math.Min(settings.Feed, settings.PlungeFeed * length / drop) : settings.Feed;

    private void Add(Motion motion)
    {
        if (!started) throw new InvalidOperationException("A path starts with EnterAbove.");
        if (motion.Length <= Tolerances.Geometry) return;
        motions.Add(motion);
        At = motion.To;
        slackUsed = 0;
    }

    /// <summary>Whether the next line carries the last one straight on at the same feed.</summary>
    private static bool Extends(Motion last, Motion next, out double stray)
    {
        stray = 0;
        if (last.Kind != MotionKind.Line || Math.Abs(last.Feed - next.Feed) > 1e-9 * next.Feed) return false;
        var (whole, first) = (last.From.DistanceTo(next.To), last.Length);
        if (whole < first) return false;
        var t = first / whole;
        var foot = new WorkPoint(last.From.X + t * (next.To.X - last.From.X), last.From.Y + t * (next.To.Y - last.From.Y), last.From.Z + t * (next.To.Z - last.From.Z));
        stray = foot.DistanceTo(last.To);
        return stray <= StraightSlack;
    }
}
