namespace Solidbody.Materials;

/// <summary>What wood screws hold, driven square to the grain.</summary>
public static class WoodScrews
{
    /// <summary>Ultimate withdrawal p = 108.25 G² D L, N and mm; 15,700 G² D L in lbf and in. Wood Handbook FPL-GTR-190 (2010), chapter 8, from memory.</summary>
    private const double Withdrawal = 108.25;
    /// <summary>Ultimate over allowable load: 15,700 over 2,850, the handbook's formula over that of the allowable loads as re-tabulated.</summary>
    public const double UltimateToAllowable = 15_700.0 / 2_850;

    /// <summary>Shank of a numbered screw, mm: 0.060 + 0.013 N in. ASME B18.6.1, from memory.</summary>
    public static double Diameter(int number) => (0.060 + 0.013 * number) * 25.4;

    /// <summary>Force that pulls a screw out of side grain, N: a mean of tests, no allowable load.</summary>
    /// <param name="gravity">G, ovendry weight over volume at 12 % moisture.</param>
    /// <param name="diameter">Shank, mm.</param>
    /// <param name="thread">Length of thread in the wood, mm.</param>
    public static double UltimateWithdrawal(double gravity, double diameter, double thread) => Withdrawal * gravity * gravity * diameter * thread;
}
