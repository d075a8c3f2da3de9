namespace Solidbody.Machining.Toolpaths;

/// <summary>A flat cutter on a plane that rises by t a millimetre. It touches with its uphill rim: with its tip R t above the plane on its axis it nowhere goes below.</summary>
/// <remarks>
/// It cuts level. A point q downhill of the axis lies R t + q t lower than that cut, so each place is finished by the axis that stands farthest downhill of it and still covers it.
/// A ball-end of the same width does no better at any slope under 1: it leaves a fillet of its own radius at every wall, and its passes must lie closer, 2√(D r − r²).
/// </remarks>
public static class FlatOnSlope
{
    /// <summary>Widest spacing of passes by diameter: side by side they would leave a thread standing where a program is rounded.</summary>
    private const double WidestByDiameter = 0.9;

    /// <summary>Height of the tip over the plane on its axis, mm: R t.</summary>
    /// <param name="radius">R, mm; positive.</param>
    /// <param name="slope">Rise a millimetre, of either sign.</param>
    public static double Lift(double radius, double slope) => radius * Math.Abs(slope);

    /// <summary>What stands at the foot of an upright wall, mm: R t (1 − c); nothing at an uphill wall, R t beside the slope, D t at a downhill one.</summary>
    /// <param name="radius">R, mm; positive.</param>
    /// <param name="slope">Rise a millimetre, of either sign.</param>
    /// <param name="uphill">c, cosine between the way into the wall and the way up the slope; −1 to 1.</param>
    /// <remarks>The only disc that reaches a wall's foot has its axis R before it, R c lower on the plane, and its tip R t over that.</remarks>
    public static double LeftAtWall(double radius, double slope, double uphill) => Lift(radius, slope) * (1 - uphill);

    /// <summary>Spacing of passes up and down the slope that leaves ridges of a given height, mm; at most 0.9 of the diameter.</summary>
    /// <param name="diameter">D, mm; positive.</param>
    /// <param name="slope">t, of either sign.</param>
    /// <param name="ridge">r, mm; positive.</param>
    /// <returns>s = 2√(D r/t − (r/t)²): midway between two passes the farthest axis downhill is √(R² − s²/4) away, so r = t (R − √(R² − s²/4)).</returns>
    public static double Spacing(double diameter, double slope, double ridge)
    {
        if (!(diameter > 0)) throw new ArgumentOutOfRangeException(nameof(diameter), diameter, "A cutter's diameter must be positive, mm.");
        if (!(ridge > 0)) throw new ArgumentOutOfRangeException(nameof(ridge), ridge, "Ridge height must be positive, mm.");
        var along = Math.Min(ridge / Math.Abs(slope), diameter / 2);
        return Math.Min(2 * Math.Sqrt(along * (diameter - along)), WidestByDiameter * diameter);
    }
}
