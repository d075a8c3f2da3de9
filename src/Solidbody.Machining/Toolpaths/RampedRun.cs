using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>One run of a cutter along a profile that lies in wood: it sinks no steeper than the ramp, and goes back over what a ramp left standing.</summary>
internal sealed class RampedRun
{
    private const double Station = 0.5;
    /// <summary>What may stay standing of a ramp, mm.</summary>
    private const double Left = 0.01;

    private readonly PathBuilder path;
    private readonly double sink;
    private readonly List<(Point2 P, double Z)> stations = [];
    private readonly double[] cut;

    /// <param name="path">Receives the motions; its tip is over the run's start, in room.</param>
    /// <param name="s">Settings.</param>
    /// <param name="profile">Points of the tip, in order.</param>
    /// <param name="wood">Height of the wood along the run.</param>
    public RampedRun(PathBuilder path, CutSettings s, IReadOnlyList<WorkPoint> profile, double wood)
    {
        this.path = path;
        sink = Math.Tan(s.RampAngle);
        stations.Add((profile[0].Plan, profile[0].Z));
        for (var i = 1; i < profile.Count; i++)
        {
            var (a, b) = (profile[i - 1], profile[i]);
            var n = Math.Max(1, (int)Math.Ceiling(a.Plan.DistanceTo(b.Plan) / Station));
            for (var k = 1; k <= n; k++)
                stations.Add((a.Plan + (double)k / n * (b.Plan - a.Plan), a.Z + (b.Z - a.Z) * k / n));
        }
        cut = [.. stations.Select(p => Math.Max(wood, p.Z))];
        cut[0] = Math.Max(stations[0].Z, Math.Min(wood, path.At.Z));
    }

    /// <summary>Cuts the whole profile and ends at its far end.</summary>
    public void Cut()
    {
        path.Line(stations[0].P, cut[0]);
        var wedge = Stands(0) ? 0 : -1;
        for (var i = 1; i < stations.Count; i++)
        {
            Go(i);
            if (Stands(i)) wedge = wedge < 0 ? i - 1 : wedge;
            else if (wedge >= 0)
            {
                Clean(wedge, i);
                wedge = -1;
            }
        }
        if (wedge >= 0) Clean(wedge, stations.Count - 1);
    }

    private bool Stands(int i) => cut[i] > stations[i].Z + Left;

    /// <summary>Back and forth over what stands, stretch by stretch, then on to the last station. A notch narrower than two stations stays for finishing.</summary>
    private void Clean(int first, int last)
    {
        var (at, a) = (last, first);
        while (a <= last)
        {
            if (!Stands(a)) { a++; continue; }
            var b = a;
            while (b < last && Stands(b + 1)) b++;
            if (a == b) { a++; continue; }
            while (at > a) Go(--at);
            while (at < b) Go(++at);
        }
        while (at < last) Go(++at);
    }

    private void Go(int i)
    {
        var (p, z) = stations[i];
        cut[i] = Math.Max(z, Math.Min(cut[i], path.At.Z - sink * path.At.Plan.DistanceTo(p)));
        path.Line(p, cut[i]);
    }
}
