namespace Solidbody.Materials;

/// <summary>What stiffens and bends a neck: bars and rods. N/mm².</summary>
public static class NeckIron
{
    /// <summary>Young's modulus of steel; from memory, 200 to 210 thousand in any handbook.</summary>
    public const double Steel = 200_000;
    /// <summary>Of a pultruded carbon bar along its fibres; from memory, 115 to 140 thousand by fibre share: the maker's sheet tells.</summary>
    public const double Carbon = 120_000;

    /// <summary>Pull a rod bears for long when its maker states none: 60 % of the yield of a plain threaded rod (class 4.8, 340 N/mm², ISO 898-1, from memory) over the thread's stress area, 0.7 of the bar's.</summary>
    public const double RodYield = 340, RodShare = 0.6, ThreadShare = 0.7;
    public const string RodSource = "60 % of the yield of a threaded rod, class 4.8 of ISO 898-1, from memory";

    /// <param name="diameter">mm.</param>
    /// <returns>N.</returns>
    public static double RodCapacity(double diameter) => RodYield * RodShare * ThreadShare * Math.PI / 4 * diameter * diameter;
}
