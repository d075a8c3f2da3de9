using System.Globalization;

namespace Solidbody.Geometry;

/// <summary>The units people write lengths in; inside, every length is millimetres.</summary>
public enum LengthUnit { Millimetre, Inch }

/// <summary>Where lengths meet people: the inch, and how a length is shown.</summary>
public static class Length
{
    /// <summary>Exact by definition: international yard and pound agreement, 1959.</summary>
    public const double MillimetresPerInch = 25.4;

    /// <summary>Finest mark on a maker's rule, as parts of an inch; common practice, no source.</summary>
    const int FinestPart = 64;

    /// <summary>A length for a reader: <c>44.45 mm</c>, or <c>1-3/4 in</c> where it falls on a sixty-fourth, else <c>0.023 in</c>.</summary>
    /// <param name="millimetres">Finite, mm; shown to 0.001 mm or 0.0001 in.</param>
    public static string Show(double millimetres, LengthUnit unit) => unit == LengthUnit.Inch
        ? $"{Inches(millimetres)} in"
        : $"{Decimal(millimetres, "0.###")} mm";

    /// <summary>The number alone, in inches: <c>1-3/4</c> or <c>0.023</c>.</summary>
    static string Inches(double millimetres)
    {
        var inches = Math.Abs(millimetres) / MillimetresPerInch;
        var parts = Math.Round(inches * FinestPart);
        var onARuleMark = Math.Abs(parts * MillimetresPerInch / FinestPart - Math.Abs(millimetres)) < Tolerances.Geometry;
        if (!onARuleMark || parts >= 1e9) return Decimal(millimetres / MillimetresPerInch, "0.####");
        return (millimetres < 0 && parts > 0 ? "-" : "") + Mixed((long)parts);
    }

    /// <summary>Sixty-fourths as a mixed number in lowest terms.</summary>
    static string Mixed(long parts)
    {
        var (whole, over) = (parts / FinestPart, parts % FinestPart);
        if (over == 0) return Decimal(whole, "0");
        var under = FinestPart;
        while (over % 2 == 0) (over, under) = (over / 2, under / 2);
        var fraction = string.Create(CultureInfo.InvariantCulture, $"{over}/{under}");
        return whole == 0 ? fraction : string.Create(CultureInfo.InvariantCulture, $"{whole}-{fraction}");
    }

    static string Decimal(double value, string format)
    {
        var text = value.ToString(format, CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }
}
