namespace Solidbody.Geometry;

/// <summary>An upright rectangle in a plan, mm; empty when a lower bound exceeds its upper one.</summary>
public readonly record struct Box2(double X0, double Y0, double X1, double Y1)
{
    public static Box2 Empty => new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);
    public bool IsEmpty => !(X0 <= X1 && Y0 <= Y1);
    public double Width => X1 - X0;
    public double Height => Y1 - Y0;
    public Point2 Centre => new((X0 + X1) / 2, (Y0 + Y1) / 2);
    public Box2 With(Point2 p) => new(Math.Min(X0, p.X), Math.Min(Y0, p.Y), Math.Max(X1, p.X), Math.Max(Y1, p.Y));
    public Box2 Grown(double by) => new(X0 - by, Y0 - by, X1 + by, Y1 + by);
    public bool Contains(Point2 p) => p.X >= X0 && p.X <= X1 && p.Y >= Y0 && p.Y <= Y1;
    public bool Touches(Box2 b) => X0 <= b.X1 && b.X0 <= X1 && Y0 <= b.Y1 && b.Y0 <= Y1;
    public static Box2 Around(IEnumerable<Point2> points) => points.Aggregate(Empty, (box, p) => box.With(p));
}
