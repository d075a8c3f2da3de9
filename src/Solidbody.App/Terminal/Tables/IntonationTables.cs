using Solidbody.Instrument;

namespace Solidbody.App.Terminal.Tables;

/// <summary>Where the saddles stand, and how true the frets are.</summary>
internal static class IntonationTables
{
    public static TextTable? Saddles(Design design, FigureWords words)
    {
        if (design.Figures.Intonation is not { Strings.Length: > 0 } intonation) return null;
        var table = new TextTable("String", $"Saddle, {words.LengthUnitName}", $"Octave, {words.LengthUnitName}", $"Nut, {words.LengthUnitName}", "Before", "fret", "After", "fret");
        foreach (var s in intonation.Strings)
            table.Add(StringTables.Number(design, s.String), words.Length(s.SaddleSetBack), words.Length(s.SetBackForOctave), words.Length(s.NutShift),
                FigureWords.Number(s.WorstBefore.Cents, 1), $"{s.WorstBefore.Fret}", FigureWords.Number(s.WorstAfter.Cents, 1), $"{s.WorstAfter.Fret}");
        return table;
    }

    public static TextTable? Cents(Design design, FigureWords words)
    {
        if (design.Figures.Intonation is not { Strings.Length: > 0 } intonation) return null;
        var strings = intonation.Strings;
        var table = new TextTable(["Fret", .. strings.Select(s => StringTables.Number(design, s.String))]);
        for (var fret = 1; fret <= strings.Max(s => s.After.Length); fret++)
            table.Add([$"{fret}", .. strings.Select(s => FigureWords.Number(fret <= s.After.Length ? s.After[fret - 1] : null, 1))]);
        return table;
    }
}
