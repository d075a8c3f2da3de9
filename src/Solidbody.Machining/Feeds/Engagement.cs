namespace Solidbody.Machining.Feeds;

/// <summary>The part of a turn in which a tooth is in wood, and how thick its chip is there. Plane geometry of a circle that advances by the chip load;
/// its path is taken as a circle, which is right to the second order of chip load over diameter.</summary>
public static class Engagement
{
    /// <summary>Engagement angle φ = arccos(1 − 2·ae/D) beside a straight wall.</summary>
    /// <param name="width">ae, mm; over 0 and at most D.</param>
    /// <param name="diameter">D, mm; &gt; 0.</param>
    /// <returns>Radians in (0, π]; π/2 at ae = D/2, π in a slot.</returns>
    public static double Angle(double width, double diameter)
    {
        if (!(diameter > 0 && double.IsFinite(diameter))) throw new ArgumentOutOfRangeException(nameof(diameter), diameter, "A cutter's diameter is positive and finite, mm.");
        if (!(width > 0 && width <= diameter)) throw new ArgumentOutOfRangeException(nameof(width), width, $"The bite's width lies over 0 and at most at the diameter, {diameter} mm.");
        return Math.Acos(1 - 2 * width / diameter);
    }

    /// <summary>Width of the bite beside a straight wall that has this engagement angle: ae = D·(1 − cos φ)/2. The inverse of <see cref="Angle"/>.</summary>
    public static double Width(double angle, double diameter) => diameter * (1 - Math.Cos(Valid(angle))) / 2;

    /// <summary>Engagement angle where the cutter's middle goes round a bend towards the wood: cos φ = 1 − ae·(2(ρ + R) − ae)/(2ρR).</summary>
    /// <param name="width">ae, the layer's thickness, mm; over 0, at most D.</param>
    /// <param name="diameter">D = 2R, mm.</param>
    /// <param name="bend">ρ, radius of the middle's path, mm; ≥ 0, infinite on the straight.</param>
    /// <returns>Radians, at least that of the straight; π where the layer lies all round.</returns>
    /// <remarks>The wall made has radius ρ + R, the wood before it ρ + R − ae: a point of the cutter at φ from the wall's side is
    /// √(ρ² + R² + 2ρR·cos φ) from the bend's centre, which set equal to ρ + R − ae gives the formula.</remarks>
    public static double InBend(double width, double diameter, double bend)
    {
        var straight = Angle(width, diameter);
        var radius = diameter / 2;
        if (double.IsPositiveInfinity(bend)) return straight;
        if (!(bend >= 0)) throw new ArgumentOutOfRangeException(nameof(bend), bend, "A bend's radius is 0 or more, mm.");
        var cosine = 1 - width * (2 * (bend + radius) - width) / (2 * bend * radius);
        return Math.Max(straight, cosine > -1 ? Math.Acos(cosine) : Math.PI);
    }

    /// <summary>Engagement angle in the moment the cutter's middle stands on a corner between two straight walls: φ + β, at most π.
    /// The cutter touches both walls, β apart, with wood between them and φ further on.</summary>
    /// <param name="straight">φ on the straight, radians.</param>
    /// <param name="turn">β ≥ 0, how far the path turns towards the wood, radians.</param>
    public static double AtCorner(double straight, double turn) => Math.Min(Math.PI, Valid(straight) + Math.Max(0, turn));

    /// <summary>Thickest chip over the chip load: sin φ, 1 from φ = π/2 on.</summary>
    public static double Thickest(double angle) => Valid(angle) < Math.PI / 2 ? Math.Sin(angle) : 1;

    /// <summary>Mean chip over the chip load: (1 − cos φ)/φ.</summary>
    public static double Mean(double angle) => (1 - Math.Cos(Valid(angle))) / angle;

    /// <summary>Chip thinning: by how much the feed may grow for a chip as thick as the chip load, 1/sin φ; 1 from ae = D/2 on.</summary>
    public static double Thinning(double angle) => 1 / Thickest(angle);

    /// <summary>Greatest sum, at any one moment, of the chip thicknesses of all teeth in the wood, over the chip load.</summary>
    /// <param name="angle">φ, radians, in (0, π].</param>
    /// <param name="flutes">z ≥ 1, evenly spaced by δ = 2π/z.</param>
    /// <remarks>Of k teeth in the wood whose middle stands at ψ the thicknesses add up to sin ψ · sin(kδ/2)/sin(δ/2).
    /// ψ runs from (k − 1)δ/2 to φ − (k − 1)δ/2, an interval about φ/2 ≤ π/2: the best ψ is π/2 or its upper end. A spiral flute spreads this: it never takes more.</remarks>
    public static double Together(double angle, int flutes)
    {
        if (flutes < 1) throw new ArgumentOutOfRangeException(nameof(flutes), flutes, "A cutter has at least one flute.");
        if (flutes == 1) return Thickest(angle);
        var between = 2 * Math.PI / flutes;
        var most = 0.0;
        for (var teeth = 1; (teeth - 1) * between <= Valid(angle); teeth++)
        {
            var middle = Math.Min(Math.PI / 2, angle - (teeth - 1) * between / 2);
            most = Math.Max(most, Math.Sin(middle) * Math.Sin(teeth * between / 2) / Math.Sin(between / 2));
        }
        return most;
    }

    private static double Valid(double angle) => angle > 0 && angle <= Math.PI ? angle
        : throw new ArgumentOutOfRangeException(nameof(angle), angle, "An engagement angle lies over 0 and at most at π.");
}
