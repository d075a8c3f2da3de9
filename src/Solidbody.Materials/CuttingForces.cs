namespace Solidbody.Materials;

/// <summary>Specific cutting force of solid wood, N/mm²: a default to be overwritten in the shop file, never a constant of nature.</summary>
/// <remarks>
/// Source: solid wood 10 to 60 N/mm² (Kivimaa 1950; Koch, Wood Machining Processes, 1964; both from memory, low confidence); the values
/// here lie inside that range, upper half for safety. Particleboard measures 32.0 to 37.6 N/mm² (Pałubicki, Materials 14 (2021) 2208, abstract).
/// Density alone does not settle it (same reviews), so three classes say all that is known.
/// </remarks>
public static class CuttingForces
{
    public const string Source = "from memory, low confidence: 10 to 60 N/mm² for solid wood; edit it in the shop file";

    public static double Default(WoodHardness hardness) => hardness switch
    {
        WoodHardness.Soft => 30,
        WoodHardness.Medium => 40,
        WoodHardness.Hard => 55,
        _ => throw new ArgumentOutOfRangeException(nameof(hardness), hardness, "Not a class of wood."),
    };
}
