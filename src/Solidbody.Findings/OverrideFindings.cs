using System.Collections.Immutable;

namespace Solidbody.Findings;

/// <summary>What can be wrong with an override.</summary>
internal static class OverrideFindings
{
    private const string Source = "your instrument file";

    public static Finding MeansNone(Override wish, ImmutableArray<Finding> findings) => new("OVERRIDE-01", Severity.Warns,
        $"[[override]] of {wish.Code}", "no finding that stops", Allowed(wish, findings), Source, "correct its `finding` and `at`, or remove it")
    { Title = "An override means nothing that stops" };

    public static Finding MeansSeveral(Override wish, ImmutableArray<string> places) => new("OVERRIDE-02", Severity.Warns,
        $"[[override]] of {wish.Code}", $"{places.Length} findings that stop", "one finding", Source,
        $"say which with `at`, one [[override]] for each: {string.Join("; ", places.Select(p => $"\"{p}\""))}")
    { Title = "An override means more than one finding" };

    private static string Allowed(Override wish, ImmutableArray<Finding> findings)
    {
        var stopping = findings.Where(f => f.Severity == Severity.Stops).ToArray();
        if (stopping.Length == 0) return "none: nothing stops";
        var own = stopping.Where(f => f.Code == wish.Code).ToArray();
        return own.Length > 0 ? string.Join("; ", own.Select(f => $"at = \"{f.Place}\"")) : string.Join(", ", stopping.Select(f => f.Code).Distinct());
    }
}
