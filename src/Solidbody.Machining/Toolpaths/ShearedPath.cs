using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Lays a path made for level floors on a slope: every height grows with the way uphill. Straight lines stay straight, so nothing is lost; arcs would not stay arcs.</summary>
internal static class ShearedPath
{
    /// <param name="level">Lines and rapids; what is at clearance stays there.</param>
    /// <param name="s">The settings it was made with.</param>
    /// <param name="rise">Height added over a place.</param>
    public static ImmutableArray<Motion> Of(ImmutableArray<Motion> level, CutSettings s, Func<Point2, double> rise)
    {
        WorkPoint Raised(WorkPoint p) => p.Z >= s.Clearance ? p : p with { Z = Math.Min(s.Clearance, p.Z + rise(p.Plan)) };
        return [.. level.Select(m => Fed(m with { From = Raised(m.From), To = Raised(m.To) }, s)).Where(m => m.Length > Tolerances.Geometry)];
    }

    /// <summary>Going down, as slow as keeps the vertical speed within the plunge feed.</summary>
    private static Motion Fed(Motion m, CutSettings s)
    {
        if (m.IsArc) throw new ArgumentException("An arc laid on a slope is no arc: make the level path without.", nameof(m));
        var drop = m.From.Z - m.To.Z;
        return m.Kind == MotionKind.Rapid || drop <= 0 ? m : m with { Feed = Math.Min(s.Feed, s.PlungeFeed * m.Length / drop) };
    }
}
