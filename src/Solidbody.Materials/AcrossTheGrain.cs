namespace Solidbody.Materials;

/// <summary>How little wood bears across its fibres.</summary>
public static class AcrossTheGrain
{
    public const string Source = "Wood Handbook, functions of specific gravity for hardwoods at 12 %, from memory";

    /// <summary>Tension square to the grain that splits clear dry wood, N/mm²: 10.1·G^1.3.</summary>
    /// <param name="gravity">Specific gravity; null takes that of a light wood, 0.4.</param>
    /// <remarks>Source: as <see cref="Source"/>; within about a third of the handbook's own rows. Softwoods of the same gravity bear a little less.</remarks>
    public static double Tension(double? gravity) => 10.1 * Math.Pow(gravity ?? 0.4, 1.3);
}
