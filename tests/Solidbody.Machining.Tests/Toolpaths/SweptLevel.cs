using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Toolpaths;

/// <summary>The lowest that flat cutters came over a point: each motion in closed form, from nothing but the motions themselves.</summary>
internal sealed class SweptLevel(IEnumerable<(ImmutableArray<Motion> Path, double Radius)> cuts)
{
    private readonly (Motion Motion, double Radius)[] motions = [.. cuts.SelectMany(c => c.Path.Select(m => (m, c.Radius)))];

    /// <summary>+∞ where no cutter came. Lines only.</summary>
    public double At(Point2 p)
    {
        var lowest = double.PositiveInfinity;
        foreach (var (m, radius) in motions)
        {
            Assert.False(m.IsArc);
            // |from + t way − p| = R: the span of t for which the disc covers the point; the height is linear in t.
            var (way, off) = (m.To.Plan - m.From.Plan, m.From.Plan - p);
            var (a, b, c) = (way.Dot(way), way.Dot(off), off.Dot(off) - radius * radius);
            var (t0, t1) = (0.0, 1.0);
            if (a < 1e-18) { if (c > 0) continue; }
            else
            {
                var d = b * b - a * c;
                if (d < 0) continue;
                (t0, t1) = (Math.Max(0, (-b - Math.Sqrt(d)) / a), Math.Min(1, (-b + Math.Sqrt(d)) / a));
                if (t0 > t1) continue;
            }
            lowest = Math.Min(lowest, Math.Min(m.From.Z + t0 * (m.To.Z - m.From.Z), m.From.Z + t1 * (m.To.Z - m.From.Z)));
        }
        return lowest;
    }
}
