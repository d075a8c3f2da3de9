using Solidbody.Geometry;

namespace Solidbody.Drawings.Dxf;

/// <summary>Lines, circles, arcs and ellipses.</summary>
internal static class DxfCurves
{
    public static void Line(DxfEntity entity, Pen pen)
    {
        if (Math.Abs(entity.Number(30, 0) - entity.Number(31, 0)) > Tolerances.Geometry)
        {
            entity.Log.Refuse(entity.At, "LINE rises out of the plan", "a drawing in one plan, seen from above", "draw it flat");
            return;
        }
        pen.Start(entity.Point(10));
        pen.Line(entity.Point(11));
        pen.Lift();
    }

    /// <summary>A circle, or of it the stretch counter-clockwise between two angles in degrees.</summary>
    public static void Arc(DxfEntity entity, Pen pen)
    {
        var (centre, radius) = (entity.Point(10), entity.Number(40));
        if (!IsSize(radius, entity, "its radius")) return;
        var (u, v) = (new Point2(radius, 0), new Point2(0, radius));
        if (entity.Type == "CIRCLE") pen.Ellipse(centre, u, v);
        else Stretch(pen, centre, u, v, double.DegreesToRadians(entity.Number(50)), double.DegreesToRadians(entity.Number(51)));
    }

    /// <summary>By its greater half-diameter, the other one's part of that, and two parameters in radians.</summary>
    public static void Ellipse(DxfEntity entity, Pen pen, ReadingLog log)
    {
        var (centre, major, ratio) = (entity.Point(10), entity.Point(11), entity.Number(40));
        if (!IsSize(ratio, entity, "the ratio of its axes") || !IsSize(major.Length, entity, "its axis")) return;
        if (Math.Abs(entity.Number(31, 0)) > Tolerances.Geometry)
        {
            log.Refuse(entity.At, "ELLIPSE rises out of the plan", "a drawing in one plan, seen from above", "draw it flat");
            return;
        }
        // The other axis is the plane's direction crossed with the first.
        var minor = ratio * Math.Sign(entity.Number(230, 1)) * major.Left;
        var (from, to) = (entity.Number(41, 0), entity.Number(42, 2 * Math.PI));
        if (Math.Abs(to - from - 2 * Math.PI) < 1e-6) pen.Ellipse(centre, major, minor);
        else Stretch(pen, centre, major, minor, from, to);
    }

    private static void Stretch(Pen pen, Point2 centre, Point2 u, Point2 v, double from, double to)
    {
        var sweep = Math.IEEERemainder(to - from, 2 * Math.PI);
        if (sweep <= 0) sweep += 2 * Math.PI;
        pen.Start(Curves.EllipseChords.At(centre, u, v, from));
        pen.Arc(centre, u, v, from, sweep);
        pen.Lift();
    }

    private static bool IsSize(double value, DxfEntity entity, string what)
    {
        if (value > 0) return true;
        entity.Log.Refuse(entity.At, $"{what} is {value.ToString(System.Globalization.CultureInfo.InvariantCulture)}, in {entity.Type}", "above 0", "correct or remove it");
        return false;
    }
}
