using Solidbody.Geometry;

namespace Solidbody.Drawings;

/// <summary>An affine map of the plan, x′ = a x + c y + e, y′ = b x + d y + f; the letters are those of SVG 1.1, section 7.4.</summary>
internal readonly record struct Affine(double A, double B, double C, double D, double E, double F)
{
    public static Affine Identity { get; } = new(1, 0, 0, 1, 0, 0);
    public static Affine Shift(Point2 by) => new(1, 0, 0, 1, by.X, by.Y);
    public static Affine Scale(double x, double y) => new(x, 0, 0, y, 0, 0);
    public static Affine Turn(double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return new(cos, sin, -sin, cos, 0, 0);
    }

    public Point2 Point(Point2 p) => new(A * p.X + C * p.Y + E, B * p.X + D * p.Y + F);
    /// <summary>A direction: the shift does not move it.</summary>
    public Point2 Vector(Point2 v) => new(A * v.X + C * v.Y, B * v.X + D * v.Y);

    /// <summary>The map that does <paramref name="inner"/> first.</summary>
    public Affine After(Affine inner)
    {
        var (x, y, at) = (Vector(new(inner.A, inner.B)), Vector(new(inner.C, inner.D)), Point(new(inner.E, inner.F)));
        return new(x.X, x.Y, y.X, y.Y, at.X, at.Y);
    }
}
