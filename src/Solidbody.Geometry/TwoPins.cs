namespace Solidbody.Geometry;

/// <summary>How far a blank on two dowels can lie from where it should: exact pins, holes wider by the play at both.</summary>
public static class TwoPins
{
    /// <summary>Greatest turn, radians.</summary>
    /// <param name="play">Hole less pin, in diameter: c, mm; 0 ≤ c &lt; L. With several interfaces, the sum of their plays.</param>
    /// <param name="baseline">Between the pins: L, mm; &gt; 0.</param>
    /// <returns>asin(c/L): one end shifts by c/2 to one side, the other by c/2 to the other. Closed form, plane geometry.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The play is negative or not smaller than the baseline.</exception>
    public static double MostTurn(double play, double baseline)
    {
        if (!(play >= 0 && play < baseline))
            throw new ArgumentOutOfRangeException(nameof(play), play, $"Play must lie in [0, {baseline}) mm, the distance between the pins.");
        return Math.Asin(play / baseline);
    }

    /// <summary>Greatest sideways offset of a point, mm.</summary>
    /// <param name="play">c, mm, as above.</param>
    /// <param name="baseline">L, mm, as above.</param>
    /// <param name="fromMiddle">How far the point lies from the middle between the pins, along their line: a, mm; ≥ 0.</param>
    /// <returns>max(c/2, c·a/L): between the pins the plain shift rules, beyond them the turn.</returns>
    public static double MostOffset(double play, double baseline, double fromMiddle) =>
        Math.Max(play / 2, fromMiddle * Math.Sin(MostTurn(play, baseline)));
}
