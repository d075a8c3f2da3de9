using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Solidbody.Findings;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The list <c>[[override]]</c>: findings that stop and that the person goes on against, each with a reason that is printed on the sheets.</summary>
static partial class OverrideSection
{
    const int Most = 20, LongestPlace = 200, LongestReason = 120, ShortestReason = 8;

    public static ImmutableArray<Override> Read(TableReader file) => file.Tables<Override>("override", 0, Most, [], (entry, _) => ReadOne(entry));

    static Override ReadOne(TableReader entry)
    {
        var code = entry.Text("finding", 30, null, "code of the finding that stops, such as WALL-02; what the proof finds cannot be overridden");
        if (entry.IsSound && !Code().IsMatch(code)) entry.Refuse("finding", $"\"{code}\" is no finding's code", "capital letters, a hyphen and two digits", "copy it from what `check` says");
        if (entry.IsSound && code.StartsWith("PROOF-", StringComparison.Ordinal))
            entry.Refuse("finding", $"{code} is the proof's", "a finding of the instrument or the plan", "mend what it says: a program that does not cut the part, or would break something, is never written");
        var place = entry.TextIfGiven("at", LongestPlace, "its place, word for word, where several findings share the code");
        var reason = entry.Text("reason", LongestReason, null, "why you go on all the same; printed on every sheet");
        if (entry.IsSound && reason.Trim().Length < ShortestReason)
            entry.Refuse("reason", "it says too little", $"{ShortestReason} to {LongestReason} characters", "say what you know that the finding does not: whoever stands at the machine reads it");
        return new(code, place, reason);
    }

    [GeneratedRegex("^[A-Z]+-[0-9]{2}$")]
    private static partial Regex Code();
}
