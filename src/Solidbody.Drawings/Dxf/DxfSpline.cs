using Solidbody.Drawings.Curves;
using Solidbody.Geometry;

namespace Solidbody.Drawings.Dxf;

/// <summary>Splines by controls, knots and weights. Periodic ones repeat their first controls and draw between their inner knots, as all others do.</summary>
internal static class DxfSpline
{
    private const int ClosedFlag = 1, PeriodicFlag = 2;

    public static void Draw(DxfEntity entity, Pen pen, ReadingLog log)
    {
        var (degree, flags) = ((int)entity.Number(71, 3), entity.Flags(70));
        var (xs, ys, zs, knots, weights) = (entity.Numbers(10), entity.Numbers(20), entity.Numbers(30), entity.Numbers(40), entity.Numbers(41));
        if (Wrong(degree, xs, ys, zs, knots, weights) is var (wrong, allowed, remedy))
        {
            log.Refuse(entity.At, wrong, allowed, remedy);
            return;
        }
        var controls = xs.Select((x, i) => Weighted.Of(new(x, ys[i]), weights.Length == 0 ? 1 : weights[i])).ToArray();
        var first = true;
        foreach (var span in SplineSpans.Of(degree, knots, controls))
        {
            if (first) pen.Start(span[0].Point);
            first = false;
            pen.Bezier(Array.ConvertAll(span, w => w.Point), Array.ConvertAll(span, w => w.W));
        }
        if ((flags & (ClosedFlag | PeriodicFlag)) != 0) pen.Close(); else pen.Lift();
    }

    private static (string Wrong, string Allowed, string Remedy)? Wrong(int degree, double[] xs, double[] ys, double[] zs, double[] knots, double[] weights)
    {
        if (degree is < 1 or > DrawingLimits.Degree) return ($"SPLINE has degree {degree}", $"1 to {DrawingLimits.Degree}", "draw it anew with degree 3");
        if (xs.Length == 0) return ("SPLINE has no control points, only points it passes near", "control points and knots", "save it with control points, or as a polyline");
        if (xs.Length <= degree || ys.Length != xs.Length) return ($"SPLINE has {xs.Length} control points, and {ys.Length} y values", $"at least {degree + 1}, each with x and y", "save the drawing again");
        if (knots.Length != xs.Length + degree + 1) return ($"SPLINE has {knots.Length} knots", $"{xs.Length + degree + 1}: its control points, its degree and one", "save the drawing again");
        for (var i = 1; i < knots.Length; i++) if (!(knots[i] >= knots[i - 1])) return ($"SPLINE's knot {i + 1} is smaller than the one before", "knots that rise or stay", "save the drawing again");
        if (!(knots[xs.Length] > knots[degree])) return ("SPLINE's knots are all the same", "knots that rise", "save the drawing again");
        if (weights.Length != 0 && weights.Length != xs.Length || weights.Any(w => !(w > 0))) return ("SPLINE has weights of 0 or less, or not one for each control point", "a weight above 0 for each", "draw it anew without weights");
        if (zs.Any(z => Math.Abs(z - zs[0]) > Tolerances.Geometry)) return ("SPLINE rises out of the plan", "a drawing in one plan, seen from above", "draw it flat");
        return null;
    }
}
