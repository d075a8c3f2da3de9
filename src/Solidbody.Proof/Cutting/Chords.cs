using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Proof.Cutting;

/// <summary>A motion as straight pieces, work frame: the path itself for lines, chords on the path for arcs and helices.</summary>
internal static class Chords
{
    /// <summary>Farthest an arc lies from its chord, mm: what cutting by chords may leave on a wall.</summary>
    public const double Sagitta = 0.001;

    /// <summary>Longest straight piece, mm: keeps distances along it exact to 4e-6 mm in single precision.</summary>
    private const double LongestPiece = 50;

    /// <summary>Adds the end point of every piece of the motion; the first piece starts at <c>motion.From</c>.</summary>
    /// <remarks>A chord over the angle φ lies r(1 − cos(φ/2)) inside its arc.</remarks>
    public static void AddEnds(in Motion motion, List<WorkPoint> ends)
    {
        var pieces = Math.Max(1, (int)Math.Ceiling(motion.Length / LongestPiece));
        if (motion.IsArc)
        {
            var spoke = motion.From.Plan - motion.Centre;
            var radius = spoke.Length;
            if (radius > Sagitta)
            {
                var angle = 2 * Math.Acos(1 - Sagitta / radius);
                pieces = Math.Max(pieces, (int)Math.Ceiling(Math.Abs(motion.Sweep) / angle));
            }
            for (var i = 1; i < pieces; i++)
            {
                var p = motion.Centre + spoke.Turned(motion.Sweep * i / pieces);
                ends.Add(new(p.X, p.Y, Between(motion.From.Z, motion.To.Z, (double)i / pieces)));
            }
        }
        else
        {
            for (var i = 1; i < pieces; i++)
            {
                var k = (double)i / pieces;
                ends.Add(new(Between(motion.From.X, motion.To.X, k), Between(motion.From.Y, motion.To.Y, k), Between(motion.From.Z, motion.To.Z, k)));
            }
        }
        ends.Add(motion.To);
    }

    private static double Between(double a, double b, double k) => a + (b - a) * k;
}
