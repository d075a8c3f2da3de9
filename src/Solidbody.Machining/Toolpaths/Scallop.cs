namespace Solidbody.Machining.Toolpaths;

/// <summary>The ridge between two passes of a ball.</summary>
public static class Scallop
{
    /// <summary>Spacing of passes that leaves ridges of a given height on a flat face.</summary>
    /// <param name="ballRadius">R, mm; positive.</param>
    /// <param name="height">h, mm; 0 &lt; h ≤ R.</param>
    /// <returns>s = 2 √(h (2R − h)), mm.</returns>
    /// <remarks>Right triangle with legs s/2 and R − h and hypotenuse R.</remarks>
    public static double Spacing(double ballRadius, double height)
    {
        if (!(ballRadius > 0)) throw new ArgumentOutOfRangeException(nameof(ballRadius), ballRadius, "Ball radius must be positive, mm.");
        if (!(height > 0 && height <= ballRadius)) throw new ArgumentOutOfRangeException(nameof(height), height, $"Ridge height must lie in (0, {ballRadius}] mm.");
        return 2 * Math.Sqrt(height * (2 * ballRadius - height));
    }

    /// <summary>Angle between two passes of a ball of radius R around a convex edge of radius r that leaves ridges of height h.</summary>
    /// <returns>δ, radians: cos(δ/2) = ((r + R)² + (r + h)² − R²) / (2 (r + R) (r + h)).</returns>
    /// <remarks>Triangle of the edge's centre, a ball's centre (r + R away) and the ridge (r + h away, R from the ball's centre); law of cosines.</remarks>
    public static double AngleAround(double edgeRadius, double ballRadius, double height)
    {
        if (!(ballRadius > 0)) throw new ArgumentOutOfRangeException(nameof(ballRadius), ballRadius, "Ball radius must be positive, mm.");
        if (!(edgeRadius > 0)) throw new ArgumentOutOfRangeException(nameof(edgeRadius), edgeRadius, "Edge radius must be positive, mm.");
        var (far, ridge) = (edgeRadius + ballRadius, edgeRadius + height);
        return 2 * Math.Acos(Math.Clamp((far * far + ridge * ridge - ballRadius * ballRadius) / (2 * far * ridge), -1, 1));
    }
}
