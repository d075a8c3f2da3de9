namespace Solidbody.Geometry;

/// <summary>A point in a set-up's work frame, mm: the numbers a program says. Z = 0 is the spoilboard, +Z up.</summary>
public readonly record struct WorkPoint(double X, double Y, double Z)
{
    public Point2 Plan => new(X, Y);
    public double DistanceTo(WorkPoint b)
    {
        double dx = X - b.X, dy = Y - b.Y, dz = Z - b.Z;
        return Math.Sqrt(dx * dx + dy * dy + dz * dz);
    }
}
