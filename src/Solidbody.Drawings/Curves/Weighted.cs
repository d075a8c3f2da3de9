using Solidbody.Geometry;

namespace Solidbody.Drawings.Curves;

/// <summary>A control point in homogeneous form: (w x, w y, w).</summary>
internal readonly record struct Weighted(double X, double Y, double W)
{
    public static Weighted Of(Point2 p, double w) => new(w * p.X, w * p.Y, w);
    public Point2 Point => new(X / W, Y / W);
    /// <summary>Part t of the way from a to b.</summary>
    public static Weighted Between(Weighted a, Weighted b, double t) => new(a.X + t * (b.X - a.X), a.Y + t * (b.Y - a.Y), a.W + t * (b.W - a.W));
}
