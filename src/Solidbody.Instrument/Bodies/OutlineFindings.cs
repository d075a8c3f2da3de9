using System.Globalization;
using Solidbody.Findings;

namespace Solidbody.Instrument.Bodies;

/// <summary>What can keep a body's outline from being drawn.</summary>
public static class OutlineFindings
{
    private const string Source = "rules of our outline family, docs/shapes.md";

    internal static string Say(double v) => double.IsNaN(v) ? "none that fits" : v.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>OUTLINE-01: a measure lies where the curve would kink, bulge or cross itself.</summary>
    public static Finding Rule(string place, string what, double figure, string limit, string change) =>
        new("OUTLINE-01", Severity.Stops, place, $"{what}: {Say(figure)}", limit, Source, $"{change}.") { Title = "the body's measures do not make a sound outline" };

    /// <summary>OUTLINE-02: the run-time test found the sides out of order.</summary>
    public static Finding Crosses() =>
        new("OUTLINE-02", Severity.Stops, "body outline", "flanks out of order", "outer flank outside inner flank outside neck flank", Source,
            "narrow the cutaway or widen the upper bout.")
        { Title = "the body's outline would cross itself" };
}
