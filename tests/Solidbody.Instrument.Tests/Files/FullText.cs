using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Solidbody.Reading;

namespace Solidbody.Instrument.Tests.Files;

/// <summary>An instrument file with every key written out.</summary>
static class FullText
{
    /// <param name="notes">What the reader said of a file: its defaults are written as values.</param>
    /// <param name="given">Values of the keys at the top, which have no default.</param>
    public static string Of(ImmutableArray<KeyNote> notes, InstrumentDefinition given)
    {
        var top = new Dictionary<string, string>
        {
            ["units"] = "\"mm\"",
            ["name"] = $"\"{given.Name}\"",
            ["hand"] = $"\"{(given.Hand == Hand.Left ? "left" : "right")}\"",
            ["scale"] = given.Scale.ToString(CultureInfo.InvariantCulture),
            ["scale_bass"] = (given.Scale + (given.Fan?.Difference ?? 0) / 2).ToString(CultureInfo.InvariantCulture),
            ["scale_treble"] = (given.Scale - (given.Fan?.Difference ?? 0) / 2).ToString(CultureInfo.InvariantCulture),
            ["perpendicular_fret"] = (given.Fan?.PerpendicularFret ?? 7).ToString(CultureInfo.InvariantCulture),
            ["strings"] = $"{given.Strings}",
            ["frets"] = $"{given.Frets}",
        };
        var own = new Dictionary<string, string>
        {
            ["headstock.tuners_bass"] = $"{given.Headstock.TunersBass}",
            ["body.outline.family"] = Family(given),
        };
        var text = new StringBuilder();
        (string, int) table = ("", -1);
        foreach (var note in notes)
        {
            if ((note.Table, note.Element) != table) text.Append(note.Element < 0 ? $"[{note.Table}]\n" : $"[[{note.Table}]]\n");
            table = (note.Table, note.Element);
            var value = note.Table == "" ? top[note.Key] : own.GetValueOrDefault($"{note.Table}.{note.Key}", note.Default!);
            text.Append(CultureInfo.InvariantCulture, $"{note.Key} = {value}\n");
        }
        return text.ToString();
    }

    /// <summary>The families differ in their waists' skew.</summary>
    static string Family(InstrumentDefinition given) => given.Body.Outline.WaistSkew switch
    {
        0 => "\"symmetric\"",
        50 => "\"offset\"",
        -14 => "\"single\"",
        48 => "\"bass\"",
        _ => "\"travel\"",
    };
}
