using Solidbody.Geometry;

namespace Solidbody.Programs;

/// <summary>The four ways a program moves the cutter.</summary>
public enum MotionKind { Rapid, Line, ArcClockwise, ArcCounterClockwise }

/// <summary>One move of the cutter's tip, work frame. Arcs lie in the XY plane and may climb evenly in Z (a helix).</summary>
/// <param name="Kind">How.</param>
/// <param name="From">Where the tip was, mm.</param>
/// <param name="To">Where it ends, mm.</param>
/// <param name="Centre">Arcs: the centre in the plan, work frame. Otherwise (0, 0). An arc that ends where it began is a full turn.</param>
/// <param name="Feed">Feed along the path, mm/s; 0 for rapids.</param>
/// <param name="Line">Line of the program text, from 1; 0 before there is text.</param>
/// <param name="SpindleSpeed">Turns a second while moving; 0 when the spindle stands. Filled by the reader.</param>
public readonly record struct Motion(MotionKind Kind, WorkPoint From, WorkPoint To, Point2 Centre, double Feed, int Line = 0, double SpindleSpeed = 0)
{
    public bool IsArc => Kind is MotionKind.ArcClockwise or MotionKind.ArcCounterClockwise;

    /// <summary>Arc: swept angle, radians, positive counter-clockwise, size in (0, 2π]. Lines and rapids: 0.</summary>
    public double Sweep
    {
        get
        {
            if (!IsArc) return 0;
            var a = From.Plan - Centre;
            var b = To.Plan - Centre;
            var turn = Math.Atan2(a.Cross(b), a.Dot(b));
            if (Kind == MotionKind.ArcCounterClockwise) return turn <= 1e-12 ? turn + 2 * Math.PI : turn;
            return turn >= -1e-12 ? turn - 2 * Math.PI : turn;
        }
    }

    /// <summary>Length of the path, mm.</summary>
    public double Length
    {
        get
        {
            if (!IsArc) return From.DistanceTo(To);
            var plan = (From.Plan - Centre).Length * Math.Abs(Sweep);
            var climb = To.Z - From.Z;
            return Math.Sqrt(plan * plan + climb * climb);
        }
    }
}
