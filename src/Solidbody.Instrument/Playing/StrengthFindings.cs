using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Checks;
using Solidbody.Materials;

namespace Solidbody.Instrument.Playing;

/// <summary>What can be wrong with the neck under the strings' pull, and with what stiffens it.</summary>
public static class StrengthFindings
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static Finding StiffnessUnknown(IReadOnlyList<string> woods) =>
        new("STRENGTH-01", Severity.Notes, string.Join(" and ", woods), "no stiffness in the wood table", "modulus of elasticity along the grain", Limits.OwnFile, "give `stiffness` in [[woods]]: without it bending, relief and rod are not worked out.") { Title = "the wood's stiffness is not known" };

    public static Finding BendsMuch(double relief, double most) =>
        new("STRENGTH-02", Severity.Warns, "neck, rod slack", $"hollow of {Say.Mm(relief)}", Say.AtMost(most), Limits.Practice, "thicken the neck, take a stiffer wood or bars beside the rod, or lighter strings.") { Title = "the strings bend the neck much" };

    public static Finding RodTooWeak(RodWork rod) =>
        new("STRENGTH-03", Severity.Warns, "truss rod", string.Create(Plain, $"{Math.Abs(rod.Pull):0} N at once, {Math.Abs(rod.PullLater):0} N after years"), string.Create(Plain, $"at most {rod.Capacity:0} N"), rod.Stated ? Limits.OwnFile : NeckIron.RodSource, "stiffen the neck (thicker, stiffer wood, bars), take lighter strings, or a stronger rod.") { Title = "the rod cannot set the relief asked for" };

    public static Finding CannotBendForward(NeckBend bend) =>
        new("STRENGTH-04", Severity.Warns, "truss rod, single-action", $"hollow of {Say.Mm(bend.Relief)} with the rod slack, {Say.Mm(bend.ReliefLater)} after years", $"at least the relief asked for, {Say.Mm(bend.Wanted)}", Limits.OwnFile, "take a double-action rod, or plane that much hollow into the board.") { Title = "the rod cannot give the neck more relief" };

    public static Finding WoodTooWeak(WoodLoad load, double safety, double least) =>
        new("STRENGTH-05", Severity.Stops, load.Place, string.Create(Plain, $"{Math.Abs(load.Stress):0.0} N/mm²; {load.Wood} bears {safety:0.0} times that"), string.Create(Plain, $"at least {least:0} times"), $"{StrengthChecks.SafetySource}; strength: {load.Strength?.Told}", "thicken the neck there, take a stronger wood, or lighter strings.") { Title = "the wood is worked too hard" };

    public static Finding StrengthUnknown(IReadOnlyList<string> woods) =>
        new("STRENGTH-06", Severity.Notes, string.Join(" and ", woods), "no bending strength in the wood table", "modulus of rupture", Limits.OwnFile, "give `bending_strength` in [[woods]]: without it the neck's safety is not worked out.") { Title = "the wood's strength is not known" };

    public static Finding BarBreaksThrough(Point2 at, double cover, double least) =>
        new("STRENGTH-07", Severity.Stops, $"bar channel at {Say.At(at)}", $"{Say.Mm(cover)} of wood under it", Say.AtLeast(least), Limits.OwnFile, "take lower bars, bring them nearer to the rod, or thicken the neck.") { Title = "a bar comes too near the neck's back" };

    public static Finding BarAtHeelEnd(double left) =>
        new("STRENGTH-07", Severity.Stops, "bar channels, end of the heel", $"{Say.Mm(left)} to the heel's end", Say.AtLeast(Limits.RodToHeelEnd), Limits.Practice, "end the bars sooner.") { Title = "a bar breaks out of the heel" };

    public static Finding BarAtRod(double gap) =>
        new("STRENGTH-08", Severity.Stops, "bar channels", $"{Say.Mm(gap)} to the rod channel", Say.AtLeast(Limits.HoleToRoom), Limits.Practice, "set the bars further from the centre line.") { Title = "a bar meets the rod channel" };

    public static Finding BarAtScrew(Point2 at, double gap) =>
        new("STRENGTH-08", Severity.Stops, $"bar channel at {Say.At(at)}", $"{Say.Mm(gap)} to a neck screw", Say.AtLeast(Limits.HoleToRoom), Limits.Practice, "end the bars before the screws, or set the screws further apart.") { Title = "a bar meets a neck screw" };

    public static Finding NoLever(RodWork rod, double least) =>
        new("STRENGTH-09", Severity.Warns, "truss rod", $"bends the neck by a lever of {Say.Mm(rod.Lever)}", Say.AtLeast(least), Limits.Practice, "lay the rod deeper: one that pulls must lie below the neck's neutral axis, two bars must lie apart.") { Title = "the rod has no lever on the neck" };

    public static Finding RodDoesNotFit(RodDefinition rod, double height) =>
        new("STRENGTH-10", Severity.Stops, "rod channel", $"{Say.Mm(rod.Width)} wide, {Say.Mm(rod.Depth)} deep", $"the rod is {Say.Mm(rod.Diameter)} wide, {Say.Mm(height)} high", Limits.OwnFile, "widen or deepen the channel, or take a thinner rod.") { Title = "the rod does not fit its channel" };
}
