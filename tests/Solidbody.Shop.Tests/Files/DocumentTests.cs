using Solidbody.Shop.Files;
using Solidbody.Reading;

namespace Solidbody.Shop.Tests.Files;

/// <summary>docs/shop-file.md says what the reader says. With WRITE_DOCS=1 in the environment the test writes the tables anew.</summary>
public class DocumentTests
{
    const string Begin = "<!-- keys -->\n", End = "<!-- end of keys -->";

    [Fact]
    public void The_document_lists_every_key_as_the_reader_asks_for_it()
    {
        var tables = KeyTable.Markdown([("default", ShopFile.Keys(Repository.ReadExample("school-shop.toml") + "\n[[pinned]]\ncutter = \"U6\"\nstep_down = 2\n"))], []);
        var path = Path.Combine(Repository.Root, "docs", "shop-file.md");
        var document = File.ReadAllText(path);
        var (from, to) = (document.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length, document.IndexOf(End, StringComparison.Ordinal));
        if (Environment.GetEnvironmentVariable("WRITE_DOCS") == "1") File.WriteAllText(path, document[..from] + tables + document[to..]);
        else Assert.Equal(tables, document[from..to]);
    }
}
