namespace Solidbody.Materials;

/// <summary>Range of the specific cutting force kc of one wood, N/mm².</summary>
/// <param name="Least">What figures are told from.</param>
/// <param name="Most">What limits are kept with.</param>
public readonly record struct CuttingForceRange(double Least, double Most);

/// <summary>Specific cutting force of solid wood: a range to be overwritten in the shop file, never a constant of nature.</summary>
/// <remarks>
/// Source: solid wood 10 to 60 N/mm², rising steeply under chips of 0.1 mm (Kivimaa 1950; Koch, Wood Machining Processes, 1964; both from memory, low confidence).
/// Particleboard measures 32.0 to 37.6 N/mm² (Pałubicki, Materials 14 (2021) 2208, abstract): inside it.
/// Two species of one density can differ completely (Eyma et al., Annals of Forest Science 61 (2004) 55–64, abstract), so three classes say all that is known,
/// and each is planned with the upper end of its range.
/// </remarks>
public static class CuttingForces
{
    public const string Source = "from memory, low confidence: 10 to 60 N/mm² for solid wood; edit it in the shop file";

    /// <summary>What solid wood is known to lie in.</summary>
    public static CuttingForceRange Known { get; } = new(10, 60);

    public static CuttingForceRange Default(WoodHardness hardness) => hardness switch
    {
        WoodHardness.Soft => new(10, 30),
        WoodHardness.Medium => new(15, 40),
        WoodHardness.Hard => new(20, 55),
        _ => throw new ArgumentOutOfRangeException(nameof(hardness), hardness, "Not a class of wood."),
    };
}
