using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Packet.Drawing;
using Solidbody.Programs;

namespace Solidbody.Packet.Sheets;

/// <summary>A heading with its sentences, beside the drawing.</summary>
internal sealed record Note(string Heading, ImmutableArray<string> Sentences, bool Boxed = false);

/// <summary>The notes of a set-up: what to do before, how it is held, what stays on, what was overridden, what comes after.</summary>
internal static class Notes
{
    public static List<Note> Of(SheetInput input, IReadOnlyCollection<string> undrawn)
    {
        var setUp = input.SetUp;
        var notes = new List<Note>();
        if (!setUp.Before.IsEmpty) notes.Add(new("First, by hand", setUp.Before));
        notes.Add(new("Before you zero", [setUp.Zero]));
        notes.Add(new("Hold-down", [setUp.HoldDown]));
        if (!setUp.Tabs.IsEmpty) notes.Add(new("Leave on", [Tabs(setUp)]));
        foreach (var o in input.Overridden)
            notes.Add(new("Overridden by you", [$"{Word(o.Finding.Severity)} {o.Finding.Code}, {o.Finding.Title}: “{o.Reason}”"], Boxed: true));
        if (!setUp.Programs.IsEmpty) notes.Add(new("The cutter moves in", [Swept(setUp)]));
        if (!setUp.After.IsEmpty) notes.Add(new("Afterwards, by hand", setUp.After));
        if (undrawn.Count > 0) notes.Add(new("Not drawn, no room", [.. undrawn]));
        return notes;
    }

    private static string Word(Severity severity) => severity switch { Severity.Stops => "Stops", Severity.Warns => "Warns", _ => "Notes" };

    private static string Tabs(SetUp setUp)
    {
        var kinds = setUp.Tabs.GroupBy(t => (Length: Math.Round(t.Length, 2), Height: Math.Round(t.Z1 - t.Z0, 2)))
            .Select(g => $"{Figures.Count(g.Count(), "tab")}, {Figures.Size(g.Key.Length)} × {Figures.Size(g.Key.Height)} mm");
        return string.Join("; ", kinds) + ", black bars on the outline; break them by hand.";
    }

    private static string Swept(SetUp setUp)
    {
        var b = setUp.Programs.Select(p => p.Bounds).Aggregate((a, c) =>
            new(Math.Min(a.X0, c.X0), Math.Min(a.Y0, c.Y0), Math.Min(a.Z0, c.Z0), Math.Max(a.X1, c.X1), Math.Max(a.Y1, c.Y1), Math.Max(a.Z1, c.Z1)));
        return $"X {Range(b.X0, b.X1)}, Y {Range(b.Y0, b.Y1)}, Z {Range(b.Z0, b.Z1)}. Rapids at Z {Figures.Size(setUp.ClearanceHeight)}.";
    }

    /// <summary>Whole millimetres, outward: the room is never told smaller than it is.</summary>
    private static string Range(double from, double to) => $"{Figures.Whole(Math.Floor(from))} to {Figures.Whole(Math.Ceiling(to))}";
}
