using System.Text;

namespace Solidbody.Instrument.Files;

/// <summary>Writes the starter file from what the reader says about its own keys, so that the two cannot drift apart.</summary>
static class InstrumentStarter
{
    const string Heading =
        """
        # An instrument file. Lengths: 44.5 is in the unit below; "44.5 mm", "1-3/4 in", "0.023 in" say their own.
        # Lines that begin with #: are the defaults: take the #: away and change what you like.

        """;

    public static string Write(bool inches)
    {
        var minimal = inches ? "units = \"in\"\nname = \"My first instrument\"\nscale = \"25 in\"\n" : "units = \"mm\"\nname = \"My first instrument\"\nscale = 635\n";
        var given = new Dictionary<string, string> { ["units"] = inches ? "\"in\"" : "\"mm\"", ["name"] = "\"My first instrument\"", ["scale"] = inches ? "25" : "635" };
        var text = new StringBuilder(Heading);
        var (table, element) = ("", -1);
        foreach (var note in InstrumentFile.Keys(minimal))
        {
            if ((note.Table, note.Element) != (table, element))
            {
                (table, element) = (note.Table, note.Element);
                text.Append(element < 0 ? $"\n[{table}]\n" : $"\n#: [[{table}]]\n");
            }
            // At the top the choices are in force; below, the defaults are shown.
            var value = given.TryGetValue(note.Key, out var own) && table == "" ? own : note.Default;
            text.Append(table == "" ? "" : "#: ").Append(note.Key).Append(" = ").Append(value).Append("  # ").Append(note.What).Append("; ").Append(note.Allowed).Append('\n');
        }
        return text.ToString();
    }
}
