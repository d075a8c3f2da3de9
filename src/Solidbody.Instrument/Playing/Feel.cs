using System.Collections.Immutable;

namespace Solidbody.Instrument.Playing;

/// <summary>How alike the strings feel under the hand.</summary>
/// <param name="Loosest">The string of least pull.</param>
/// <param name="Tightest">The string of most pull.</param>
/// <param name="TensionSpread">Most pull over least.</param>
/// <param name="StrainSpread">Most strain over least: how differently the strings answer a bend; null where fewer than two strings' cores are known.</param>
/// <param name="Total">Pull of all strings together, N.</param>
public sealed record Feel(StringTension Loosest, StringTension Tightest, double TensionSpread, double? StrainSpread, double Total)
{
    /// <summary>Null without strings.</summary>
    public static Feel? Of(ImmutableArray<StringTension> strings)
    {
        if (strings.IsDefaultOrEmpty) return null;
        var (loosest, tightest) = (strings.MinBy(s => s.Pull.Tension)!, strings.MaxBy(s => s.Pull.Tension)!);
        var strains = strings.Where(s => s.Strain is not null).Select(s => s.Strain!.Value).ToArray();
        return new(loosest, tightest, tightest.Pull.Tension / loosest.Pull.Tension, strains.Length > 1 ? strains.Max() / strains.Min() : null, strings.Sum(s => s.Pull.Tension));
    }
}
