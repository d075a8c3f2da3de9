using System.Collections.Immutable;

namespace Solidbody.Findings;

/// <summary>Goes on where a person has said so: one finding for each override, by its code and, where several share it, its place.</summary>
public static class Overriding
{
    /// <summary>The same findings; those overridden carry the reason. An override that means none, or more than one, changes nothing and is told to the person.</summary>
    public static ImmutableArray<Finding> Of(ImmutableArray<Finding> findings, ImmutableArray<Override> overrides)
    {
        var overridden = findings.ToBuilder();
        foreach (var wish in overrides)
        {
            var meant = Enumerable.Range(0, findings.Length).Where(i => wish.Means(findings[i])).ToArray();
            if (meant is [var one]) overridden[one] = findings[one] with { OverriddenBecause = wish.Reason };
            else if (meant.Length == 0) overridden.Add(OverrideFindings.MeansNone(wish, findings));
            else overridden.Add(OverrideFindings.MeansSeveral(wish, [.. meant.Select(i => findings[i].Place)]));
        }
        return overridden.ToImmutable();
    }
}
