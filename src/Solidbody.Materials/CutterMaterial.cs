namespace Solidbody.Materials;

/// <summary>What a cutter's body is made of, as far as it bends and breaks. N/mm².</summary>
/// <param name="Stiffness">Young's modulus.</param>
/// <param name="Strength">Bending stress at which it breaks.</param>
public sealed record CutterMaterial(Sourced Stiffness, Sourced Strength)
{
    private static readonly CutterMaterial Carbide = new(
        new(600_000, Known.FromMemory, "cemented carbide with 6 to 10 % cobalt, 570 to 640 thousand N/mm²"),
        new(2400, Known.FromMemory, "transverse rupture of cemented carbide, 2000 to 4000 N/mm², low confidence"));

    private static readonly CutterMaterial Steel = new(
        new(210_000, Known.FromMemory, "steel in any handbook, 200 to 215 thousand N/mm²"),
        new(2400, Known.FromMemory, "bending strength of hardened high-speed steel, 2400 to 4000 N/mm², low confidence"));

    /// <summary>By the shop file's word.</summary>
    /// <param name="word"><c>carbide</c> or <c>steel</c>.</param>
    public static CutterMaterial Of(string word) => word switch
    {
        "carbide" => Carbide,
        "steel" => Steel,
        _ => throw new ArgumentOutOfRangeException(nameof(word), word, "A cutter is of carbide or steel."),
    };
}
