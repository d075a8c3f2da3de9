using System.Collections.Immutable;
using static Solidbody.Materials.WoodHardness;

namespace Solidbody.Materials;

/// <summary>The wood table: each figure with its own source. Woods without a handbook row carry a class only.</summary>
/// <remarks>
/// Tables of the Wood Handbook, FPL-GTR-190 (2010): gravity, stiffness, strength and hardness 5-3 and 5-5, shrinkage 4-3 and 4-4, dimensional change 13-5.
/// The coefficients remembered for mahogany, khaya and limba do not follow from their shrinkage, which was read: they are left out, and the coefficient is worked out.
/// Ebony is several species whose shrinkage differs by half; wenge and padauk have no row: the person gives theirs.
/// </remarks>
public static class Woods
{
    public static ImmutableArray<Wood> All { get; } =
    [
        Native("red-alder", "red alder", Soft, Quoted(0.41), Quoted(9_500), Recalled(68), Quoted(2_600), Read(4.4), Read(7.3), Read(12.6), Read(0.00151), Read(0.00256)),
        Native("basswood", "basswood", Soft, Quoted(0.37), Quoted(10_100), Recalled(60), Recalled(1_800), Read(6.6), Read(9.3), Read(15.8), Read(0.00230), Read(0.00330)),
        Native("yellow-poplar", "yellow-poplar", Soft, Recalled(0.42), Recalled(10_900), Recalled(70), Recalled(2_400), Read(4.6), Read(8.2), Read(12.7), Recalled(0.00158), Recalled(0.00289)),
        Native("sitka-spruce", "Sitka spruce", Soft, Recalled(0.40), Recalled(10_800), Recalled(70), Recalled(2_300), Recalled(4.3), Recalled(7.5), Recalled(11.5), Recalled(0.00148), Recalled(0.00263)),
        Imported("limba", "limba", Soft, Recalled(0.38), Recalled(7_000), Recalled(61), Recalled(2_200), Read(4.5), Read(6.2), Read(10.8)),
        Imported("mahogany", "mahogany", Medium, Quoted(0.45), Quoted(10_300), Recalled(79), Quoted(3_600), Read(3.0), Read(4.1), Read(7.8)),
        Imported("khaya", "khaya", Medium, Quoted(0.42), Quoted(9_700), Recalled(74), Quoted(3_700), Read(2.5), Read(4.5), Read(8.8)),
        Native("black-cherry", "black cherry", Medium, Quoted(0.50), Quoted(10_300), Recalled(85), Recalled(4_200), Read(3.7), Read(7.1), Read(11.5), Read(0.00126), Read(0.00248)),
        Native("black-walnut", "black walnut", Medium, Recalled(0.55), Recalled(11_600), Recalled(101), Recalled(4_500), Read(5.5), Read(7.8), Read(12.8), Read(0.00190), Read(0.00274)),
        Native("soft-maple", "soft maple (red maple)", Medium, Quoted(0.54), Quoted(11_300), Recalled(92), Recalled(4_200), Recalled(4.0), Recalled(8.2), Recalled(12.6), Read(0.00137), Read(0.00289)),
        Native("silver-maple", "soft maple (silver maple)", Medium, Quoted(0.47), Recalled(7_900), Recalled(61), Recalled(3_100), Recalled(3.0), Recalled(7.2), Recalled(12.0), Read(0.00102), Read(0.00252)),
        Native("bigleaf-maple", "bigleaf maple", Medium, Recalled(0.48), Recalled(10_000), Recalled(74), Recalled(3_800), null, null, null, Read(0.00126), Read(0.00248)),
        Native("white-ash", "white ash", Medium, Quoted(0.60), Quoted(12_000), Recalled(103), Recalled(5_900), Read(4.9), Read(7.8), Read(13.3), Read(0.00169), Read(0.00274)),
        Imported("sapele", "sapele", Medium, Recalled(0.55), Recalled(12_500), Recalled(105), Recalled(6_700), Recalled(4.6), Recalled(7.4), Recalled(14.0)),
        Native("sugar-maple", "hard maple (sugar maple)", Hard, Quoted(0.63), Quoted(12_600), Recalled(109), Quoted(6_400), Quoted(4.8), Quoted(9.9), Quoted(14.7), Read(0.00165), Read(0.00353)),
        Imported("indian-rosewood", "Indian rosewood", Hard, Recalled(0.75), Recalled(12_300), Recalled(117), Recalled(14_100), Recalled(2.7), Recalled(5.8), Recalled(8.5)),
        new("padauk", "padauk", Hard),
        new("wenge", "wenge", Hard),
        new("ebony", "ebony", Hard),
    ];

    /// <summary>The wood of that key, or null.</summary>
    public static Wood? Find(string key) => All.FirstOrDefault(w => w.Key == key);

    private const string Handbook = "Wood Handbook FPL-GTR-190 (2010), table ";

    /// <summary>A cell of the table, and how it is known.</summary>
    private sealed record Cell(double Value, Known Known)
    {
        public Sourced In(string table) => new(Value, Known, Handbook + table);
    }

    private static Cell Read(double value) => new(value, Known.Read);
    private static Cell Quoted(double value) => new(value, Known.SecondHand);
    private static Cell Recalled(double value) => new(value, Known.FromMemory);

    /// <summary>A wood of the handbook's domestic tables: gravity (volume at 12 %), N/mm², N/mm², N, shrinkage per cent, coefficients.</summary>
    private static Wood Native(string key, string title, WoodHardness hardness, Cell gravity, Cell stiffness, Cell strength, Cell ball,
        Cell? radial, Cell? tangential, Cell? volume, Cell radialChange, Cell tangentialChange) => new(key, title, hardness)
        {
            Gravity = gravity.In("5-3"),
            Stiffness = stiffness.In("5-3"),
            BendingStrength = strength.In("5-3"),
            SideHardness = ball.In("5-3"),
            RadialShrinkage = radial?.In("4-3"),
            TangentialShrinkage = tangential?.In("4-3"),
            VolumeShrinkage = volume?.In("4-3"),
            PrintedRadialChange = radialChange.In("13-5"),
            PrintedTangentialChange = tangentialChange.In("13-5"),
        };

    /// <summary>A wood of the imported tables, which print the gravity on the green volume: that of the volume at 12 % follows from the volume's shrinkage.</summary>
    private static Wood Imported(string key, string title, WoodHardness hardness, Cell greenGravity, Cell stiffness, Cell strength, Cell ball,
        Cell radial, Cell tangential, Cell volume) => new(key, title, hardness)
        {
            Gravity = new(greenGravity.Value / Wood.Volume(volume.Value, Wood.GravityMoisture), Known.WorkedOut,
                $"green gravity {greenGravity.Value:0.00} ({greenGravity.In("5-5").Told}) and volume shrinkage {volume.Value:0.0} % ({volume.In("4-4").Told})"),
            Stiffness = stiffness.In("5-5"),
            BendingStrength = strength.In("5-5"),
            SideHardness = ball.In("5-5"),
            RadialShrinkage = radial.In("4-4"),
            TangentialShrinkage = tangential.In("4-4"),
            VolumeShrinkage = volume.In("4-4"),
        };
}
