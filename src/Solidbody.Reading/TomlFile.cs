using System.Collections.Immutable;
using Solidbody.Findings;
using Tomlyn.Syntax;

namespace Solidbody.Reading;

/// <summary>Reads a person's TOML file strictly: nothing is guessed, nothing is passed over, every mistake is told at once with its place.</summary>
public static class TomlFile
{
    /// <summary>Longest file taken, characters: some hundred times what an instrument needs.</summary>
    public const int LongestText = 1_000_000;

    /// <summary>Deepest nesting of brackets taken: the files need three; the parser below is recursive.</summary>
    public const int DeepestNesting = 16;

    /// <summary>Reads a file whose top level declares <c>units</c>.</summary>
    /// <param name="text">The file; line ends of either kind, a byte order mark is passed over.</param>
    /// <param name="fileName">As the person gave it, for the mistakes.</param>
    /// <param name="read">Asks the table for every key it knows; what it never asks for is unknown and refused.</param>
    public static Result<T> Read<T>(string text, string fileName, Func<TableReader, T> read) where T : class
    {
        var mistakes = new MistakeList(fileName);
        var file = new FileContext(mistakes);
        var value = ReadInto(file, text, fileName, read);
        return mistakes.Count == 0 ? new(value, []) : new(null, mistakes.InOrder());
    }

    /// <summary>What the reader says about its keys while it reads a file without mistakes.</summary>
    /// <exception cref="ArgumentException">The text has mistakes.</exception>
    public static ImmutableArray<KeyNote> Describe<T>(string text, Func<TableReader, T> read) where T : class
    {
        var mistakes = new MistakeList("described");
        var file = new FileContext(mistakes);
        ReadInto(file, text, "described", read);
        if (mistakes.Count > 0) throw new ArgumentException($"Only a good file can be described: {mistakes.InOrder()[0]}", nameof(text));
        return file.NotesInOrder();
    }

    static T? ReadInto<T>(FileContext file, string text, string fileName, Func<TableReader, T> read) where T : class
    {
        if (text.StartsWith('\uFEFF')) text = text[1..];
        if (!TextScreen.LetsPass(text, file.Mistakes)) return null;

        if (!SyntaxReader.TryParse(text, fileName, out var document))
        {
            file.Mistakes.Add(new Place(SyntaxReader.FirstLineThatFails(text, fileName), 1), "this line is not TOML", Forms, "mend the line: look for a \\ or a quote that does not belong");
            return null;
        }
        var root = new TomlTreeBuilder(file.Mistakes).Build(document);
        TellSyntax(document, file);
        file.Root = new TableReader(file, root, "", -1);
        file.Unit = file.Root.Units();
        var value = read(file.Root);
        file.RefuseUnknownKeys();
        return value;
    }

    const string Forms = "`key = value`, `[table]`, `[[list of tables]]`, `# remark`";

    /// <summary>Syntax mistakes, one a line: what follows the first on a line is mostly its echo.</summary>
    static void TellSyntax(DocumentSyntax document, FileContext file)
    {
        foreach (var diagnostic in document.Diagnostics.OrderBy(d => d.Span.Start.Offset))
        {
            if (diagnostic.Kind != DiagnosticMessageKind.Error) continue;
            var place = new Place(diagnostic.Span.Start.Line + 1, diagnostic.Span.Start.Column + 1);
            if (file.Mistakes.HasOnLine(place.Line)) continue;
            file.LinesWithBadSyntax.Add(place.Line);
            file.Mistakes.Add(place, $"this line is not TOML: {diagnostic.Message.TrimEnd('.', ' ', '\n')}",
                Forms, "mend the line; a length with a unit stands in quotes: width = \"43 mm\"");
        }
    }
}
