using Solidbody.Geometry;

namespace Solidbody.Drawings.Svg;

/// <summary>An elliptical arc from its two ends to its centre: SVG 1.1, appendix F.6.5 and F.6.6.</summary>
internal static class SvgArc
{
    /// <param name="rx">0 or more; radii too small to reach are grown in their proportion (F.6.6).</param>
    /// <param name="turn">Of the first axis, radians.</param>
    /// <returns>The ellipse as centre and half-diameters, start angle and sweep; null where the arc is a straight line (a radius of 0) or nothing.</returns>
    public static (Point2 Centre, Point2 U, Point2 V, double From, double Sweep)? Of(Point2 a, double rx, double ry, double turn, bool large, bool sweep, Point2 b)
    {
        if (rx == 0 || ry == 0 || a == b) return null;
        // F.6.5.1: half the chord in the ellipse's own directions.
        var half = (0.5 * (a - b)).Turned(-turn);
        var reach = half.X / rx * (half.X / rx) + half.Y / ry * (half.Y / ry);
        if (reach > 1) (rx, ry) = (rx * Math.Sqrt(reach), ry * Math.Sqrt(reach));
        // F.6.5.2 in coordinates where the ellipse is a unit circle: the centre lies square to the chord.
        var (px, py) = (half.X / rx, half.Y / ry);
        var square = px * px + py * py;
        if (!(square > 0) || !double.IsFinite(square)) return null;
        var k = Math.Sqrt(Math.Max(0, 1 / square - 1)) * (large == sweep ? -1 : 1);
        var (cx, cy) = (k * py, -k * px);
        var from = Math.Atan2(py - cy, px - cx);
        var swept = Math.Atan2(-py - cy, -px - cx) - from;
        if (sweep && swept < 0) swept += 2 * Math.PI;
        if (!sweep && swept > 0) swept -= 2 * Math.PI;
        var centre = 0.5 * (a + b) + new Point2(rx * cx, ry * cy).Turned(turn);
        return (centre, rx * Point2.Polar(turn), ry * Point2.Polar(turn).Left, from, swept);
    }
}
