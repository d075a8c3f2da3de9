namespace Solidbody.Programs;

/// <summary>How far the two radii of an arc (start to centre, end to centre) may differ.</summary>
/// <remarks>Source: NISTIR 6556, section 3.5.3.2, from memory: 0.002 mm, or 0.0002 in where the program speaks inches.</remarks>
internal static class ArcRule
{
    public const double MillimetresPerInch = 25.4;
    public const double Millimetres = 0.002;
    public const double Inches = 0.0002;

    /// <summary>The difference allowed, mm, in a program whose unit is inches or millimetres.</summary>
    public static double Difference(bool inches) => inches ? Inches * MillimetresPerInch : Millimetres;
}
