namespace Solidbody.Geometry;

/// <summary>A point or a vector in a plan, mm. The plan is the part's own unless the variable's name says otherwise.</summary>
public readonly record struct Point2(double X, double Y)
{
    public static Point2 Polar(double angle) => new(Math.Cos(angle), Math.Sin(angle));
    public static Point2 operator +(Point2 a, Point2 b) => new(a.X + b.X, a.Y + b.Y);
    public static Point2 operator -(Point2 a, Point2 b) => new(a.X - b.X, a.Y - b.Y);
    public static Point2 operator -(Point2 a) => new(-a.X, -a.Y);
    public static Point2 operator *(double k, Point2 a) => new(k * a.X, k * a.Y);
    public static Point2 operator *(Point2 a, double k) => new(k * a.X, k * a.Y);
    public double Dot(Point2 b) => X * b.X + Y * b.Y;
    /// <summary>z of the cross product: positive when <paramref name="b"/> lies to the left of this vector.</summary>
    public double Cross(Point2 b) => X * b.Y - Y * b.X;
    public double Length => Math.Sqrt(X * X + Y * Y);
    public double DistanceTo(Point2 b) => (this - b).Length;
    /// <summary>The same direction, length 1; the zero vector stays zero.</summary>
    public Point2 Unit { get { var l = Length; return l > 0 ? new(X / l, Y / l) : this; } }
    /// <summary>Turned a quarter to the left.</summary>
    public Point2 Left => new(-Y, X);
    public Point2 Turned(double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return new(cos * X - sin * Y, sin * X + cos * Y);
    }
    /// <summary>Coordinates only: a record's own text would follow <see cref="Unit"/> and <see cref="Left"/> without end.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"({X}, {Y})");
}
