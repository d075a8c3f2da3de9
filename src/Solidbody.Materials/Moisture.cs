namespace Solidbody.Materials;

/// <summary>How much water wood takes from the air, and how it moves with it.</summary>
/// <remarks>The handbook's moistures are read by a later report of the same laboratory (FPL-GTR-229, 2014) as too unsure for science: half a per cent between two woods is common.</remarks>
public static class Moisture
{
    /// <summary>Moisture range for which coefficients are stated, per cent.</summary>
    public const double LeastForCoefficient = 6, MostForCoefficient = 14;

    /// <summary>Moisture wood settles at, per cent of its ovendry weight.</summary>
    /// <param name="temperature">Of the air, °C; −1 to 55 as the handbook's table was checked.</param>
    /// <param name="humidity">Relative humidity, 0 to 1.</param>
    /// <remarks>
    /// Two hydrates and dissolved water: 1800/W · [KH/(1 − KH) + (K₁KH + 2 K₁K₂K²H²)/(1 + K₁KH + K₁K₂K²H²)].
    /// Source: A. J. Hailwood and S. Horrobin, Trans. Faraday Soc. 42B (1946) 84; constants after W. T. Simpson, FPL-RN-0268 (1998), in °C, read in a page that codes them.
    /// Agrees with 171 cells of table 4-2 of the Wood Handbook, FPL-GTR-190 (2010), within 0.053.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The humidity is not within 0 to 1, or the temperature not finite.</exception>
    public static double Equilibrium(double temperature, double humidity)
    {
        if (!(humidity is >= 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(humidity), humidity, "Relative humidity lies within 0 to 1.");
        if (!double.IsFinite(temperature)) throw new ArgumentOutOfRangeException(nameof(temperature), temperature, "A temperature is finite, °C.");
        var t = temperature;
        var w = 349 + 1.29 * t + 0.0135 * t * t;
        var kh = (0.805 + 0.000736 * t - 0.00000273 * t * t) * humidity;
        var k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
        var k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
        var (one, two) = (k1 * kh, k1 * k2 * kh * kh);
        return 1800 / w * (kh / (1 - kh) + (one + 2 * two) / (1 + one + two));
    }

    /// <summary>Change of a width, mm: ΔD = D·C·(to − from). Source: Wood Handbook FPL-GTR-190 (2010), equation 13-2; for 6 to 14 %.</summary>
    /// <param name="width">D, at the first moisture, mm.</param>
    /// <param name="coefficient">C_R or C_T, a part for 1 %.</param>
    /// <param name="from">Moisture at first, per cent.</param>
    /// <param name="to">Moisture then, per cent.</param>
    public static double Change(double width, double coefficient, double from, double to) => width * coefficient * (to - from);

    /// <summary>Change of a width beyond that range, mm: ΔD = D·(to − from)/(30·100/S − 30 + from), neither moisture over 30 %.
    /// Source: Wood Handbook FPL-GTR-190 (2010), equation 13-3; its use read, its algebra from memory.</summary>
    /// <param name="shrinkage">S_R or S_T from green to ovendry, per cent.</param>
    public static double ChangeByShrinkage(double width, double shrinkage, double from, double to) =>
        width * (to - from) / (Wood.FibreSaturation * 100 / shrinkage - Wood.FibreSaturation + from);

    /// <summary>Change of a board's width, mm: by the coefficient within its range, beyond it by the shrinkage; null where the wood has neither.</summary>
    public static double? Change(Wood wood, Grain grain, double width, double from, double to)
    {
        ArgumentNullException.ThrowIfNull(wood);
        var (coefficient, shrinkage) = grain == Grain.Flat ? (wood.TangentialChange, wood.TangentialShrinkage) : (wood.RadialChange, wood.RadialShrinkage);
        if (coefficient is not { } c) return null;
        var isInRange = Math.Min(from, to) >= LeastForCoefficient && Math.Max(from, to) <= MostForCoefficient;
        return isInRange || shrinkage is not { } s ? Change(width, c.Value, from, to) : ChangeByShrinkage(width, s.Value, from, to);
    }

    /// <summary>Most a length along the grain shrinks from green to ovendry, a part of it: 0.1 to 0.2 %. Source: Wood Handbook FPL-GTR-190 (2010), chapter 4, from memory.</summary>
    public const double MostAlongGrain = 0.002;

    /// <summary>Most a length along the grain can change, mm: that shrinkage spread evenly below fibre saturation.</summary>
    public static double MostChangeAlong(double length, double from, double to) => length * MostAlongGrain * Math.Abs(to - from) / Wood.FibreSaturation;
}
