using System.Collections.Immutable;
using System.Globalization;
using Solidbody.Programs;

namespace Solidbody.App.Terminal;

/// <summary>The short tables at the end of a run: what runs where and how long, and how near the cut wood comes to the design.</summary>
public static class PacketSummary
{
    public static void WriteSetUps(Screen screen, ImmutableArray<SetUp> setUps)
    {
        var table = new TextTable("Set-up", "Blank, mm", "Laid at", "Programs", "Minutes");
        foreach (var setUp in setUps)
            table.Add(setUp.Title,
                $"{Figure(setUp.Blank.Length, 0)} × {Figure(setUp.Blank.Width, 0)} × {Figure(setUp.Blank.Thickness, 1)}",
                $"{Figure(setUp.Placement.Turn * 180 / Math.PI, 1)}°",
                Count(setUp.Programs.Length),
                Minutes([setUp]));
        table.Add("Together", "", "", Count(setUps.Sum(s => s.Programs.Length)), Minutes(setUps));
        table.Write(screen);
    }

    public static void WriteParts(Screen screen, ImmutableArray<PartResult> parts)
    {
        var table = new TextTable("Part", "Too deep, mm", "Left over, mm", "Measures within", "Furthest off, mm");
        foreach (var part in parts)
            table.Add(part.Part, Figure(part.DeepestGouge, 3), Figure(part.MostLeftover, 3),
                $"{part.Measures.Count(m => m.IsWithin)} of {part.Measures.Length}",
                Figure(part.Measures.Select(m => Math.Abs(m.Measured - m.Expected)).DefaultIfEmpty().Max(), 3));
        table.Write(screen);
    }

    private static string Minutes(ImmutableArray<SetUp> setUps) => Figure(setUps.Sum(s => s.Programs.Sum(p => p.Seconds)) / 60, 1);
    private static string Count(int value) => value.ToString(CultureInfo.InvariantCulture);
    private static string Figure(double value, int decimals) => value.ToString($"F{decimals}", CultureInfo.InvariantCulture);
}
