using System.Globalization;
using Solidbody.Findings;
using Solidbody.Materials;

namespace Solidbody.Machining.Planning;

/// <summary>Whether tabs hold the part until the end.</summary>
internal static class TabFindings
{
    /// <summary>Share in hand below which it warns: the force is taken at the upper end of the wood's range as it is. Common practice, no source.</summary>
    public const double Safe = 1.2;

    public static Finding Weak(string part, TabHold hold, int tabs, double length, double thickness) => new("TAB-01", hold.Safety < 1 ? Severity.Stops : Severity.Warns,
        $"{part}, outline, {tabs} tabs of {Say($"{length:0.#} × {thickness:0.#} mm")}",
        Say($"they bear {hold.BearsLift:0} N of lift and {hold.BearsPush:0} N of push; the cut asks for {hold.Lift:0} N and {hold.Push:0} N"),
        Say($"{Safe:0.0} times what the cut asks for"), $"{AcrossTheGrain.Source}; beams over the cutter's groove",
        Say($"write tab_thickness = {Needed(hold, thickness):0.0} under [outline] in the shop file, cut the outline with a straight or down-spiral cutter, lower its step-down, or hold the part with tape as well"))
    { Title = "The tabs are weak for the cut that frees the part" };

    /// <summary>Lift is borne by the square of the thickness, push by the thickness; rounded up.</summary>
    internal static double Needed(TabHold hold, double thickness)
    {
        var lift = hold.Lift > 0 ? Math.Sqrt(Safe * hold.Lift / hold.BearsLift) : 0;
        return Math.Ceiling(10 * thickness * Math.Max(lift, Safe * hold.Push / hold.BearsPush)) / 10;
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
