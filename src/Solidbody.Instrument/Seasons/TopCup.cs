namespace Solidbody.Instrument.Seasons;

/// <summary>How a body and a top glued on it cup together, because one moves more across the grain than the other.</summary>
/// <param name="Width">Over which it is told: the body's widest, mm.</param>
/// <param name="Dry">Rise of the front's middle over its edges in the driest air, mm; negative is hollow; null where a wood has no figures.</param>
/// <param name="Wet">The same in the wettest air.</param>
public sealed record TopCup(double Width, double? Dry, double? Wet)
{
    /// <summary>Wood that gives way by and by cups less: this is the most.</summary>
    internal static TopCup Of(InstrumentDefinition d, TopDefinition top, MovingWidth body, MovingWidth cap)
    {
        // Across the grain both woods give by about the same share of what they do along it.
        var stiffer = d.WoodOf(top.Wood)?.Stiffness?.Value / d.WoodOf(d.Body.Wood)?.Stiffness?.Value ?? 1;
        double? Rise(double? capMoves, double? bodyMoves) => (capMoves - bodyMoves) / body.Width is { } strain
            ? Curvature(strain, top.Thickness, d.Body.Thickness - top.Thickness, stiffer) * body.Width * body.Width / 8 : null;
        return new(body.Width, Rise(cap.Dry, body.Dry), Rise(cap.Wet, body.Wet));
    }

    /// <summary>The greater of the two, without its sign; null where a wood has no figures.</summary>
    public double? Most => Dry is { } dry && Wet is { } wet ? Math.Max(Math.Abs(dry), Math.Abs(wet)) : null;

    /// <summary>Curvature of two layers glued together when one grows more than the other.</summary>
    /// <param name="strain">ε, by how much more the first grows, a part of its length.</param>
    /// <param name="first">Its thickness, mm; &gt; 0.</param>
    /// <param name="second">The other's thickness, mm; &gt; 0.</param>
    /// <param name="stiffer">n, the first's stiffness over the other's; &gt; 0.</param>
    /// <returns>1/mm; positive when the first comes to lie outside.</returns>
    /// <remarks>6 ε (1 + m)² / (h (3 (1 + m)² + (1 + m n)(m² + 1/(m n)))), m the first's thickness over the other's, h both together.
    /// Source: S. Timoshenko, Analysis of bi-metal thermostats, J. Opt. Soc. Am. 11 (1925) 233–255, from memory.</remarks>
    internal static double Curvature(double strain, double first, double second, double stiffer)
    {
        var m = first / second;
        var (both, product) = ((1 + m) * (1 + m), m * stiffer);
        return 6 * strain * both / ((first + second) * (3 * both + (1 + product) * (m * m + 1 / product)));
    }
}
