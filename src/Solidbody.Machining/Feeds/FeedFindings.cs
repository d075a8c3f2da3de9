using System.Globalization;
using Solidbody.Findings;
using Solidbody.Materials;

namespace Solidbody.Machining.Feeds;

/// <summary>What can be wrong with feeds and speeds. Each remedy names the nearest setting that is in range.</summary>
internal static class FeedFindings
{
    private const string Practice = "common practice, no source";

    public static Finding ChipTooThin(string place, double chip, double turns, ChipLoadRange usual, string remedy) => new("FEED-01", Severity.Warns,
        place, Say($"{chip:0.0000} mm a tooth at {turns * 60:0} turns a minute"), Say($"at least {usual.Least:0.0000} mm a tooth"), ChipLoads.Source, remedy)
    { Title = "The chip is so thin that the cutter rubs and burns" };

    public static Finding ChipTooThick(string place, double chip, double turns, ChipLoadRange usual, string remedy) => new("FEED-02", Severity.Warns,
        place, Say($"{chip:0.0000} mm a tooth at {turns * 60:0} turns a minute"), Say($"at most {usual.Most:0.0000} mm a tooth"), ChipLoads.Source, remedy)
    { Title = "The chip is thicker than is usual for this cutter" };

    public static Finding WoodNotOnHand(string part, string wood) => new("FEED-03", Severity.Warns,
        part, $"wood {wood}", "a wood of the shop file", "your shop file",
        $"add {wood} to the shop file's woods; until then it is cut with the middle of the usual chip loads")
    { Title = "The shop file does not list this wood" };

    public static Finding TooMuchPower(string place, Bite bite, double power, double limit, string remedy) => new("FEED-04", Severity.Warns,
        place, Say($"{power:0} W in a bite {Words(bite)}"), Say($"{limit:0} W, {FeedPractice.PowerShare:0.##} of the spindle's"), $"P = kc·ae·ap·F; kc {CuttingForces.Source}", remedy)
    { Title = "The cut asks more power than the spindle has to spare" };

    public static Finding BendsTooMuch(string place, Bite bite, double bending, double limit, string remedy) => new("FEED-05", Severity.Warns,
        place, Say($"its tip gives way {bending:0.000} mm in a bite {Words(bite)}"), Say($"{limit:0.000} mm"),
        $"stepped cantilever, closed form; kc {CuttingForces.Source}; the limit {Practice}", remedy)
    { Title = "The cutter bends too far" };

    public static Finding Breaks(string place, Bite bite, double stress, double limit, string remedy) => new("FEED-06", Severity.Stops,
        place, Say($"{stress:0} N/mm² of bending stress in a bite {Words(bite)}"), Say($"{limit:0} N/mm², {FeedPractice.StrengthShare:0.##} of its material's strength"),
        "σ = 32·M/(π·d³); strengths from memory, low confidence", remedy)
    { Title = "The cutter may break" };

    public static Finding PushesTooHard(string place, Bite bite, double force, double limit, string remedy) => new("FEED-07", Severity.Warns,
        place, Say($"{force:0} N sideways in a bite {Words(bite)}"), Say($"{limit:0} N"), $"your shop file's side_force; F = kc·ap·fz; kc {CuttingForces.Source}", remedy)
    { Title = "The cut pushes harder than the axes hold" };

    public static Finding RimTooFast(string place, double speed, double turns, string remedy) => new("FEED-08", Severity.Stops,
        place, Say($"its rim runs {speed / 1000:0} m/s at {turns * 60:0} turns a minute"), Say($"{FeedPractice.CuttingSpeedMost / 1000:0} m/s, and never over what is marked on the cutter"), Practice, remedy)
    { Title = "The cutter turns too fast for its width" };

    public static Finding Rubs(string place, Bite bite, double chip, double least, string remedy) => new("FEED-09", Severity.Warns,
        place, Say($"its thickest chip is {chip:0.0000} mm in a bite {Words(bite)}"), Say($"at least {least:0.0000} mm"), "rounding of a used carbide edge, 0.01 to 0.03 mm, from memory", remedy)
    { Title = "In so narrow a bite the edge rubs instead of cutting" };

    public static Finding AxesTooSlow(string place, double pinned, double chip, double feed, double within) => new("FEED-10", Severity.Warns,
        place, Say($"the pinned chip load of {pinned:0.0000} mm comes out as {chip:0.0000} mm"), Say($"the axes feed {feed * 60:0} mm/min"), "your shop file's machine",
        Say($"pin a chip load of at most {within:0.0000} mm, or a slower spindle"))
    { Title = "The axes cannot follow the pinned chip load" };

    public static Finding UnknownForce(string wood, CuttingForceRange force) => new("FEED-11", Severity.Notes,
        $"wood {wood}", Say($"cutting force {force.Least:0.#} to {force.Most:0.#} N/mm²"), Say($"{CuttingForces.Known.Least:0} to {CuttingForces.Known.Most:0} N/mm²"), CuttingForces.Source,
        Say($"check the figure, or keep it within {CuttingForces.Known.Least:0} to {CuttingForces.Known.Most:0} N/mm²"))
    { Title = "The cutting force lies outside what is known of solid wood" };

    private static string Words(Bite bite) => Say($"{bite.Depth:0.##} mm deep and {bite.Width:0.##} mm wide");
    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
