using Solidbody.Geometry;

namespace Solidbody.Instrument.Outlines;

/// <summary>Polygons with rounded corners: heels and pockets.</summary>
internal static class RoundedPolygon
{
    /// <summary>A closed polygon whose corners are arcs tangent to both sides.</summary>
    /// <param name="corners">Corner points, counter-clockwise, each with its radius (0 is sharp); an arc must fit into its two sides.</param>
    public static Loop Of(params (Point2 At, double Radius)[] corners)
    {
        var points = new List<Point2>();
        for (var i = 0; i < corners.Length; i++)
        {
            var (at, radius) = corners[i];
            var into = (at - corners[(i + corners.Length - 1) % corners.Length].At).Unit;
            var away = (corners[(i + 1) % corners.Length].At - at).Unit;
            var turn = Math.Atan2(into.Cross(away), into.Dot(away));
            if (radius <= 0 || Math.Abs(turn) < 1e-9) { points.Add(at); continue; }
            var start = at - radius * Math.Tan(Math.Abs(turn) / 2) * into;
            var centre = start + Math.Sign(turn) * radius * into.Left;
            var n = Shapes.ChordsFor(radius, turn);
            points.AddRange(Enumerable.Range(0, n + 1).Select(k => centre + (start - centre).Turned(turn * k / n)));
        }
        return Loop.Of(points);
    }
}
