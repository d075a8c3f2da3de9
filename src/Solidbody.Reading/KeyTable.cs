using System.Collections.Immutable;
using System.Text;

namespace Solidbody.Reading;

/// <summary>A file's keys as tables for its document, one a table of the file, made from what the reader itself says.</summary>
public static class KeyTable
{
    const int LongList = 6;

    /// <param name="columns">One column of defaults for each described file, with its heading; the first decides range and meaning.</param>
    /// <param name="others">Notes of a file that asks for further keys; they get rows but no column.</param>
    public static string Markdown(ImmutableArray<(string Heading, ImmutableArray<KeyNote> Notes)> columns, ImmutableArray<KeyNote> others)
    {
        var text = new StringBuilder();
        foreach (var table in columns.SelectMany(c => c.Notes).Concat(others).GroupBy(n => n.Table))
        {
            var isList = table.Any(n => n.Element >= 0);
            text.Append(table.Key == "" ? "\n### At the top\n" : isList ? $"\n### [[{table.Key}]]\n" : $"\n### [{table.Key}]\n");
            text.Append($"| key | allowed | {string.Join(" | ", columns.Select(c => c.Heading))} | meaning |\n|---|---|{string.Concat(columns.Select(_ => "---|"))}---|\n");
            foreach (var key in table.Select(n => n.Key).Distinct())
            {
                var note = table.First(n => n.Key == key);
                var defaults = columns.Select(c => Defaults(c.Notes, table.Key, key));
                text.Append($"| `{key}` | {note.Allowed} | {string.Join(" | ", defaults)} | {note.What} |\n");
            }
        }
        return text.ToString();
    }

    /// <summary>The default; one for each element of a short list, the different ones of a long list.</summary>
    static string Defaults(ImmutableArray<KeyNote> notes, string table, string key)
    {
        var all = notes.Where(n => n.Table == table && n.Key == key).Select(n => n.Default ?? "required").ToArray();
        var shown = all.Length > LongList || all.Distinct().Count() == 1 ? all.Distinct() : all;
        return all.Length == 0 ? "–" : string.Join(" / ", shown);
    }
}
