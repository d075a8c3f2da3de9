using Solidbody.Drawings.Curves;
using Solidbody.Geometry;

namespace Solidbody.Drawings;

/// <summary>Draws lines and curves of a drawing's own coordinates as chords in mm, and counts what it draws.</summary>
internal sealed class Pen(ReadingLog log)
{
    private readonly List<Piece> pieces = [];
    private List<Point2> points = [];
    private string name = "";
    private DrawingPlace at;
    private int drawn, shapes;

    /// <summary>From the drawing's coordinates to mm.</summary>
    public Affine Map { get; set; } = Affine.Identity;

    public IReadOnlyList<Piece> Pieces => pieces;

    /// <summary>A new shape: of a place, under a name.</summary>
    public void Take(string shapeName, DrawingPlace place)
    {
        (name, at) = (shapeName, place);
        if (++shapes > DrawingLimits.Shapes)
            throw log.Stop(at, $"the drawing holds more than {DrawingLimits.Shapes} shapes, copies counted each time", $"at most {DrawingLimits.Shapes}", "keep the outline alone in a file of its own");
    }

    public void Start(Point2 p)
    {
        Lift();
        Add(Map.Point(p));
    }

    public void Line(Point2 to) => Add(Map.Point(to));

    /// <summary>A Bézier curve from where the pen is; its last control is its end.</summary>
    public void Bezier(params ReadOnlySpan<Point2> controls)
    {
        Span<Weighted> all = stackalloc Weighted[controls.Length + 1];
        all[0] = Weighted.Of(points[^1], 1);
        for (var i = 0; i < controls.Length; i++) all[i + 1] = Weighted.Of(Checked(Map.Point(controls[i])), 1);
        BezierChords.Draw(all, Put);
    }

    /// <summary>A rational Bézier curve from where the pen is; controls and weights include its start.</summary>
    public void Bezier(ReadOnlySpan<Point2> controls, ReadOnlySpan<double> weights)
    {
        Span<Weighted> all = stackalloc Weighted[controls.Length];
        for (var i = 0; i < controls.Length; i++) all[i] = Weighted.Of(Checked(Map.Point(controls[i])), weights[i]);
        BezierChords.Draw(all, Put);
    }

    /// <summary>A stretch of an ellipse C + cos t · U + sin t · V from where the pen is, which must be its start.</summary>
    /// <param name="end">Its end as the drawing gives it; null takes the formula's.</param>
    public void Arc(Point2 centre, Point2 u, Point2 v, double from, double sweep, Point2? end = null)
    {
        EllipseChords.Draw(Map.Point(centre), Map.Vector(u), Map.Vector(v), from, sweep, end is { } e ? Map.Point(e) : null, Put);
    }

    /// <summary>A whole ellipse.</summary>
    public void Ellipse(Point2 centre, Point2 u, Point2 v)
    {
        Start(centre + u);
        Arc(centre, u, v, 0, 2 * Math.PI, centre + u);
        Close();
    }

    public void Close() => End(closed: true);
    public void Lift() => End(closed: false);

    private void End(bool closed)
    {
        if (closed && points.Count > 1 && points[0].DistanceTo(points[^1]) <= Tolerances.Geometry) points.RemoveAt(points.Count - 1);
        if (points.Count > 1) pieces.Add(new(points, closed, name, at));
        points = [];
    }

    private bool Put(Point2 p)
    {
        Add(p);
        return true;
    }

    private void Add(Point2 p)
    {
        Checked(p);
        if (points.Count > 0 && points[^1].DistanceTo(p) <= Tolerances.Geometry) return;
        if (++drawn > DrawingLimits.Points)
            throw log.Stop(at, $"the drawing's curves need more than {DrawingLimits.Points} points", $"at most {DrawingLimits.Points}", "keep the outline alone in a file of its own, and simplify a traced one");
        points.Add(p);
    }

    private Point2 Checked(Point2 p) => Math.Abs(p.X) <= DrawingLimits.Reach && Math.Abs(p.Y) <= DrawingLimits.Reach ? p
        : throw log.Stop(at, $"{name} reaches to {Show(p.X)}, {Show(p.Y)} mm", $"within {DrawingLimits.Reach} mm of the drawing's origin", "draw at full size, and check the drawing's unit");

    private static string Show(double v) => v.ToString("G4", System.Globalization.CultureInfo.InvariantCulture);
}
