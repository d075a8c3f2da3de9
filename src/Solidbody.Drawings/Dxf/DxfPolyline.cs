using Solidbody.Geometry;

namespace Solidbody.Drawings.Dxf;

/// <summary>Polylines: corners joined by lines, or by arcs given by their bulge.</summary>
internal static class DxfPolyline
{
    private const int ClosedFlag = 1, Spatial = 8, Mesh = 16, FaceMesh = 64, FrameOfSpline = 16;

    private readonly record struct Corner(Point2 At, double Bulge);

    public static void Light(DxfEntity entity, Pen pen)
    {
        var corners = new List<Corner>();
        for (var i = entity.From + 1; i < entity.To; i++)
        {
            var code = entity.Groups[i].Code;
            if (code == 10) corners.Add(new(new(entity.NumberAt(i), 0), 0));
            if (corners.Count == 0) continue;
            if (code == 20) corners[^1] = corners[^1] with { At = new(corners[^1].At.X, entity.NumberAt(i)) };
            if (code == 42) corners[^1] = corners[^1] with { Bulge = entity.NumberAt(i) };
        }
        Draw(corners, (entity.Flags(70) & ClosedFlag) != 0, pen);
    }

    /// <param name="vertices">The entities VERTEX that follow it.</param>
    public static void Old(DxfEntity entity, List<DxfEntity> vertices, Pen pen, ReadingLog log)
    {
        var flags = entity.Flags(70);
        if ((flags & (Mesh | FaceMesh)) != 0)
        {
            log.Refuse(entity.At, "POLYLINE is a mesh in space", "a polyline in the plan", "draw the outline as a polyline");
            return;
        }
        // A polyline that was smoothed keeps the frame it was smoothed from among its corners.
        var corners = vertices.Where(v => (v.Flags(70) & FrameOfSpline) == 0).ToList();
        if ((flags & Spatial) != 0 && corners.Any(v => Math.Abs(v.Number(30, 0) - corners[0].Number(30, 0)) > Tolerances.Geometry))
        {
            log.Refuse(entity.At, "POLYLINE rises out of the plan", "a drawing in one plan, seen from above", "draw it flat");
            return;
        }
        Draw([.. corners.Select(v => new Corner(v.Point(10), v.Number(42, 0)))], (flags & ClosedFlag) != 0, pen);
    }

    private static void Draw(List<Corner> corners, bool closed, Pen pen)
    {
        if (corners.Count < 2) return;
        pen.Start(corners[0].At);
        for (var i = 1; i < corners.Count; i++) Side(corners[i - 1], corners[i].At, pen);
        if (closed) Side(corners[^1], corners[0].At, pen);
        if (closed) pen.Close(); else pen.Lift();
    }

    /// <summary>Bulge b = tan(θ / 4), counter-clockwise positive: the centre lies left of the chord's middle by c (1 − b²) / (4 b).</summary>
    private static void Side(Corner from, Point2 to, Pen pen)
    {
        var (b, chord) = (from.Bulge, to - from.At);
        if (b == 0 || chord.Length == 0)
        {
            pen.Line(to);
            return;
        }
        var centre = 0.5 * (from.At + to) + (1 - b * b) / (4 * b) * chord.Left;
        var u = from.At - centre;
        pen.Arc(centre, u, u.Left, 0, 4 * Math.Atan(b), to);
    }
}
