using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Proof.Metering;

/// <summary>Cuts motions into steps so short that what a step meets hardly changes while it is made.</summary>
internal static class MotionSteps
{
    /// <summary>Most an arc turns in one step, radians: 5°.</summary>
    private const double MostTurn = Math.PI / 36;

    /// <summary>The steps of one motion, end to end, each of its kind and marked with <paramref name="mark"/> as its line.</summary>
    public static IEnumerable<Motion> Of(Motion motion, double longest, int mark)
    {
        var n = Math.Max(1, (int)Math.Ceiling(motion.Length / longest));
        if (motion.IsArc) n = Math.Max(n, (int)Math.Ceiling(Math.Abs(motion.Sweep) / MostTurn));
        var from = motion.From;
        for (var i = 1; i <= n; i++)
        {
            var to = i == n ? motion.To : At(motion, (double)i / n);
            yield return motion with { From = from, To = to, Line = mark };
            from = to;
        }
    }

    private static WorkPoint At(in Motion m, double k)
    {
        var z = m.From.Z + k * (m.To.Z - m.From.Z);
        var plan = m.IsArc ? m.Centre + (m.From.Plan - m.Centre).Turned(k * m.Sweep) : m.From.Plan + k * (m.To.Plan - m.From.Plan);
        return new(plan.X, plan.Y, z);
    }
}
