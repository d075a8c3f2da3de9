using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Playing;

/// <summary>Whether the neck holds the strings' pull, and whether the rod can set its relief.</summary>
internal static class StrengthChecks
{
    /// <summary>Hollow with the rod slack that a neck should not exceed, and a rod's least lever, mm: common practice, no source.</summary>
    internal const double MostReliefGuitar = 0.8, MostReliefBass = 1.5, LeastLever = 1;

    /// <summary>Least ratio of bending strength to stress: 1.6 for a load of years on a strength measured in minutes, 1.35 for the weakest board of twenty (spread 16 %), 1.25 for grain that runs out
    /// one in ten: together 2.7. All three after the Wood Handbook, chapter 5, from memory.</summary>
    internal const double LeastSafety = 3;
    internal const string SafetySource = "1.6 for years of load, 1.35 for the weakest of twenty boards, 1.25 for grain one in ten: Wood Handbook, chapter 5, from memory";

    public static IEnumerable<Finding> Of(InstrumentDefinition d, ImmutableArray<StringTension> strings, NeckBend? bend)
    {
        if (strings.IsEmpty) yield break;
        if (bend is null)
        {
            var unknown = ((string[])[d.Neck.Wood, d.Fretboard.Wood]).Distinct().Where(w => d.WoodOf(w)?.Stiffness is null).ToArray();
            if (unknown.Length > 0) yield return StrengthFindings.StiffnessUnknown(unknown);
            yield break;
        }
        var most = d.Scale >= InstrumentBasis.BassScale ? MostReliefBass : MostReliefGuitar;
        if (!(bend.Relief <= most)) yield return StrengthFindings.BendsMuch(bend.Relief, most);
        if (!(bend.Rod.Lever >= LeastLever)) yield return StrengthFindings.NoLever(bend.Rod, LeastLever);
        else if (bend.Rod.Kind == RodKind.SingleAction && !(bend.ReliefLater >= bend.Wanted)) yield return StrengthFindings.CannotBendForward(bend);
        else if (!(Math.Max(Math.Abs(bend.Rod.Pull), Math.Abs(bend.Rod.PullLater)) <= bend.Rod.Capacity)) yield return StrengthFindings.RodTooWeak(bend.Rod);
        foreach (var load in bend.Loads)
            if (load.Safety is { } safety && !(safety >= LeastSafety)) yield return StrengthFindings.WoodTooWeak(load, safety, LeastSafety);
        if (bend.Loads.Where(l => l.Strength is null).Select(l => l.Wood).Distinct().ToArray() is { Length: > 0 } woods) yield return StrengthFindings.StrengthUnknown(woods);
    }
}
