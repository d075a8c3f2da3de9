using Solidbody.Findings;

namespace Solidbody.App.Terminal;

/// <summary>Findings and mistakes as lines at the terminal: what, where, figure against limit, why, what to do.</summary>
public static class FindingsView
{
    /// <summary>Writes findings, those that stop first.</summary>
    public static void Write(Screen screen, IReadOnlyCollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(screen);
        ArgumentNullException.ThrowIfNull(findings);
        foreach (var finding in findings.OrderByDescending(f => f.KeepsProgramsBack).ThenByDescending(f => f.Severity)) Write(screen, finding);
    }

    public static void Write(Screen screen, IEnumerable<Mistake> mistakes)
    {
        ArgumentNullException.ThrowIfNull(screen);
        ArgumentNullException.ThrowIfNull(mistakes);
        foreach (var m in mistakes)
        {
            screen.Paragraph($"{m.File}({m.Line},{m.Column})  ", m.Wrong, ConsoleColor.Red);
            screen.Paragraph("       allowed  ", m.Allowed);
            screen.Paragraph("       try      ", m.Remedy);
        }
    }

    /// <summary>A sum in words: <c>2 stop, 1 warns</c>.</summary>
    public static string Tally(IReadOnlyCollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var overridden = findings.Count(f => f.OverriddenBecause is not null);
        var sums = new[] { (Severity.Stops, "stop"), (Severity.Warns, "warn"), (Severity.Notes, "note") }
            .Select(kind => (Count: findings.Count(f => f.Severity == kind.Item1 && f.OverriddenBecause is null), Verb: kind.Item2))
            .Where(sum => sum.Count > 0)
            .Select(sum => sum.Count == 1 ? $"1 {sum.Verb}s" : $"{sum.Count} {sum.Verb}")
            .Concat(overridden > 0 ? [$"{overridden} overridden"] : []);
        return findings.Count == 0 ? "no findings" : string.Join(", ", sums);
    }

    private static void Write(Screen screen, Finding finding)
    {
        var (word, colour) = finding.Severity switch
        {
            Severity.Stops => ("stops", ConsoleColor.Red),
            Severity.Warns => ("warns", ConsoleColor.Yellow),
            _ => ("notes", ConsoleColor.Blue),
        };
        screen.Paragraph($"{word}  {finding.Code}  ", finding.Title, colour);
        screen.Paragraph("       at       ", finding.Place);
        screen.Paragraph("       is       ", finding.Figure);
        screen.Paragraph("       allowed  ", $"{finding.Limit} ({finding.Source})");
        screen.Paragraph("       try      ", finding.Remedy);
        if (finding.OverriddenBecause is { } reason) screen.Paragraph("       overridden by you: ", reason);
    }
}
