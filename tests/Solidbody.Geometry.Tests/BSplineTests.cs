using CsCheck;

namespace Solidbody.Geometry.Tests;

public class BSplineTests
{
    private static readonly Gen<BSpline> Any = Gen.Select(Gen.Select(Gen.Double[-200, 200], Gen.Double[-200, 200], (x, y) => new Point2(x, y)).Array[6, 40], Gen.Bool,
        (controls, closed) => new BSpline([.. controls], closed));

    [Fact]
    public void Place_speed_and_bend_are_continuous_where_spans_meet() => Any.Sample(curve =>
    {
        for (var s = 0; s + 1 < curve.Spans; s++)
            if (curve.At(s, 1).DistanceTo(curve.At(s + 1, 0)) > 1e-9 || curve.Velocity(s, 1).DistanceTo(curve.Velocity(s + 1, 0)) > 1e-9
                || curve.Acceleration(s, 1).DistanceTo(curve.Acceleration(s + 1, 0)) > 1e-9) return false;
        return true;
    });

    [Fact]
    public void Derivatives_agree_with_central_differences() => Any.Select(Gen.Double[0.1, 0.9]).Sample((curve, t) =>
    {
        const double h = 1e-5;
        var velocity = 1 / (2 * h) * (curve.At(1, t + h) - curve.At(1, t - h));
        var acceleration = 1 / (2 * h) * (curve.Velocity(1, t + h) - curve.Velocity(1, t - h));
        return velocity.DistanceTo(curve.Velocity(1, t)) < 1e-4 && acceleration.DistanceTo(curve.Acceleration(1, t)) < 1e-4;
    });

    [Fact]
    public void Chords_stray_no_further_than_the_tolerance() => Any.Select(Gen.Double[0.001, 0.5]).Sample((curve, tolerance) =>
    {
        var points = curve.Flatten(tolerance);
        var at = 0;
        for (var s = 0; s < curve.Spans; s++)
        {
            var bend = Math.Max(curve.Acceleration(s, 0).Length, curve.Acceleration(s, 1).Length);
            var n = Math.Max(1, (int)Math.Ceiling(Math.Sqrt(bend / (8 * tolerance))));
            for (var i = 0; i < n; i++, at++)
            {
                var (a, b) = (points[at], points[(at + 1) % points.Length]);
                var middle = curve.At(s, (i + 0.5) / n);
                if ((b - a).Length > 1e-9 && Math.Abs((middle - a).Cross(b - a)) / (b - a).Length > tolerance * 1.0001) return false;
            }
        }
        return true;
    }, iter: 300);

    [Fact]
    public void A_polygon_of_equal_points_on_a_circle_bends_the_curve_like_one()
    {
        // Sixty-four controls on r = 100: the curve is round to O(1/n⁴) of its own radius r (2 + cos(2π/n))/3 (uniform cubic B-spline weights 1, 4, 1).
        const int n = 64;
        var curve = new BSpline([.. Enumerable.Range(0, n).Select(i => 100 * Point2.Polar(2 * Math.PI * i / n))], true);
        var radius = 100 * (2 + Math.Cos(2 * Math.PI / n)) / 3;
        Assert.Equal(radius, curve.At(5, 0).Length, 9);
        Assert.Equal(1 / radius, curve.Curvature(5, 0), 4);
    }
}
