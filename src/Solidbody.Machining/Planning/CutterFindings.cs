using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Machining.Planning;

/// <summary>What no cutter of the rack can do, with the figure that is missing and the way out.</summary>
internal static class CutterFindings
{
    private const string Rack = "your shop file's cutters";

    public static Finding TooWide(string place, double widest, IReadOnlyList<Cutter> flat) => Stop("CUTTER-01", place,
        flat.Count == 0 ? "no flat cutter on the rack" : Say($"thinnest flat cutter {flat.Min(c => c.Diameter):0.##} mm"),
        Say($"at most {widest:0.0} mm, for its narrowest place and its inside corners"),
        Say($"add a flat cutter of {widest:0.0} mm or less, or make the room's corners rounder"), "Every flat cutter is too wide for this room");

    public static Finding TooShort(string place, double depth, double stickOut, IReadOnlyList<Cutter> fitting) => Stop("CUTTER-02", place,
        fitting.Count == 0 ? "no flat cutter on the rack" : Say($"longest stick-out {fitting.Max(c => c.StickOut):0.#} mm, longest flutes {fitting.Max(c => c.FluteLength):0.#} mm"),
        Say($"stick-out {stickOut:0.#} mm; flutes {depth:0.#} mm unless the shank is no wider than the edges"),
        "set a cutter out further, add a longer one, or make the room shallower", "No cutter that fits this room gets deep enough");

    public static Finding NoHole(string place, double diameter, double stickOut) => Stop("CUTTER-03", place,
        "neither a drill of this diameter nor a thinner flat cutter long enough",
        Say($"drill {diameter:0.##} ± {PlanPractice.DrillMatch} mm, or a flat cutter up to {PlanPractice.BoreShare * diameter:0.##} mm, set out {stickOut:0.#} mm"),
        Say($"add a {diameter:0.##} mm drill with that stick-out"), "Nothing on the rack makes this hole");

    public static Finding NoEdgeCutter(string place, EdgeForm form, bool formed, double depth, double hollow, CutterRack rack) => Stop("CUTTER-04", place,
        $"{FormersOn(rack, form)}, and no ball-end that can follow the edge",
        (formed ? "" : form switch
        {
            EdgeForm.Rounded(var radius) => Say($"a roundover of {radius:0.##} ± {Tolerances.Gouge} mm, or "),
            EdgeForm.Chamfered(var width, var angle) => Say($"a tapered ball-end of {90 - double.RadiansToDegrees(angle):0.#}° half angle, wider than {2 * width:0.#} mm, or "),
            _ => "",
        }) + Say($"a ball-end of a radius r that fits the outline's inside corners{(double.IsFinite(hollow) ? Say($" and is at most {hollow:0.#} mm") : "")}, with stick-out of {depth + PlanPractice.ColletRoom:0.#} mm + r"),
        "add such a cutter, change the edge in the instrument file to one on the rack, or make it sharp (0) and shape it by hand", "No cutter on the rack shapes this edge");

    private static string FormersOn(CutterRack rack, EdgeForm form)
    {
        var rounds = form is EdgeForm.Rounded;
        string[] on = rounds ? [.. rack.Roundovers.Select(c => Say($"{c.EdgeRadius:0.##} mm"))] : [.. rack.TaperedBalls.Select(c => Say($"{double.RadiansToDegrees(c.Angle):0.#}°"))];
        var kind = rounds ? "roundover" : "tapered ball-end";
        return on.Length == 0 ? $"no {kind} on the rack" : $"{kind}s of {string.Join(", ", on)}";
    }

    public static Finding NoBall(string place, double largest, double stickOut) => Stop("CUTTER-05", place,
        "no ball-end on the rack fits",
        double.IsPositiveInfinity(largest) ? Say($"tip above the bed at the edges, stick-out {stickOut:0.#} mm") : Say($"radius at most {largest:0.#} mm, tip above the bed at the edges, stick-out {stickOut:0.#} mm"),
        "add a thinner ball-end, set it out further, or give the neck a higher upright lip", "No ball-end can carve this face");

    public static Finding NoSlotter(string place, double width, double depth, IReadOnlyList<Cutter> flat) => Stop("CUTTER-06", place,
        flat.Count == 0 ? "no flat cutter on the rack" : Say($"thinnest flat cutter {flat.Min(c => c.Diameter):0.###} mm"),
        Say($"{width:0.###} ± {PlanPractice.FormMatch} mm with flutes of {depth:0.##} mm"),
        Say($"add a {width:0.##} mm slot cutter, or set the slots' width to a cutter you have"), "No cutter is as wide as the slots");

    public static Finding NoScriber(string place, double width, double depth, IReadOnlyList<Cutter> scribers) => Stop("CUTTER-08", place,
        scribers.Count == 0 ? "no cutter on the rack that draws a line" : Say($"narrowest line at that depth {scribers.Min(c => c.WidthAt(depth)):0.##} mm"),
        Say($"at most {width:0.##} mm wide, {depth:0.##} mm deep"),
        "add a tapered ball-end with a small tip, or make the lines shallower or wider", "No cutter draws lines as thin as these");

    public static Finding NoOutlineCutter(string place, double depth, IReadOnlyList<Cutter> flat) => Stop("CUTTER-07", place,
        flat.Count == 0 ? "no flat cutter on the rack" : Say($"longest stick-out {flat.Max(c => c.StickOut):0.#} mm"),
        Say($"stick-out {depth:0.#} mm, thin enough for the outline's inside corners"),
        "add a longer flat cutter, or a thinner one", "No cutter follows and frees this outline");

    public static Finding ShankRubs(string place, Cutter cutter, double depth) => new("CUTTER-09", Severity.Warns, place,
        Say($"flutes of {cutter.FluteLength:0.#} mm in {depth:0.#} mm: {depth - cutter.FluteLength:0.#} mm of its {cutter.ShankDiameter:0.##} mm shank pass the wall"),
        Say($"flutes as long as the wall is deep, or a shank at least {PlanPractice.ShankRelief} mm thinner than the edges"), PlanPractice.Source,
        Say($"add a cutter with flutes of {Math.Ceiling(10 * depth) / 10:0.0} mm, or one with a shank or neck of at most {cutter.Diameter - PlanPractice.ShankRelief:0.##} mm"))
    { Title = "The shank rubs along the wall above the flutes" };

    public static Finding TooWideAround(string place, double widest, IReadOnlyList<Cutter> flat) => Stop("CUTTER-10", place,
        flat.Count == 0 ? "no flat cutter on the rack" : Say($"thinnest flat cutter {flat.Min(c => c.Diameter):0.##} mm"),
        Say($"at most {widest:0.0} mm, for the hollows of waist and cutaways"),
        Say($"add a flat cutter of {widest:0.0} mm or less, or make the outline's hollows rounder"), "Every flat cutter is too wide for this ledge");

    private static Finding Stop(string code, string place, string figure, string limit, string remedy, string title) =>
        new(code, Severity.Stops, place, figure, limit, Rack, remedy) { Title = title };

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
