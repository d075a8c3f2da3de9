using System.Globalization;
using Solidbody.Geometry;

namespace Solidbody.App.Terminal.Tables;

/// <summary>Figures as a person reads them: lengths in the unit of their file, angles in degrees; a dash where nothing was worked out.</summary>
public sealed record FigureWords(LengthUnit Unit)
{
    private const double NewtonsPerPound = 4.4482216152605, KilogramsPerPound = 0.45359237, CubicMillimetresPerLitre = 1e6, SquareMillimetresPerSquareCentimetre = 100;
    private const string None = "-";

    public bool IsInches => Unit == LengthUnit.Inch;
    public string LengthUnitName => IsInches ? "in" : "mm";
    public string AreaUnitName => IsInches ? "in²" : "cm²";
    public string MassUnitName => IsInches ? "lb" : "kg";

    /// <summary>A length: 0.01 mm, or 0.001 in.</summary>
    public string Length(double? mm) => IsInches ? Number(mm / Geometry.Length.MillimetresPerInch, 3) : Number(mm, 2);
    /// <summary>A length of which more is not worth saying: 0.1 mm, or 0.01 in.</summary>
    public string Coarse(double? mm) => IsInches ? Number(mm / Geometry.Length.MillimetresPerInch, 2) : Number(mm, 1);
    public string Area(double? mm2) => IsInches ? Number(mm2 / (Geometry.Length.MillimetresPerInch * Geometry.Length.MillimetresPerInch), 1) : Number(mm2 / SquareMillimetresPerSquareCentimetre, 0);
    public string Mass(double? kg) => Number(IsInches ? kg / KilogramsPerPound : kg, 3);
    public static string Degrees(double? radians) => Number(radians * 180 / Math.PI, 1);
    public static string Newtons(double? n) => Number(n, 1);
    public static string Pounds(double? n) => Number(n / NewtonsPerPound, 1);
    public static string Litres(double? mm3) => Number(mm3 / CubicMillimetresPerLitre, 2);
    public static string Percent(double? share) => Number(100 * share, 0);

    public static string Number(double? value, int decimals)
    {
        if (value is not { } v || !double.IsFinite(v)) return None;
        var text = v.ToString($"F{decimals}", CultureInfo.InvariantCulture);
        return text.TrimStart('-').All(c => c is '0' or '.') ? text.TrimStart('-') : text;
    }
}
