using Solidbody.Findings;

namespace Solidbody.Instrument.Balance;

internal static class BalanceChecks
{
    /// <summary>What a hand carries at the nut of a seated player's instrument without minding, N; common practice, no source.</summary>
    private const double HandOnTheKnee = 4;
    /// <summary>Drops and rises smaller than this are none, radians.</summary>
    private const double Noticed = Math.PI / 360;

    public static IEnumerable<Finding> Of(InstrumentDefinition d, WeightBalance? balance)
    {
        if (balance is null) yield break;
        if (balance.Hangs is not { } h) yield return BalanceFindings.NotHung(d.Body.StrapButtons.Length < 2 ? $"{d.Body.StrapButtons.Length} strap buttons" : "the strap is shorter than the buttons are apart");
        else if (!(h.RestsAt >= h.Angle - Noticed)) yield return BalanceFindings.NeckDrops(h.HandForce, h.RestsAt, h.Angle);
        else if (!(h.RestsAt <= h.Angle + Noticed)) yield return BalanceFindings.NeckRises(h.RestsAt, h.Angle);
        var hand = balance.Sits.HandForce(d.Hanging.Angle);
        if (!(hand <= HandOnTheKnee)) yield return BalanceFindings.TipsOnTheKnee(hand, HandOnTheKnee);
    }
}
