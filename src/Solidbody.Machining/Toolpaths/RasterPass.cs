using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>One pass of a surface raster along x: where the cutter works, and at what heights.</summary>
internal sealed class RasterPass(ZoneContact contact, Region zone, Region? skip, double lowest, double reach)
{
    /// <summary>Greatest error of a chord at the point between two stations that is tested, mm.</summary>
    private const double Chord = 0.002;
    /// <summary>What thinning the points may add, mm. Together with <see cref="Chord"/> under 0.005.</summary>
    private const double Thinning = 0.001;
    /// <summary>Steepest fall of a slide along the zone's edge.</summary>
    private const double SteepestSlide = 3;
    private const double FirstStep = 0.5, FinestStep = 0.03;
    /// <summary>How far a pass runs on into a skipped region, mm.</summary>
    private const double Overlap = 1.0;

    /// <summary>The runs of the pass at y, each a list of (x, z), x ascending.</summary>
    /// <remarks>The cutter works where its axis is over the zone, and beyond the zone's edge for as long as the inside still carries it:
    /// once the contact has reached the edge, going on would roll over it.</remarks>
    public List<List<(double X, double Z)>> Runs(double y)
    {
        var crossings = new List<double>();
        zone.Crossings(y, crossings);
        var skipped = new List<double>();
        skip?.Crossings(y, skipped);
        bool Works(double x, bool inside) => (inside || Over(crossings, x, 0)) && !Over(skipped, x, Overlap);

        var runs = new List<List<(double X, double Z)>>();
        List<(double X, double Z)>? run = null;
        (double X, bool Works) before = (double.NaN, false);
        foreach (var x in Stations(crossings))
        {
            var (z, inside) = contact.At(x, y);
            var works = !double.IsNegativeInfinity(z) && Works(x, inside);
            if (works != before.Works && !double.IsNaN(before.X))
            {
                var end = LastWorking(works ? x : before.X, works ? before.X : x, q => contact.At(q, y) is var (h, i) && !double.IsNegativeInfinity(h) && Works(q, i));
                if (works) runs.Add(run = [(end, Height(end, y))]);
                else run!.Add((end, Height(end, y)));
            }
            else if (works && run is null) runs.Add(run = []);
            if (works) run!.Add((x, Math.Max(lowest, z)));
            else run = null;
            before = (x, works);
        }
        return [.. runs.Select(r => LineThinning.Of(Filled(r, y), Thinning)).Where(r => r.Count > 0)];
    }

    /// <summary>The run, carried on as far as its neighbours go, sliding along the zone's edge: at an edge that runs aslant to the passes,
    /// the corner between two of them is cut by neither otherwise.</summary>
    public List<(double X, double Z)> AlongTheEdge(List<(double X, double Z)> run, double y, IEnumerable<List<(double X, double Z)>> neighbours)
    {
        var (first, last) = (run[0].X, run[^1].X);
        foreach (var n in neighbours) (first, last) = (Math.Min(first, n[0].X), Math.Max(last, n[^1].X));
        var before = Slide(run[0], Math.Max(first, run[0].X - reach), y);
        var after = Slide(run[^1], Math.Min(last, run[^1].X + reach), y);
        before.Reverse();
        return before.Count + after.Count == 0 ? run : [.. before, .. run, .. after];
    }

    /// <remarks>The cutter falls along its own curve as it leaves the edge, without bound at the rim: it goes no further than where it falls
    /// <see cref="SteepestSlide"/> to one, and points are put between until chords follow, as everywhere.</remarks>
    private List<(double X, double Z)> Slide((double X, double Z) end, double to, double y)
    {
        const double step = 0.1;
        var from = end.X;
        var points = new List<(double X, double Z)>();
        var skipped = new List<double>();
        skip?.Crossings(y, skipped);
        var n = (int)Math.Ceiling((Math.Abs(to - from) - Tolerances.Output) / step);
        for (var i = 1; i <= n; i++)
        {
            var x = from + (to - from) * i / n;
            var z = contact.At(x, y).Z;
            var before = points.Count == 0 ? end : points[^1];
            if (double.IsNegativeInfinity(z) || Over(skipped, x, Overlap) || before.Z - z > SteepestSlide * Math.Abs(x - before.X)) break;
            points.Add((x, Math.Max(lowest, z)));
        }
        if (points.Count == 0) return points;
        var ahead = to > from;
        List<(double X, double Z)> whole = [end, .. points];
        if (!ahead) whole.Reverse();
        var filled = Filled(whole, y);
        if (!ahead) filled.Reverse();
        return filled[1..];
    }

    private static bool Over(List<double> edges, double x, double inset)
    {
        for (var k = 0; k + 1 < edges.Count; k += 2)
            if (x >= edges[k] + inset && x <= edges[k + 1] - inset) return true;
        return false;
    }

    /// <summary>Height of the tip at (x, y), never below the lowest.</summary>
    public double Height(double x, double y) => Math.Max(lowest, contact.At(x, y).Z);

    /// <summary>Points between two of a straight way over the surface, ends left out, so close that chords follow the height; never under the straight line itself.</summary>
    public IEnumerable<(Point2 At, double Z)> Between((Point2 At, double Z) a, (Point2 At, double Z) b)
    {
        if (a.At.DistanceTo(b.At) <= FinestStep) yield break;
        var at = 0.5 * (a.At + b.At);
        var straight = (a.Z + b.Z) / 2;
        var middle = (at, Math.Max(straight, Height(at.X, at.Y)));
        var bends = middle.Item2 - straight > Chord;
        if (!bends && a.At.DistanceTo(b.At) <= FirstStep / 2) yield break;
        foreach (var p in Between(a, middle)) yield return p;
        yield return middle;
        foreach (var p in Between(middle, b)) yield return p;
    }

    private IEnumerable<double> Stations(List<double> crossings)
    {
        var (from, to) = (zone.Bounds.X0 - reach, zone.Bounds.X1 + reach);
        var n = (int)Math.Ceiling((to - from) / FirstStep);
        return Enumerable.Range(0, n + 1).Select(i => from + (to - from) * i / n).Concat(crossings.Select((x, k) => k % 2 == 0 ? x + Tolerances.Geometry : x - Tolerances.Geometry)).Order();
    }

    private static double LastWorking(double works, double rests, Func<double, bool> test)
    {
        for (var i = 0; i < 12; i++)
        {
            var middle = (works + rests) / 2;
            if (test(middle)) works = middle;
            else rests = middle;
        }
        return works;
    }

    /// <summary>Puts points between until chords follow the height.</summary>
    private List<(double X, double Z)> Filled(List<(double X, double Z)> run, double y)
    {
        var filled = new List<(double X, double Z)> { run[0] };
        for (var i = 1; i < run.Count; i++) Fill(run[i - 1], run[i]);
        return filled;

        void Fill((double X, double Z) a, (double X, double Z) b)
        {
            if (b.X - a.X > FinestStep)
            {
                var x = (a.X + b.X) / 2;
                var z = Height(x, y);
                if (Math.Abs(z - (a.Z + b.Z) / 2) > Chord)
                {
                    Fill(a, (x, z));
                    Fill((x, z), b);
                    return;
                }
            }
            if (b.X > filled[^1].X) filled.Add(b);
        }
    }
}
