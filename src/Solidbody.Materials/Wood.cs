namespace Solidbody.Materials;

/// <summary>A wood as the workshop needs to know it.</summary>
/// <param name="Key">Name in files, lower case with hyphens.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Gravity">Specific gravity: ovendry weight over volume at 12 % moisture; null where no sourced figure is at hand.</param>
/// <param name="GravitySource">Where that comes from; empty without it.</param>
/// <param name="Hardness">Class for cutting.</param>
public sealed record Wood(string Key, string Title, double? Gravity, string GravitySource, WoodHardness Hardness)
{
    /// <summary>Density at 12 % moisture, kg/m³: 1000·G·(1 + 12/100). Source: Wood Handbook, chapter 4, from memory.</summary>
    public double? Density => Gravity is { } g ? 1000 * g * 1.12 : null;
}

/// <summary>How hard a wood works a cutter. Classes by specific gravity below 0.45, up to 0.60, and above; common practice, no source.</summary>
public enum WoodHardness { Soft, Medium, Hard }
