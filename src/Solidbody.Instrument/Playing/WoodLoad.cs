using System.Collections.Immutable;
using Solidbody.Materials;

namespace Solidbody.Instrument.Playing;

/// <summary>How hard wood is worked at one place by the strings at rest, rod slack.</summary>
/// <param name="Place">Such as <c>back of the neck at x 34</c>.</param>
/// <param name="Stress">Along the grain, N/mm²; stretched is positive.</param>
/// <param name="Strength">Bending strength of the wood; null where the table and the person have none.</param>
public sealed record WoodLoad(string Place, string Wood, double Stress, Sourced? Strength)
{
    /// <summary>Strength over stress.</summary>
    public double? Safety => Strength?.Value / Math.Abs(Stress);

    /// <summary>The worst of the back, and of the board under a slot.</summary>
    internal static IEnumerable<WoodLoad> Of(Wood neck, Wood board, ImmutableArray<NeckSlice> slices, double push, Func<NeckSlice, double> moment)
    {
        WoodLoad Board(NeckSlice s) => new($"board under a slot at {At(s.X)}", board.Title, board.Stiffness!.Value.Value * s.AtSlot.Strain(s.SlotFloor, push, moment(s)), board.BendingStrength);
        yield return slices.Select(s => Back(neck, s, push, moment(s))).MaxBy(l => Math.Abs(l.Stress))!;
        yield return slices.Select(Board).MaxBy(l => Math.Abs(l.Stress))!;
    }

    /// <summary>The worst of the slice behind the nut. A headstock that leans back out of one piece with the shaft has grain that runs out: less strength.</summary>
    internal static WoodLoad Of(Wood neck, HeadGrain? grain, NeckSlice behindNut, double push, double moment)
    {
        if (grain is not null && neck.BendingStrength is { } strength)
            neck = neck with { BendingStrength = new(strength.Value * grain.Strength, Known.WorkedOut, $"{strength.Told}, and grain that runs out (Hankinson)") };
        var (back, front) = (Back(neck, behindNut, push, moment), neck.Stiffness!.Value.Value * behindNut.AtSlot.Strain(behindNut.SlotFloor, push, moment));
        return back with { Place = "behind the nut", Stress = Math.Abs(front) > Math.Abs(back.Stress) ? front : back.Stress };
    }

    private static WoodLoad Back(Wood neck, NeckSlice s, double push, double moment) =>
        new($"back of the neck at {At(s.X)}", neck.Title, neck.Stiffness!.Value.Value * s.AtSlot.Strain(-s.Back, push, moment), neck.BendingStrength);

    private static string At(double x) => FormattableString.Invariant($"x {x:0}");
}
