using System.Collections.Immutable;
using System.Globalization;
using Solidbody.Programs;
using Spectre.Console;

namespace Solidbody.App.Terminal;

/// <summary>The short tables at the end of a run: what runs where and how long, and how near the cut wood comes to the design.</summary>
public static class PacketSummary
{
    public static void WriteSetUps(IAnsiConsole console, ImmutableArray<SetUp> setUps)
    {
        ArgumentNullException.ThrowIfNull(console);
        var table = Plain("Set-up", "Blank, mm", "Laid at", "Programs", "Minutes");
        foreach (var setUp in setUps)
            table.AddRow(setUp.Title,
                $"{Figure(setUp.Blank.Length, 0)} × {Figure(setUp.Blank.Width, 0)} × {Figure(setUp.Blank.Thickness, 1)}",
                $"{Figure(setUp.Placement.Turn * 180 / Math.PI, 1)}°",
                setUp.Programs.Length.ToString(CultureInfo.InvariantCulture),
                Figure(setUp.Programs.Sum(p => p.Seconds) / 60, 1));
        table.AddRow("Together", "", "", setUps.Sum(s => s.Programs.Length).ToString(CultureInfo.InvariantCulture),
            Figure(setUps.Sum(s => s.Programs.Sum(p => p.Seconds)) / 60, 1));
        console.Write(table);
    }

    public static void WriteParts(IAnsiConsole console, ImmutableArray<PartResult> parts)
    {
        ArgumentNullException.ThrowIfNull(console);
        var table = Plain("Part", "Deepest gouge, mm", "Most left over, mm", "Measures within", "Furthest off, mm");
        foreach (var part in parts)
        {
            var worst = part.Measures.IsEmpty ? null : part.Measures.MaxBy(m => Math.Abs(m.Measured - m.Expected));
            table.AddRow(part.Part, Figure(part.DeepestGouge, 3), Figure(part.MostLeftover, 3),
                $"{part.Measures.Count(m => m.IsWithin)} of {part.Measures.Length}",
                worst is null ? "" : $"{Figure(Math.Abs(worst.Measured - worst.Expected), 3)}, {Markup.Escape(worst.Name)}");
        }
        console.Write(table);
    }

    private static string Figure(double value, int decimals) => value.ToString($"F{decimals}", CultureInfo.InvariantCulture);

    private static Table Plain(params string[] columns)
    {
        var table = new Table().Border(TableBorder.Simple);
        foreach (var column in columns)
            table.AddColumn(new TableColumn(column) { Alignment = column == columns[0] ? Justify.Left : Justify.Right, NoWrap = true });
        return table;
    }
}
