using System.Globalization;
using Solidbody.Findings;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>What does not fit on the machine.</summary>
internal static class BedFindings
{
    private const string Machine = "your shop file's machine";

    /// <param name="laying">The best laying there is.</param>
    public static Finding DoesNotFit(string part, Blank blank, Laying laying, Machine machine) => new("BED-01", Severity.Stops, part,
        Say($"blank {blank.Box.Length:0} × {blank.Box.Width:0} mm; {-laying.Slack:0.0} mm short at its best angle, {Math.Abs(laying.Turn) * 180 / Math.PI:0.#}°"),
        laying.BedIsTighter ? Say($"bed {machine.BedX:0} × {machine.BedY:0} mm") : Say($"travel {machine.TravelX:0} × {machine.TravelY:0} mm"), Machine,
        Say($"a {(laying.BedIsTighter ? "bed" : "travel")} {-laying.Slack:0.0} mm longer in the tight direction would do; so would a part about that much shorter"))
    { Title = laying.BedIsTighter ? "The blank does not lie on the bed at any angle" : "The cutter cannot travel over the whole part at any angle" };

    public static Finding TooHigh(string setUp, double clearance, double most) => new("BED-02", Severity.Stops, setUp,
        Say($"travel height {clearance:0.0} mm above the spoilboard"), Say($"{most:0.0} mm"), Machine,
        Say($"lower the bed by {clearance - most:0.0} mm, or use flatter hold-downs"))
    { Title = "The cutter cannot rise over the blank and what holds it" };

    public static Finding NoPlaceForScrews(string part, int found, double margin) => new("BED-03", Severity.Stops, part,
        $"room for {found} hold-down screws", "4", "your shop file's hold-downs; " + PlanPractice.Source,
        Say($"use smaller screw heads, or a margin under {margin:0.#} mm, or allow tape in the shop file"))
    { Title = "The waste has no room for hold-down screws" };

    /// <summary>How far the second side may come out beside the first: turned over, the offset of one side stands against that of the other.</summary>
    /// <param name="mismatch">Twice the most offset at the part's furthest point, mm.</param>
    /// <param name="play">Of the dowels, mm.</param>
    /// <param name="baseline">Between them, mm.</param>
    public static Finding FlipPlay(string part, double mismatch, double play, double baseline) => new("BED-04",
        mismatch > PlanPractice.FlipMismatchMost ? Severity.Warns : Severity.Notes, $"{part}, turned over on its dowels",
        Say($"up to {mismatch:0.00} mm between front and back, from {play:0.###} mm of play over {baseline:0} mm"), Say($"{PlanPractice.FlipMismatchMost:0.0} mm"),
        "plane geometry of two pins; the limit " + PlanPractice.Source, "use dowels that go in with less play, and drill their holes with a measured drill")
    { Title = "How far the back may lie beside the front" };

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
