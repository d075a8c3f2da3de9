using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Playing;

/// <summary>What can be wrong with the strings' way over nut and saddle.</summary>
public static class PathFindings
{
    public static Finding Trees(ImmutableArray<(int String, Point2 At)> trees, double flattest, double height) =>
        new("PATH-01", Severity.Notes, "headstock", $"the posts alone would bend the strings by {Angle(flattest)} over the nut", AtLeast(StringPath.LeastAtNut), Limits.Practice,
            $"fit string trees that hold the strings {Say.Mm(height)} above the face: {string.Join("; ", trees.Select(t => $"string {t.String} at {Say.At(t.At)}"))}. Neighbours may share one.")
        { Title = "some strings need a string tree" };

    public static Finding NutTooFlat(int number, double angle, bool trees) =>
        new("PATH-02", Severity.Warns, $"nut, string {number}", $"{Angle(angle)} over the nut", AtLeast(StringPath.LeastAtNut), Limits.Practice,
            trees ? "lower the tree or the posts, or give the headstock more drop or angle." : "fit string trees, lower the posts, or give the headstock more drop or angle.")
        { Title = "a string lies too flat over the nut" };

    public static Finding NutTooSteep(int number, double angle) =>
        new("PATH-03", Severity.Warns, $"nut, string {number}", $"{Angle(angle)} over the nut", AtMost(StringPath.MostAtNut), Limits.Practice, "raise the posts, move the first post out, or give the headstock less drop or angle.") { Title = "a string bends sharply over the nut" };

    public static Finding NutTurn(int number, double angle) =>
        new("PATH-04", Severity.Warns, $"nut, string {number}", $"{Angle(angle)} aside", AtMost(StringPath.MostTurn), Limits.Practice, "lessen the splay.") { Title = "a string turns aside in its nut slot" };

    public static Finding SaddleTooFlat(int number, double angle) =>
        new("PATH-05", Severity.Warns, $"bridge, saddle of string {number}", $"{Angle(angle)} over the saddle", AtLeast(StringPath.LeastAtSaddle), Limits.Practice,
            "hold the strings lower or nearer behind the saddles, or lean the neck back and raise the saddles.")
        { Title = "a string lies too flat over its saddle" };

    public static Finding SaddleTooSteep(int number, double angle) =>
        new("PATH-06", Severity.Warns, $"bridge, saddle of string {number}", $"{Angle(angle)} over the saddle", AtMost(StringPath.MostAtSaddle), Limits.Practice, "hold the strings further behind the saddles.") { Title = "a string bends sharply over its saddle" };

    public static Finding WindingsOnFace(int number, double left) =>
        new("PATH-07", Severity.Warns, $"headstock, post of string {number}", $"{Say.Mm(left)} between its last winding and the face", Say.AtLeast(0), "the strings' gauges and the windings asked for", "wind fewer turns, or take taller posts.") { Title = "a string's windings do not fit on their post" };

    private static string Angle(double angle) => HeightRemedies.Degrees(angle);
    private static string AtLeast(double angle) => "at least " + Angle(angle);
    private static string AtMost(double angle) => "at most " + Angle(angle);
}
