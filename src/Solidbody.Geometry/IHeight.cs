namespace Solidbody.Geometry;

/// <summary>A height over the plan: one z for every (x, y), in closed form. Thread-safe and without side effects.</summary>
public interface IHeight
{
    /// <summary>Height at (x, y), mm, in the frame of its owner; finite everywhere in the owner's bounds grown by 30 mm.</summary>
    double Z(double x, double y);
}

/// <summary>The same height everywhere.</summary>
public sealed record LevelHeight(double At) : IHeight
{
    public double Z(double x, double y) => At;
}

/// <summary>A plane that rises along x: <paramref name="At"/> where x is <paramref name="X"/>.</summary>
/// <param name="Slope">Rise per mm of x.</param>
public sealed record SlopedHeight(double At, double X, double Slope) : IHeight
{
    public double Z(double x, double y) => At + (x - X) * Slope;
}
