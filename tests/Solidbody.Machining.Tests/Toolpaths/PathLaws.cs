using System.Collections.Immutable;
using Solidbody.Machining.Toolpaths;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Toolpaths;

/// <summary>What holds for every toolpath.</summary>
internal static class PathLaws
{
    /// <summary>Starts and ends at clearance, no gap, feeds set and kept slow on the way down, rapids only straight up, straight down or at one height.</summary>
    public static ImmutableArray<Motion> Checked(this ImmutableArray<Motion> path, CutSettings s)
    {
        Assert.NotEmpty(path);
        Assert.Equal(s.Clearance, path[0].From.Z);
        Assert.Equal(s.Clearance, path[^1].To.Z);
        for (var i = 1; i < path.Length; i++) Assert.Equal(path[i - 1].To, path[i].From);
        foreach (var m in path)
        {
            Assert.True(double.IsFinite(m.Length) && m.Length > 0);
            if (m.Kind == MotionKind.Rapid)
            {
                Assert.Equal(0, m.Feed);
                Assert.True(m.From.Z == m.To.Z ? m.From.Z == s.Clearance : m.From.Plan == m.To.Plan, $"rapid aslant or low: {m}");
                continue;
            }
            Assert.InRange(m.Feed, 1e-9, s.Feed + 1e-9);
            Assert.True((m.From.Z - m.To.Z) / m.Length * m.Feed <= s.PlungeFeed + 1e-9, $"sinks faster than the plunge feed: {m}");
        }
        return path;
    }

    /// <summary>No motion that travels in the plan sinks more steeply than the ramp; 1e-4 rad for chords, which are shorter than their arcs.</summary>
    public static ImmutableArray<Motion> RampsKept(this ImmutableArray<Motion> path, CutSettings s)
    {
        foreach (var m in path.Where(m => m.Kind != MotionKind.Rapid && m.To.Z < m.From.Z))
        {
            var plan = m.IsArc ? (m.From.Plan - m.Centre).Length * Math.Abs(m.Sweep) : m.From.Plan.DistanceTo(m.To.Plan);
            if (plan > 1e-6) Assert.True(Math.Atan2(m.From.Z - m.To.Z, plan) <= s.RampAngle + 1e-4, $"steeper than the ramp: {m}");
        }
        return path;
    }
}
