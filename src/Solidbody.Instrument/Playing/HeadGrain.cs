namespace Solidbody.Instrument.Playing;

/// <summary>How the grain runs through a headstock that leans back out of the same piece of wood as the shaft.</summary>
/// <param name="RunOut">Length of a fibre from face to back of the headstock, mm: t / sin A.</param>
/// <param name="Strength">Part of the wood's bending strength that stays.</param>
/// <param name="Blank">Thickness of the piece the neck comes out of, without what is planed off, mm.</param>
public sealed record HeadGrain(double RunOut, double Strength, double Blank)
{
    /// <summary>Hankinson's formula N = PQ / (P sinⁿ + Q cosⁿ) for bending strength: n 1.5 to 2, Q/P 0.04 to 0.10;
    /// Wood Handbook FPL-GTR-190 (2010), chapter 5, from memory. The weaker n and a middle ratio are taken.</summary>
    private const double Exponent = 1.5, AcrossToAlong = 0.07;

    /// <summary>Of an angled headstock in one piece with the shaft; null for any other.</summary>
    public static HeadGrain? Of(InstrumentDefinition d, Part neck)
    {
        ArgumentNullException.ThrowIfNull(d);
        ArgumentNullException.ThrowIfNull(neck);
        return d.Headstock is { Angle: > 0 and var angle, Scarf: null, Thickness: var t } ? new(t / Math.Sin(angle), Left(angle), neck.Bounds.Thickness) : null;
    }

    /// <param name="angle">Between fibres and the headstock's length, radians.</param>
    internal static double Left(double angle) => AcrossToAlong / (Math.Pow(Math.Sin(angle), Exponent) + AcrossToAlong * Math.Pow(Math.Cos(angle), Exponent));
}
