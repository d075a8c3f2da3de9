namespace Solidbody.Materials;

/// <summary>A wood as the workshop needs to know it. A figure without a handbook row is null: the person gives it, or what hangs on it is not worked out.</summary>
/// <param name="Key">Name in files, lower case with hyphens.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Hardness">Class for cutting.</param>
public sealed record Wood(string Key, string Title, WoodHardness Hardness)
{
    /// <summary>Specific gravity: ovendry weight over volume at 12 % moisture.</summary>
    public Sourced? Gravity { get; init; }
    /// <summary>Modulus of elasticity along the grain at 12 % moisture, from bending, N/mm².</summary>
    public Sourced? Stiffness { get; init; }
    /// <summary>Modulus of rupture in bending at 12 % moisture, N/mm²: the mean of clear specimens, no allowable stress.</summary>
    public Sourced? BendingStrength { get; init; }
    /// <summary>Side hardness at 12 % moisture: force to press a ball of 11.3 mm half in, N.</summary>
    public Sourced? SideHardness { get; init; }

    /// <summary>Shrinkage from green to ovendry, per cent of the green measure: across the rings, along them, of the volume.</summary>
    public Sourced? RadialShrinkage { get; init; }
    public Sourced? TangentialShrinkage { get; init; }
    public Sourced? VolumeShrinkage { get; init; }

    /// <summary>Dimensional change coefficient as printed, a part of the width for 1 % of moisture, 6 to 14 %.</summary>
    public Sourced? PrintedRadialChange { get; init; }
    public Sourced? PrintedTangentialChange { get; init; }

    /// <summary>Dimensional change coefficient C_R across the rings (quartersawn width): as printed, or from the shrinkage.</summary>
    public Sourced? RadialChange => PrintedRadialChange ?? FromShrinkage(RadialShrinkage);
    /// <summary>Dimensional change coefficient C_T along the rings (flatsawn width): as printed, or from the shrinkage.</summary>
    public Sourced? TangentialChange => PrintedTangentialChange ?? FromShrinkage(TangentialShrinkage);

    /// <summary>Density at 12 % moisture, kg/m³.</summary>
    public double? Density => DensityAt(GravityMoisture);

    /// <summary>Density of a board at a moisture, kg/m³: 1000·G_M·(1 + M/100). Source: Wood Handbook, chapter 4, from memory.</summary>
    /// <param name="moisture">M, per cent; 0 to 30.</param>
    /// <remarks>G_M counts the volume at M: G at 12 % times V(12)/V(M), V falling in a straight line from 30 % to ovendry by the volume's shrinkage. Without that shrinkage G_M is taken as G.</remarks>
    public double? DensityAt(double moisture)
    {
        if (Gravity is not { } gravity) return null;
        var shrinkage = VolumeShrinkage?.Value ?? 0;
        return 1000 * gravity.Value * Volume(shrinkage, GravityMoisture) / Volume(shrinkage, moisture) * (1 + moisture / 100);
    }

    /// <summary>Moisture the handbook's gravities and strengths of dry wood are stated at; fibre saturation as its movement formulas take it; per cent.</summary>
    public const double GravityMoisture = 12, FibreSaturation = 30;

    /// <summary>Volume over the green volume at a moisture.</summary>
    internal static double Volume(double shrinkage, double moisture) => 1 - shrinkage / 100 * (FibreSaturation - moisture) / FibreSaturation;

    /// <summary>C = S/(3000 − 20·S), S in per cent: a straight line of shrinkage from 30 % to ovendry, re-based on the size at 10 %.
    /// Found to give 32 of 36 hardwood rows of table 13-5 from tables 4-3 and 4-4 to the printed five decimals.</summary>
    public static double ChangeFrom(double shrinkage) => shrinkage / (3000 - 20 * shrinkage);

    private static Sourced? FromShrinkage(Sourced? shrinkage) => shrinkage is { } s ? new(ChangeFrom(s.Value), Known.WorkedOut, $"shrinkage {s.Value:0.0#} % ({s.Told})") : null;
}

/// <summary>How hard a wood works a cutter. Classes by specific gravity below 0.45, up to 0.60, and above; common practice, no source.</summary>
public enum WoodHardness { Soft, Medium, Hard }
