using Solidbody.Instrument.Files;
using Solidbody.Instrument.Tests.Drawn;
using Solidbody.Reading;

namespace Solidbody.Instrument.Tests.Files;

/// <summary>docs/instrument-file.md says what the reader says. With WRITE_DOCS=1 in the environment the test writes the tables anew.</summary>
public class DocumentTests
{
    /// <summary>Lists without a default entry.</summary>
    static readonly string Strings = string.Concat(Enumerable.Repeat("[[tuning.strings]]\nnote = \"E2\"\ngauge = 1\nwound = true\nunit_mass = \"5 g/m\"\n", 6))
        + "[[tuning.also]]\nname = \"low\"\nnotes = \"D2 D2 D2 D2 D2 D2\"\n";

    const string OwnWood = "[[woods]]\nkey = \"plum\"\n";

    const string GoneOn = "[[override]]\nfinding = \"WALL-02\"\nreason = \"a back of maple\"\n";

    const string Begin = "<!-- keys -->\n", End = "<!-- end of keys -->";

    [Fact]
    public void The_document_lists_every_key_as_the_reader_asks_for_it()
    {
        var tables = KeyTable.Markdown([
            ("six strings, 25 in", InstrumentFile.Keys("units = \"mm\"\nname = \"a\"\nscale = 635\n")),
            ("four strings, 34 in", InstrumentFile.Keys("units = \"mm\"\nname = \"a\"\nscale = 863.6\n"))],
            [
                .. InstrumentFile.Keys("units = \"mm\"\nname = \"a\"\nscale = 635\nbody.outline.family = \"single\"\nbody.controls.around = [{ name = \"a\", x = 650, y = 100 }]\n" + Strings + OwnWood + GoneOn),
                .. InstrumentFile.Keys("units = \"mm\"\nname = \"a\"\nscale = 635\n[body.outline]\n" + Shelf.Svg, Shelf.OfTheSchool),
                .. InstrumentFile.Keys("units = \"mm\"\nname = \"a\"\nscale = 635\nneck.joint = \"through\"\n").Where(n => n.Table == "neck.core"),
                .. InstrumentFile.Keys(Repository.ReadExample("school-bought-neck.toml")).Where(n => n.Table.StartsWith("bought", StringComparison.Ordinal)),
                .. InstrumentFile.Keys(Repository.ReadExample("school-bought-body.toml")).Where(n => n.Table.StartsWith("bought", StringComparison.Ordinal)),
            ]);
        var path = Path.Combine(Repository.Root, "docs", "instrument-file.md");
        var document = File.ReadAllText(path);
        var (from, to) = (document.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length, document.IndexOf(End, StringComparison.Ordinal));
        if (Environment.GetEnvironmentVariable("WRITE_DOCS") == "1") File.WriteAllText(path, document[..from] + tables + document[to..]);
        else Assert.Equal(tables, document[from..to]);
    }
}
