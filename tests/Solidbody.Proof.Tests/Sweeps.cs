using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Tests;

/// <summary>Cutting by the kernel, and the plain search it is held against.</summary>
internal static class Sweeps
{
    public const double Uncut = 10;
    private static readonly Placement AsIs = new(Side.Front, 0, new(0, 0, 0));

    public static CutSegment[] Segments(Cutter cutter, WorkPoint[] path)
    {
        var motions = path.Zip(path.Skip(1), (a, b) => new Motion(MotionKind.Line, a, b, default, 10)).ToImmutableArray();
        return CutPath.Of(motions, AsIs, CutterProfile.Of(cutter), 1e9);
    }

    /// <summary>Cuts a level face at <see cref="Uncut"/>; the stride is the grid's columns + 31.</summary>
    public static float[] Cut(Grid grid, CutSegment[] segments, CutterProfile profile, int bandRows = int.MaxValue)
    {
        var heights = new float[(grid.Columns + 31) * grid.Rows];
        Array.Fill(heights, (float)Uncut);
        var lowering = new Lowering(heights);
        for (long row = 0; row < grid.Rows; row += bandRows)
            foreach (var segment in segments)
                SweepKernel.Sweep(segment, profile, 0, grid, grid.Columns + 31, (int)row, (int)Math.Min(row + bandRows, grid.Rows), ref lowering);
        return heights;
    }

    /// <summary>Lowest z₀ + g t + E(d) along a path: sampled, then narrowed round the best sample by thirds, with the cutter's own height.</summary>
    public static double PlainHeight(Cutter cutter, WorkPoint[] path, Point2 p)
    {
        var best = double.PositiveInfinity;
        for (var i = 0; i + 1 < path.Length; i++)
        {
            var (a, b) = (path[i], path[i + 1]);
            // Where the disc reaches the point: |a + t(b − a) − p| ≤ R, a quadratic in t.
            var (dx, dy, ex, ey) = (b.X - a.X, b.Y - a.Y, a.X - p.X, a.Y - p.Y);
            var (qa, qb, qc) = (dx * dx + dy * dy, ex * dx + ey * dy, ex * ex + ey * ey - cutter.Radius * cutter.Radius);
            double low = 0, high = 1;
            if (qa < 1e-20) { if (qc > 0) continue; }
            else
            {
                var root = qb * qb - qa * qc;
                if (root < 0) continue;
                (low, high) = (Math.Max(0, (-qb - Math.Sqrt(root)) / qa), Math.Min(1, (-qb + Math.Sqrt(root)) / qa));
                if (low > high) continue;
            }
            double Z(double t) => a.Z + t * (b.Z - a.Z) + cutter.Height(Math.Min(cutter.Radius, Math.Sqrt((ex + t * dx) * (ex + t * dx) + (ey + t * dy) * (ey + t * dy))));
            const int samples = 60;
            var at = 0;
            for (var k = 0; k <= samples; k++)
                if (Z(low + (high - low) * k / samples) < Z(low + (high - low) * at / samples)) at = k;
            var (l, h) = (low + (high - low) * Math.Max(0, at - 1) / samples, low + (high - low) * Math.Min(samples, at + 1) / samples);
            for (var k = 0; k < 60; k++)
            {
                var (m1, m2) = (l + (h - l) / 3, h - (h - l) / 3);
                if (Z(m1) < Z(m2)) h = m2; else l = m1;
            }
            best = Math.Min(best, Math.Min(Math.Min(Z(low), Z(high)), Z((l + h) / 2)));
            if (cutter.Kind != CutterKind.Roundover || qa < 1e-20) continue;
            // The hollow's surface has corners the samples may miss: nearest to the axis, and where its flat tip ends.
            var nearest = -qb / qa;
            var half = Math.Sqrt(Math.Max(0, qb * qb - qa * (qc + cutter.Radius * cutter.Radius - cutter.TipRadius * cutter.TipRadius))) / qa;
            foreach (var t in new[] { nearest, nearest - half * (1 - 1e-9), nearest + half * (1 - 1e-9) }) best = Math.Min(best, Z(Math.Clamp(t, low, high)));
        }
        return best;
    }

    /// <summary>Whether the point lies where a cutter's edge is upright: the rim, and the hollow's inner edge. Rounding decides there.</summary>
    public static bool NearRim(Cutter cutter, WorkPoint[] path, Point2 p)
    {
        double[] edges = cutter.Kind == CutterKind.Roundover ? [cutter.Radius, cutter.TipRadius] : [cutter.Radius];
        for (var i = 0; i + 1 < path.Length; i++)
        {
            var (a, b) = (path[i].Plan, path[i + 1].Plan);
            var ab = b - a;
            var t = ab.Length < 1e-12 ? 0 : Math.Clamp((p - a).Dot(ab) / ab.Dot(ab), 0, 1);
            double[] distances = [p.DistanceTo(a + t * ab), p.DistanceTo(a), p.DistanceTo(b)];
            if (edges.Any(r => distances.Any(d => Math.Abs(d - r) < 2e-3))) return true;
        }
        return false;
    }

    /// <summary>1e-5 mm away from the rim, and what taking the rim's contact a millionth of R inside costs on the steepest path tried (g = 3);
    /// a hollow cutter's slopes are level steps of 0.001 mm, met by an edge that is steep near its tip.</summary>
    public static double Tolerance(Cutter cutter) => cutter.Kind == CutterKind.Roundover ? 2e-3 : 1e-5 + 3 * (1 - Proof.Cutting.SweptHeight.RimFactor) * cutter.Radius;
}
