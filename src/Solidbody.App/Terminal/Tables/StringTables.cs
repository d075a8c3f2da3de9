using Solidbody.Instrument;
using Solidbody.Instrument.Playing;

namespace Solidbody.App.Terminal.Tables;

/// <summary>The strings: pull, other tunings, heights, ways.</summary>
internal static class StringTables
{
    public static TextTable? Tension(Design design, FigureWords words)
    {
        if (design.Figures.Tension is not { Length: > 0 } strings) return null;
        var table = new TextTable("String", $"Gauge, {words.LengthUnitName}", "Pull, N", "lbf", "N/mm²", "% of limit", "Semitones");
        foreach (var s in strings)
            table.Add(Name(s), FigureWords.Number(words.IsInches ? s.String.Gauge / Geometry.Length.MillimetresPerInch : s.String.Gauge, words.IsInches ? 4 : 3), FigureWords.Newtons(s.Pull.Tension), FigureWords.Pounds(s.Pull.Tension),
                FigureWords.Number(s.Pull.Stress, 0), FigureWords.Percent(s.Share), FigureWords.Number(s.SemitonesToBreak, 1));
        var total = strings.Sum(s => s.Pull.Tension);
        table.Add("together", "", FigureWords.Newtons(total), FigureWords.Pounds(total), "", "", "");
        return table;
    }

    public static TextTable? Tunings(Design design, FigureWords words)
    {
        if (design.Figures.Retunings is not { Length: > 0 } tunings) return null;
        var table = new TextTable("Tuning", "Pull, N", "lbf", "Least string, N", "Most string, N");
        foreach (var t in tunings)
            table.Add(t.Name, FigureWords.Newtons(t.Total), FigureWords.Pounds(t.Total), FigureWords.Newtons(t.Strings.Min(s => s.Pull.Tension)), FigureWords.Newtons(t.Strings.Max(s => s.Pull.Tension)));
        return table;
    }

    public static TextTable? Heights(Design design, FigureWords words)
    {
        if (design.Figures.Heights is not { } heights) return null;
        var table = new TextTable($"String, {words.LengthUnitName}", "Fret 1", "Fret 12", "Last", "Saddle", "Swing", "Pressed", "Meets");
        foreach (var s in heights.Strings)
            table.Add(Number(design, s.String), words.Length(s.OverFret1), words.Length(s.OverFret12), words.Length(s.OverLastFret), words.Length(s.SaddleHeight), words.Length(s.Swing), $"{s.Pressed}", $"{s.Meets}");
        return table;
    }

    public static TextTable? Paths(Design design, FigureWords words)
    {
        if (design.Figures.Paths is not { Length: > 0 } paths) return null;
        var table = new TextTable("String", "Nut, °", "Aside, °", "Tree", "Saddle, °", "Nut, N", "Saddle, N");
        foreach (var p in paths)
            table.Add(Number(design, p.String), FigureWords.Degrees(p.NutBreak), FigureWords.Degrees(p.NutTurn), p.Tree is null ? "none" : "yes", FigureWords.Degrees(p.SaddleBreak), FigureWords.Newtons(p.NutForce), FigureWords.Newtons(p.SaddleForce));
        return table;
    }

    private static string Name(StringTension s) => $"{s.Number} {NoteName.Of(s.String.Note)}";

    /// <summary>A string's number, with its note where the strings are described.</summary>
    public static string Number(Design design, int number) => design.Figures.Tension.FirstOrDefault(t => t.Number == number) is { } s ? Name(s) : $"{number}";
}
