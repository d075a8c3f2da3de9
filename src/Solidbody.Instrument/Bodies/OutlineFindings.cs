using System.Collections.Immutable;
using System.Globalization;
using Solidbody.Findings;

namespace Solidbody.Instrument.Bodies;

/// <summary>What can keep a body's outline from being drawn.</summary>
public static class OutlineFindings
{
    private const string Source = "rules of our outline family, docs/shapes.md";

    internal static string Say(double v) => double.IsNaN(v) ? "none that fits" : v.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>OUTLINE-01: a measure lies where the curve would kink, bulge or cross itself.</summary>
    internal static Finding Rule(OutlineRule rule, ImmutableArray<OutlineWay> ways) =>
        new("OUTLINE-01", Severity.Stops, rule.Place, $"{rule.What}: {Say(rule.Figure)}", rule.LimitSaid, Source, $"{rule.Change}. {WayOut(ways)}") { Title = "the body's measures do not make a sound outline" };

    private static string WayOut(ImmutableArray<OutlineWay> ways) => ways.IsEmpty
        ? "No one measure, and no two that were tried, mend it: go back toward the family's own measures."
        : $"In [body.outline], the other measures kept: {string.Join(", or ", ways.Select(w => w.Say()))}.";

    /// <summary>OUTLINE-02: the run-time test found the sides out of order.</summary>
    public static Finding Crosses() =>
        new("OUTLINE-02", Severity.Stops, "body outline", "flanks out of order", "outer flank outside inner flank outside neck flank", Source,
            "narrow the cutaway or widen the upper bout.")
        { Title = "the body's outline would cross itself" };
}
