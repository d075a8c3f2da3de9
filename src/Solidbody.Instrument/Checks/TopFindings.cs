using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with a cap of another wood.</summary>
public static class TopFindings
{
    public static Finding Sliver(string room, double left, string of) =>
        new("TOP-01", Severity.Warns, $"body, {room}", $"its floor leaves {Say.Mm(left)} of {of} at the glue", $"none, or at least {Say.Mm(Limits.LeftAtGlue)}", Limits.Practice, "change the room's depth, or the top's thickness: so thin a layer breaks out in patches.") { Title = "a room's floor lies in the glue line" };

    public static Finding TopAlone(string room, double left) =>
        new("TOP-02", Severity.Notes, $"body, {room}", $"only the top is left before it, {Say.Mm(left)}", "a floor that leaves some of the body's wood under the top", Limits.Practice, "make the room shallower where the top is soft or figured.") { Title = "only the top is left before a room" };

    public static Finding CutThrough(double removed, double thickness) =>
        new("TOP-03", Severity.Warns, "body, arm contour", $"it takes up to {Say.Mm(removed)} off the front", Say.AtMost(thickness) + ", the top's thickness", Limits.OwnFile, "flatten the contour's angle, move it outward, or take a thicker top: the body's wood will show.") { Title = "a contour cuts through the top" };

    public static Finding InEdge(double deep, double thickness) =>
        new("TOP-04", Severity.Notes, "body, front edge", $"it ends {Say.Mm(deep)} below the front, under the glue line", Say.AtMost(thickness) + ", the top's thickness", Limits.OwnFile, "take an edge no higher than the top is thick where the line is to run on the upright side, and no contour there.") { Title = "the glue line runs in the shaped edge" };

    public static Finding HoldsInTop(string screw, double below) =>
        new("TOP-05", Severity.Warns, $"body, {screw}", below > 0 ? $"its hole ends {Say.Mm(below)} below the glue line" : "its hole ends in the top", Say.AtLeast(Limits.ScrewUnderTop), Limits.Practice, "take a deeper hole and a longer screw: the strings' pull must not hang on the glue line.") { Title = "a bridge's screw holds in the top alone" };
}
