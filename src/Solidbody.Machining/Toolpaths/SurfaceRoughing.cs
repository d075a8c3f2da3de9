using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Takes the bulk off above a curved surface, in levels, with passes along x.</summary>
public static class SurfaceRoughing
{
    /// <summary>Cell of the surface's samples, mm; the cutter is taken wider by its half diagonal, so samples do not hide a slope.</summary>
    private const double Cell = 0.5;
    /// <summary>What thinning of the passes' points may take from the leave, mm; added to it first.</summary>
    private const double Thinning = 0.02;
    /// <summary>Runs shorter than this stay for the finishing passes, mm.</summary>
    private const double ShortestRun = 1;
    private const double WidestStepByRadius = 0.9;
    /// <summary>A neighbouring run that starts within this many steps is reached without rising.</summary>
    private const double LongestLinkBySteps = 3;

    /// <summary>Roughs the zone down to the surface plus a leave.</summary>
    /// <param name="s">Settings; a StepOver above 0.45 D is taken as 0.45 D.</param>
    /// <param name="surface">Closed form, laid frame; carries the cutter beyond the zone too.</param>
    /// <param name="zone">Where the cutter's axis may go.</param>
    /// <param name="top">Height of the wood.</param>
    /// <param name="leave">Wood left above the surface, measured along Z, mm; ≥ 0.</param>
    /// <param name="lowest">The tip never goes below.</param>
    public static ImmutableArray<Motion> Path(CutSettings s, IHeight surface, Region zone, double top, double leave, double lowest)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(surface);
        ArgumentNullException.ThrowIfNull(zone);
        if (!(s.StepOver > 0)) throw new ArgumentOutOfRangeException(nameof(s), s.StepOver, "Step-over must be positive, mm.");
        var field = new SurfaceField(surface, zone.Bounds.Grown(s.Cutter.Radius + 2 * Cell), Cell);
        var form = CutterForm.Of(s.Cutter).Wider(Cell / Math.Sqrt(2));
        double Rest(Point2 p) => field.Rest(p.X, p.Y, form).Height + leave + Thinning;

        var lines = new RestingLines(field, form);
        List<WorkPoint> Stretch(double from, double to, double y) =>
        [
            new(from, y, Rest(new(from, y))),
            .. lines.Between(from, to, y).Select(p => new WorkPoint(p.X, y, p.Z + leave + Thinning)),
            new(to, y, Rest(new(to, y))),
        ];

        var rows = Rows(zone, Math.Min(s.StepOver, WidestStepByRadius * s.Cutter.Radius), Stretch);
        if (rows.All(r => r.Count == 0)) return [];
        var bottom = Math.Max(lowest, rows.SelectMany(r => r).SelectMany(run => run).Min(p => p.Z));
        var path = new PathBuilder(s);
        var wood = top;
        var ahead = true;
        var begun = false;
        if (bottom >= top) return [];
        foreach (var level in DepthLevels.Of(top, bottom, s.StepDown))
        {
            var linked = false;
            foreach (var row in rows)
            {
                var runs = row.SelectMany(stretch => Below(stretch, wood, level)).ToList();
                foreach (var run in ahead ? runs : runs.AsEnumerable().Reverse())
                {
                    var profile = ahead ? run : [.. run.AsEnumerable().Reverse()];
                    if (!(begun && linked && Link(path, s, profile[0], wood, Rest)))
                    {
                        path.EnterAbove(profile[0].Plan, wood);
                        path.Line(path.At with { Z = wood });
                    }
                    new RampedRun(path, s, profile, wood).Cut();
                    begun = linked = true;
                }
                if (runs.Count > 0) ahead = !ahead;
            }
            wood = level;
        }
        return path.Build();
    }

    /// <summary>Rows along x over the zone, each a list of stretches of points with the height at which the cutter would rest.</summary>
    /// <param name="stretch">The points from one x to another, at y.</param>
    private static List<List<WorkPoint>>[] Rows(Region zone, double step, Func<double, double, double, List<WorkPoint>> stretch)
    {
        var inset = Math.Min(Tolerances.Output, zone.Bounds.Height / 4);
        var (y0, y1) = (zone.Bounds.Y0 + inset, zone.Bounds.Y1 - inset);
        var n = Math.Max(1, (int)Math.Ceiling((y1 - y0) / step));
        var rows = new List<List<WorkPoint>>[n + 1];
        Parallel.For(0, n + 1, i =>
        {
            var y = y0 + (y1 - y0) * i / n;
            var crossings = new List<double>();
            zone.Crossings(y, crossings);
            rows[i] = [];
            for (var k = 0; k + 1 < crossings.Count; k += 2) rows[i].Add(stretch(crossings[k], crossings[k + 1], y));
        });
        return rows;
    }

    /// <summary>The runs of a stretch where wood stands between the level above and this one.</summary>
    private static IEnumerable<List<WorkPoint>> Below(List<WorkPoint> stretch, double wood, double level)
    {
        var run = new List<(double X, double Z)>();
        var y = stretch[0].Y;
        for (var i = 0; i <= stretch.Count; i++)
        {
            if (i < stretch.Count && stretch[i].Z < wood - Thinning)
            {
                run.Add((stretch[i].X, Math.Max(level, stretch[i].Z)));
                continue;
            }
            if (run.Count > 1 && run[^1].X - run[0].X >= ShortestRun)
                yield return [.. LineThinning.Of(run, Thinning).Select(p => new WorkPoint(p.X, y, p.Z))];
            run = [];
        }
    }

    /// <summary>Sideways from the last run to the start of the next, over the surface. False when it lies too far or too high.</summary>
    private static bool Link(PathBuilder path, CutSettings s, WorkPoint to, double wood, Func<Point2, double> rest)
    {
        var begin = path.At;
        var length = begin.Plan.DistanceTo(to.Plan);
        if (length > LongestLinkBySteps * s.StepOver) return false;
        var n = Math.Max(1, (int)Math.Ceiling(length / Cell));
        var height = Enumerable.Range(0, n + 1).Max(i => rest(begin.Plan + (double)i / n * (to.Plan - begin.Plan)));
        height = Math.Max(height, Math.Max(begin.Z, to.Z));
        if (height > wood) return false;
        path.Line(begin with { Z = height });
        path.Line(to.Plan, height);
        return true;
    }
}
