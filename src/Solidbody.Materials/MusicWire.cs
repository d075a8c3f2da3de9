using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Materials;

/// <summary>Tensile strength of a wire, N/mm²: what every coil must reach, and what none exceeds.</summary>
public readonly record struct WireStrength(double Least, double Most);

/// <summary>Round music wire, the steel of plain strings and of cores.</summary>
public static class MusicWire
{
    /// <summary>kg/m³. Convention, from memory; 7800 is printed for this wire too (materials table for A228, read), 0.6 % less.</summary>
    public const double Density = 7850;

    /// <summary>Young's modulus E, N/mm²: 29.5e6 psi for wire thinner than 0.032 in (Shigley, Mechanical Engineering Design, table 10-5, from memory).</summary>
    /// <remarks>Three sources differ: 190 (materials table for A228, read), about 200 (implied by the stiffness formula of piano strings), and this one.
    /// This one is stated for wire as thin as strings are; what hangs on E (stretch, stiffness, set-back) is 6 % less with the lowest.</remarks>
    public const double YoungsModulus = 203_000;

    public const string Source = "ASTM A228/A228M tensile requirements, as re-tabulated by a wire merchant";

    /// <summary>1 lbf = 4.4482216152605 N and 1 in = 25.4 mm, both exact: N/mm² in 1000 psi; mm in a thousandth of an inch.</summary>
    private const double Ksi = 4448.2216152605 / (25.4 * 25.4), Mil = Length.MillimetresPerInch / 1000;

    /// <summary>Diameter in thousandths of an inch, least and most strength in 1000 psi, as printed.</summary>
    private static readonly ImmutableArray<(int Diameter, int Least, int Most)> Printed =
    [
        (4, 439, 485), (5, 426, 471), (6, 415, 459), (7, 407, 449), (8, 399, 441), (9, 393, 434), (10, 387, 428), (11, 382, 422), (12, 377, 417), (13, 373, 412),
        (14, 369, 408), (15, 365, 404), (16, 362, 400), (18, 356, 393), (20, 350, 387), (22, 345, 382), (24, 341, 377), (26, 337, 373), (28, 333, 368), (30, 330, 365),
    ];

    /// <summary>The table's ends, mm.</summary>
    public static double Thinnest => Printed[0].Diameter * Mil;
    public static double Thickest => Printed[^1].Diameter * Mil;

    /// <summary>Strength of a wire; straight lines between the table's rows.</summary>
    /// <param name="diameter">mm.</param>
    /// <returns>Null outside the table: thinner than 0.004 in or thicker than 0.030 in.</returns>
    public static WireStrength? StrengthAt(double diameter)
    {
        // A diameter that went through inches and back still is its row's.
        if (!(diameter >= Thinnest - Tolerances.Geometry && diameter <= Thickest + Tolerances.Geometry)) return null;
        var mils = diameter / Mil;
        var above = 1;
        while (above < Printed.Length - 1 && Printed[above].Diameter < mils) above++;
        var (a, b) = (Printed[above - 1], Printed[above]);
        var t = (mils - a.Diameter) / (b.Diameter - a.Diameter);
        return new((a.Least + t * (b.Least - a.Least)) * Ksi, (a.Most + t * (b.Most - a.Most)) * Ksi);
    }
}
