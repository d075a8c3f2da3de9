using System.Collections.Immutable;

namespace Solidbody.Materials;

/// <summary>The wood table. Gravities: Wood Handbook, FPL-GTR-190 (2010), table 5-3, as re-tabulated or from memory, tagged row by row.
/// Woods without a handbook row carry a class only.</summary>
public static class Woods
{
    private const string Handbook = "Wood Handbook FPL-GTR-190 (2010), table 5-3, as re-tabulated";
    private const string Remembered = "Wood Handbook FPL-GTR-190 (2010), table 5-3, from memory";

    public static ImmutableArray<Wood> All { get; } =
    [
        new("red-alder", "red alder", 0.41, Handbook, WoodHardness.Soft),
        new("basswood", "basswood", 0.37, Handbook, WoodHardness.Soft),
        new("yellow-poplar", "yellow-poplar", 0.42, Remembered, WoodHardness.Soft),
        new("sitka-spruce", "Sitka spruce", 0.40, Remembered, WoodHardness.Soft),
        new("limba", "limba", null, "", WoodHardness.Soft),
        new("mahogany", "mahogany", null, "", WoodHardness.Medium),
        new("khaya", "khaya", null, "", WoodHardness.Medium),
        new("black-cherry", "black cherry", 0.50, Handbook, WoodHardness.Medium),
        new("black-walnut", "black walnut", 0.55, Remembered, WoodHardness.Medium),
        new("soft-maple", "soft maple (red maple)", 0.54, Handbook, WoodHardness.Medium),
        new("white-ash", "white ash", 0.60, Handbook, WoodHardness.Medium),
        new("sapele", "sapele", null, "", WoodHardness.Medium),
        new("sugar-maple", "hard maple (sugar maple)", 0.63, Handbook, WoodHardness.Hard),
        new("indian-rosewood", "Indian rosewood", null, "", WoodHardness.Hard),
        new("padauk", "padauk", null, "", WoodHardness.Hard),
        new("wenge", "wenge", null, "", WoodHardness.Hard),
        new("ebony", "ebony", null, "", WoodHardness.Hard),
    ];

    /// <summary>The wood of that key, or null.</summary>
    public static Wood? Find(string key) => All.FirstOrDefault(w => w.Key == key);
}
