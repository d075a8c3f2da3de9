using Solidbody.Findings;
using Spectre.Console;

namespace Solidbody.App.Terminal;

/// <summary>Findings and mistakes as lines at the terminal: what, where, figure against limit, why, what to do.</summary>
public static class FindingsView
{
    /// <summary>Writes findings, those that stop first.</summary>
    public static void Write(IAnsiConsole console, IReadOnlyCollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(console);
        ArgumentNullException.ThrowIfNull(findings);
        foreach (var finding in findings.OrderByDescending(f => f.Severity)) Write(console, finding);
    }

    public static void Write(IAnsiConsole console, IEnumerable<Mistake> mistakes)
    {
        ArgumentNullException.ThrowIfNull(console);
        ArgumentNullException.ThrowIfNull(mistakes);
        foreach (var m in mistakes)
        {
            console.MarkupLineInterpolated($"[bold]{m.File}({m.Line},{m.Column})[/]  {m.Wrong}");
            console.WriteLine($"    allowed  {m.Allowed}");
            console.WriteLine($"    try      {m.Remedy}");
        }
    }

    /// <summary>A sum in words: <c>2 stop, 1 warns, 3 note</c>.</summary>
    public static string Tally(IReadOnlyCollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        int Count(Severity s) => findings.Count(f => f.Severity == s);
        string Say(int n, string verb) => n == 1 ? $"1 {verb}s" : $"{n} {verb}";
        return $"{Say(Count(Severity.Stops), "stop")}, {Say(Count(Severity.Warns), "warn")}, {Say(Count(Severity.Notes), "note")}";
    }

    private static void Write(IAnsiConsole console, Finding finding)
    {
        var (word, style) = finding.Severity switch
        {
            Severity.Stops => ("stops", "bold red"),
            Severity.Warns => ("warns", "yellow"),
            _ => ("notes", "blue"),
        };
        console.Markup($"[{style}]{word}[/]  ");
        console.MarkupLineInterpolated($"[bold]{finding.Code}[/]  {finding.Title}");
        console.WriteLine($"       at     {finding.Place}");
        console.WriteLine($"       is     {finding.Figure}; allowed: {finding.Limit} ({finding.Source})");
        console.WriteLine($"       try    {finding.Remedy}");
    }
}
