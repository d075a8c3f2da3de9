using Solidbody.Programs;
using Solidbody.Shop;

namespace Solidbody.Machining.Timing;

/// <summary>One motion as the time model sees it: its length, its limits along the path, its directions at both ends (unit vectors).</summary>
internal readonly record struct Leg(double Length, double Speed, double Acceleration,
    double StartX, double StartY, double StartZ, double EndX, double EndY, double EndZ)
{
    public static Leg Of(in Motion motion, Machine machine)
    {
        var length = motion.Length;
        var (dx, dy, climb) = (motion.To.X - motion.From.X, motion.To.Y - motion.From.Y, (motion.To.Z - motion.From.Z) / length);
        var level = Math.Sqrt(Math.Max(0, 1 - climb * climb));
        var (xy, z) = motion.Kind == MotionKind.Rapid ? (machine.RapidXY, machine.RapidZ) : (machine.FeedMostXY, machine.FeedMostZ);
        var speed = AlongPath(level, climb, xy, z);
        if (motion.Kind != MotionKind.Rapid) speed = Math.Min(speed, motion.Feed);
        var acceleration = AlongPath(level, climb, machine.AccelerationXY, machine.AccelerationZ);
        if (!motion.IsArc) return new(length, speed, acceleration, dx / length, dy / length, climb, dx / length, dy / length, climb);

        // On an arc the turning itself needs v²/R across the path: v ≤ √(a·R).
        var turn = Math.Sign(motion.Sweep);
        var (a, b) = (motion.From.Plan - motion.Centre, motion.To.Plan - motion.Centre);
        speed = Math.Min(speed, Math.Sqrt(machine.AccelerationXY * a.Length));
        var (start, end) = (turn * level * a.Unit.Left, turn * level * b.Unit.Left);
        return new(length, speed, acceleration, start.X, start.Y, climb, end.X, end.Y, climb);
    }

    /// <summary>The most along the path so that no axis passes its own limit.</summary>
    private static double AlongPath(double level, double climb, double xy, double z)
    {
        var most = double.PositiveInfinity;
        if (level > 1e-9) most = Math.Min(most, xy / level);
        if (Math.Abs(climb) > 1e-9) most = Math.Min(most, z / Math.Abs(climb));
        return most;
    }
}
