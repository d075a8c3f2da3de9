using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Playing;

/// <summary>Whether the strings hold, and whether they pull alike.</summary>
internal static class TensionChecks
{
    /// <summary>Most share of a wire's strength at pitch: from there a bend by a whole tone reaches the strength itself.</summary>
    internal static double MostShare { get; } = 1 / StringTension.WholeToneRatio;
    /// <summary>Pull of a string over its neighbour's; common practice, no source: sets in the trade stay below.</summary>
    internal const double MostJump = 1.5;
    /// <summary>Least pull of a string, and most for each string of a set, N; common practice, no source.</summary>
    internal const double LeastGuitar = 30, LeastBass = 75, MostGuitar = 130, MostBass = 250;

    public static IEnumerable<Finding> Of(InstrumentDefinition d, ImmutableArray<StringTension> strings, ImmutableArray<Retuning> retunings)
    {
        if (d.Tuning is null) { yield return TensionFindings.NotDescribed(); yield break; }
        var (least, most) = d.Scale >= InstrumentBasis.BassScale ? (LeastBass, MostBass) : (LeastGuitar, MostGuitar);

        foreach (var tuning in retunings.Where(r => r.Named).Prepend(new("", strings, false)))
        {
            var where = tuning.Named ? $", tuned to {tuning.Name}" : "";
            foreach (var s in tuning.Strings)
            {
                if (s.Share is { } share && !(share < 1)) yield return TensionFindings.Breaks(s, where);
                else if (s.Share is { } near && !(near <= MostShare)) yield return TensionFindings.NearBreaking(s, where, MostShare);
                if (!(s.Pull.Tension >= least)) yield return TensionFindings.Slack(s, where, least);
            }
            if (!(tuning.Total <= most * strings.Length)) yield return TensionFindings.TotalHigh(tuning.Total, where, most * strings.Length);
        }

        if (strings.Where(s => s.Pull.CoreDiameter is not null && s.Strength is null).ToArray() is { Length: > 0 } outside) yield return TensionFindings.OutsideTable(outside);
        if (strings.Where(s => s.Pull.CoreDiameter is null).ToArray() is { Length: > 0 } coreless) yield return TensionFindings.CoreUnknown(coreless);
        foreach (var (a, b) in strings.Zip(strings.Skip(1)))
        {
            var (loose, tight) = a.Pull.Tension < b.Pull.Tension ? (a, b) : (b, a);
            if (!(tight.Pull.Tension <= MostJump * loose.Pull.Tension)) yield return TensionFindings.Jump(loose, tight, MostJump);
        }
    }
}
