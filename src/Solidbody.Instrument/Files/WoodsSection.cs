using System.Collections.Immutable;
using Solidbody.Instrument.Buying;
using Solidbody.Materials;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The list <c>[[woods]]</c>: figures of the person's own boards, before the table's. A key that the table does not have adds a wood.</summary>
/// <remarks>What a wood is stands here, with the instrument made of it; how the shop's machine cuts it stands in the shop file: one stays the same when the other changes.</remarks>
static class WoodsSection
{
    const int MostWoods = 40;
    const double CubicMillimetresPerCubicMetre = 1e9;

    public static ImmutableArray<OwnWood> Read(TableReader file)
    {
        var keys = new HashSet<string>();
        return file.Tables<OwnWood>("woods", 0, MostWoods, [], (wood, _) => ReadWood(wood, keys));
    }

    static OwnWood ReadWood(TableReader wood, HashSet<string> keys)
    {
        var key = wood.Text("key", 30, null, "the wood's name in this file; a name of the table's takes what is not given here from the table");
        if (!keys.Add(key)) wood.Refuse("key", $"the wood \"{key}\" is described twice", "each wood once", "put its figures into one [[woods]]");
        var known = Woods.Find(key);
        var gravity = ReadGravity(wood);
        var own = (known ?? new Wood(key, key, ClassOf(gravity))) with
        {
            Gravity = Given(gravity) ?? known?.Gravity,
            Stiffness = Given(wood.StressIfGiven("stiffness", 1_000, 40_000, "modulus of elasticity along the grain")) ?? known?.Stiffness,
            BendingStrength = Given(wood.StressIfGiven("bending_strength", 10, 400, "modulus of rupture in bending")) ?? known?.BendingStrength,
            SideHardness = Given(wood.ForceIfGiven("side_hardness", 100, 40_000, "force to press a ball of 11.3 mm half into its side")) ?? known?.SideHardness,
            VolumeShrinkage = Given(wood.NumberIfGiven("shrinkage_volume", 2, 30, "from green to ovendry, per cent of the volume")) ?? known?.VolumeShrinkage,
        };
        own = WithShrinkage(own, wood.NumberIfGiven("shrinkage_radial", 0.5, 15, "from green to ovendry across the rings, per cent"), wood.NumberIfGiven("shrinkage_tangential", 0.5, 20, "from green to ovendry along the rings, per cent"));
        return new(own, ReadPrice(wood));
    }

    static double? ReadGravity(TableReader wood)
    {
        var gravity = wood.NumberIfGiven("gravity", 0.08, 1.35, "ovendry weight over volume at 12 % moisture");
        var density = wood.DensityIfGiven("density", 90, 1500, "of a board at 12 % moisture, in place of `gravity`");
        if (gravity is not null && density is not null) wood.Refuse("density", "both `gravity` and `density` are given", "one of them", "remove one: either follows from the other");
        return gravity ?? density / (1000 * (1 + Wood.GravityMoisture / 100));
    }

    /// <summary>A coefficient printed for other boards has no say beside the person's own shrinkage.</summary>
    static Wood WithShrinkage(Wood wood, double? radial, double? tangential)
    {
        if (radial is not null) wood = wood with { RadialShrinkage = Given(radial), PrintedRadialChange = null };
        return tangential is null ? wood : wood with { TangentialShrinkage = Given(tangential), PrintedTangentialChange = null };
    }

    static double? ReadPrice(TableReader wood)
    {
        var foot = wood.NumberIfGiven("price_per_board_foot", 0, 100_000, "of rough board, in your money");
        var metre = wood.NumberIfGiven("price_per_m3", 0, 10_000_000, "of rough board, in your money, in place of `price_per_board_foot`");
        if (foot is not null && metre is not null) wood.Refuse("price_per_m3", "two prices are given", "one of them", "remove one");
        return metre ?? foot / WoodBill.BoardFoot * CubicMillimetresPerCubicMetre;
    }

    /// <summary>Classes as the table draws them.</summary>
    static WoodHardness ClassOf(double? gravity) => gravity switch { < 0.45 => WoodHardness.Soft, <= 0.60 => WoodHardness.Medium, _ => WoodHardness.Hard };

    static Sourced? Given(double? value) => value is { } v ? new Sourced(v, Known.Given, "the instrument file") : null;
}
