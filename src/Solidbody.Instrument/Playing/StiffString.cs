namespace Solidbody.Instrument.Playing;

/// <summary>What a string's stiffness does to its pitch.</summary>
/// <remarks>
/// f_q = q/(2L) √(T/μ) [1 + k b + (k² + q² π²/2) b²], b = √(E I / T) / L, with k of its two ends clamped and the others pinned; for b ≪ 1.
/// Clamped at both ends (k = 2): P. M. Morse, Vibration and Sound, 1936, as quoted by the next source. Clamped at nut or fret and pinned at the saddle (k = 1):
/// M. B. Anderson, R. G. Beausoleil, Classical guitar intonation and compensation, J. Acoust. Soc. Am. 156 (2024) 683, read in the authors' manuscript.
/// Pinned at both (k = 0): f_q = q f √(1 + B q²), B = π² b²: N. H. Fletcher, T. D. Rossing, The Physics of Musical Instruments, ch. 2 (from memory).
/// </remarks>
public static class StiffString
{
    /// <summary>b = √(E I / T) / L, I = π d⁴ / 64.</summary>
    /// <param name="modulus">Young's modulus, N/mm².</param>
    /// <param name="diameter">Of the wire that is stiff, mm.</param>
    /// <param name="tension">N.</param>
    /// <param name="length">mm.</param>
    public static double Share(double modulus, double diameter, double tension, double length) =>
        Math.Sqrt(modulus * Math.PI * diameter * diameter * diameter * diameter / 64 / tension) / length;

    /// <summary>Pitch over that of a limp string.</summary>
    /// <param name="share">b.</param>
    /// <param name="clampedEnds">k: 0, 1 or 2.</param>
    /// <param name="partial">q, from 1.</param>
    public static double Sharpness(double share, int clampedEnds, int partial = 1) =>
        1 + clampedEnds * share + (clampedEnds * clampedEnds + partial * partial * Math.PI * Math.PI / 2) * share * share;

    /// <summary>B of a string pinned at both ends.</summary>
    public static double Inharmonicity(double share) => Math.PI * Math.PI * share * share;

    /// <summary>How much sharper than q times the fundamental of a limp string the q-th partial sounds, pinned at both ends, cents.</summary>
    public static double PartialCents(double inharmonicity, int partial) => 600 * Math.Log2(1 + inharmonicity * partial * partial);
}
