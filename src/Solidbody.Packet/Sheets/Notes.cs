using System.Collections.Immutable;
using Solidbody.Packet.Drawing;
using Solidbody.Programs;

namespace Solidbody.Packet.Sheets;

/// <summary>A heading with its sentences: a remark, or steps to be done in their order.</summary>
internal sealed record Note(string Heading, ImmutableArray<string> Sentences, bool Boxed = false, bool Steps = false);

/// <summary>What a set-up says in sentences: what to do before, how it is held, what stays on, what was overridden, what comes after.</summary>
internal static class Notes
{
    /// <summary>What stands beside the drawing.</summary>
    /// <param name="undrawn">Labels that found no room on it.</param>
    /// <param name="stepsOverleaf">Whether the hand work stands on a later page.</param>
    public static IEnumerable<Note> Beside(SheetInput input, IReadOnlyCollection<string> undrawn, bool stepsOverleaf)
    {
        var setUp = input.SetUp;
        if (stepsOverleaf) yield return new("First, by hand", [$"Do the {setUp.Before.Length} steps on page 2."]);
        yield return new("Zero", [setUp.Zero + "."]);
        yield return new("Hold-down", [setUp.HoldDown + "."]);
        if (!setUp.Tabs.IsEmpty) yield return new("Leave on", [Tabs(setUp)]);
        foreach (var o in input.Overridden)
            yield return new("Overridden by you", [$"{o.Code}, {o.Place}: {o.Title}. “{o.OverriddenBecause}”"], Boxed: true);
        if (!setUp.Programs.IsEmpty) yield return new("The cutter moves in", Swept(setUp));
        if (undrawn.Count > 0) yield return new("Not drawn, no room", [.. undrawn]);
    }

    public static Note? Before(SetUp setUp) => setUp.Before.IsEmpty ? null : new("First, by hand", setUp.Before, Steps: true);
    public static Note? After(SetUp setUp) => setUp.After.IsEmpty ? null : new("Afterwards, by hand", setUp.After, Steps: true);

    private static string Tabs(SetUp setUp)
    {
        var kinds = setUp.Tabs.GroupBy(t => (Length: Math.Round(t.Length, 2), Height: Math.Round(t.Z1 - t.Z0, 2)))
            .Select(g => $"{Written.Count(g.Count(), "tab")}, {Written.Size(g.Key.Length)} × {Written.Size(g.Key.Height)} mm");
        return string.Join("; ", kinds) + ", black bars on the outline; break them by hand.";
    }

    private static ImmutableArray<string> Swept(SetUp setUp)
    {
        var b = setUp.Programs.Select(p => p.Bounds).Aggregate((a, c) =>
            new(Math.Min(a.X0, c.X0), Math.Min(a.Y0, c.Y0), Math.Min(a.Z0, c.Z0), Math.Max(a.X1, c.X1), Math.Max(a.Y1, c.Y1), Math.Max(a.Z1, c.Z1)));
        return [$"X {Range(b.X0, b.X1)}", $"Y {Range(b.Y0, b.Y1)}", $"Z {Range(b.Z0, b.Z1)}", $"Rapids at Z {Written.Size(setUp.ClearanceHeight)}"];
    }

    /// <summary>Whole millimetres, outward: the room is never told smaller than it is.</summary>
    private static string Range(double from, double to) => $"{Written.Whole(Math.Floor(from))} to {Written.Whole(Math.Ceiling(to))}";
}
