using System.Collections.Immutable;

namespace Solidbody.Geometry;

/// <summary>A uniform cubic B-spline in a plan: curvature-continuous everywhere; closed, or open over spans 1 … N−3.</summary>
/// <param name="Controls">Control points, mm; at least four.</param>
/// <param name="Closed">Whether indices wrap round.</param>
public sealed record BSpline(ImmutableArray<Point2> Controls, bool Closed)
{
    /// <summary>Number of spans; span s is read with t in [0, 1).</summary>
    public int Spans => Closed ? Controls.Length : Controls.Length - 3;

    private (Point2, Point2, Point2, Point2) Around(int span)
    {
        var n = Controls.Length;
        return Closed
            ? (Controls[(span + n - 1) % n], Controls[span % n], Controls[(span + 1) % n], Controls[(span + 2) % n])
            : (Controls[span], Controls[span + 1], Controls[span + 2], Controls[span + 3]);
    }

    /// <summary>Point of span s at t.</summary>
    public Point2 At(int span, double t)
    {
        var (a, b, c, d) = Around(span);
        var u = 1 - t;
        return 1.0 / 6 * (u * u * u * a + (3 * t * t * t - 6 * t * t + 4) * b + (-3 * t * t * t + 3 * t * t + 3 * t + 1) * c + t * t * t * d);
    }

    /// <summary>First derivative by t.</summary>
    public Point2 Velocity(int span, double t)
    {
        var (a, b, c, d) = Around(span);
        var u = 1 - t;
        return 0.5 * (-u * u * a + (3 * t * t - 4 * t) * b + (-3 * t * t + 2 * t + 1) * c + t * t * d);
    }

    /// <summary>Second derivative by t.</summary>
    public Point2 Acceleration(int span, double t)
    {
        var (a, b, c, d) = Around(span);
        return (1 - t) * a + (3 * t - 2) * b + (1 - 3 * t) * c + t * d;
    }

    /// <summary>Signed curvature, 1/mm; positive where the curve turns left.</summary>
    public double Curvature(int span, double t)
    {
        var v = Velocity(span, t);
        var speed = v.Length;
        return v.Cross(Acceleration(span, t)) / (speed * speed * speed);
    }

    /// <summary>Points along the curve so that no chord lies further than <paramref name="tolerance"/> from it. Closed curves do not repeat the first point.</summary>
    /// <remarks>Per span: |C″| is largest at an end (it is linear in t), and a chord over Δt strays at most |C″|Δt²/8.</remarks>
    public ImmutableArray<Point2> Flatten(double tolerance = Tolerances.Flattening)
    {
        var points = ImmutableArray.CreateBuilder<Point2>();
        for (var s = 0; s < Spans; s++)
        {
            var bend = Math.Max(Acceleration(s, 0).Length, Acceleration(s, 1).Length);
            var n = Math.Max(1, (int)Math.Ceiling(Math.Sqrt(bend / (8 * tolerance))));
            for (var i = 0; i < n; i++) points.Add(At(s, (double)i / n));
        }
        if (!Closed) points.Add(At(Spans - 1, 1));
        return points.ToImmutable();
    }
}
