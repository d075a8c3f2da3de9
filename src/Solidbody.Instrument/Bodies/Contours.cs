using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>How a slope begins: the integral of a smooth step, so that height, slope and curvature all start from nothing (docs/shapes.md).</summary>
internal static class Bend
{
    /// <summary>I(t) = 0 before 0, t³ − t⁴/2 to 1, t − 1/2 beyond: slope 3t² − 2t³.</summary>
    public static double Fall(double t) => t <= 0 ? 0 : t >= 1 ? t - 0.5 : t * t * t * (1 - t / 2);

    /// <summary>S(t) = t³ (6t² − 15t + 10) from 0 to 1; its second derivative is at most 10/√3.</summary>
    public static double Step(double t) => t <= 0 ? 0 : t >= 1 ? 1 : t * t * t * (t * (6 * t - 15) + 10);

    /// <summary>Greatest second derivative of <see cref="Step"/>.</summary>
    public static readonly double StepCurvature = 10 / Math.Sqrt(3);
}

/// <summary>The body's front with an arm contour: 2k tan(angle) · I((s + k) / 2k) below it, s being the distance past the bend's line, k half its length.</summary>
internal sealed record ArmContour(ArmContourDefinition C) : IHeight
{
    public double Z(double x, double y) => -Removed(new(x, y));

    public double Removed(Point2 p)
    {
        var n = Point2.Polar(C.Direction);
        var v = p - new Point2(C.X, C.Y);
        var (s, along, r) = (v.Dot(n), v.Dot(n.Left), C.BendRadius);
        if (r > 0) s = Math.Sqrt((s + r) * (s + r) + along * along) - r;
        return 2 * C.HalfBlend * Math.Tan(C.Angle) * Bend.Fall((s + C.HalfBlend) / (2 * C.HalfBlend));
    }

    /// <summary>Where wood is taken, as far as a plan reaches: beyond the line where the bend begins.</summary>
    public Region Zone(Box2 plan)
    {
        var (n, q, reach) = (Point2.Polar(C.Direction), new Point2(C.X, C.Y), ContourZone.Reach(plan));
        if (!(C.BendRadius > 0)) return new(ContourZone.Strip(q, n, -C.HalfBlend, reach, reach));
        // The part of a circle's edge that crosses the plan, closed far outside.
        var (centre, radius) = (q - C.BendRadius * n, C.BendRadius - C.HalfBlend);
        var half = Math.Min(Math.PI / 2, reach / radius);
        var chords = 2 * Shapes.ChordsFor(radius, half);
        var arc = Enumerable.Range(0, chords + 1).Select(i => centre + radius * Point2.Polar(C.Direction + half * (1 - 2.0 * i / chords))).ToList();
        return new(Loop.Of([.. arc, arc[^1] + 2 * reach * n, arc[0] + 2 * reach * n]));
    }
}

/// <summary>The body's back with a belly contour: as an arm contour, times a window across it.</summary>
internal sealed record BellyContour(BellyContourDefinition C, double Thickness) : IHeight
{
    public double Z(double x, double y) => -Thickness + Removed(new(x, y));

    public double Removed(Point2 p)
    {
        var n = Point2.Polar(C.Direction);
        var v = p - new Point2(C.X, C.Y);
        var (s, along, h, l) = (v.Dot(n), v.Dot(n.Left), C.WindowHalf, C.WindowBlend);
        return 2 * C.HalfBlend * Math.Tan(C.Angle) * Bend.Fall((s + C.HalfBlend) / (2 * C.HalfBlend)) * Bend.Step((along + h + l) / l) * Bend.Step((h + l - along) / l);
    }

    public Region Zone(Box2 plan) =>
        new(ContourZone.Strip(new(C.X, C.Y), Point2.Polar(C.Direction), -C.HalfBlend, ContourZone.Reach(plan), C.WindowHalf + C.WindowBlend));
}

/// <summary>Plans of contours.</summary>
internal static class ContourZone
{
    /// <summary>Beyond any point of the plan, from any place near it, mm.</summary>
    public static double Reach(Box2 plan) => 2 * (plan.Width + plan.Height);

    /// <summary>A rectangle from one distance past a point to another along a direction, so wide to both sides.</summary>
    public static Loop Strip(Point2 q, Point2 n, double from, double to, double half) =>
        Loop.Of([q + from * n - half * n.Left, q + to * n - half * n.Left, q + to * n + half * n.Left, q + from * n + half * n.Left]);
}
