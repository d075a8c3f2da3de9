using System.Diagnostics.CodeAnalysis;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Solidbody.Reading;

/// <summary>The TOML parser behind a guard: a few broken texts, such as one that ends inside an escape, make it throw where it should answer.</summary>
static class SyntaxReader
{
    public static bool TryParse(string text, string fileName, [NotNullWhen(true)] out DocumentSyntax? document)
    {
        try
        {
            document = SyntaxParser.Parse(text, fileName, validate: true);
            return true;
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException or FormatException or IndexOutOfRangeException or NullReferenceException)
        {
            document = null;
            return false;
        }
    }

    /// <summary>The line, from 1, with which the parser begins to throw; found by halving, as longer texts with that line throw too.</summary>
    public static int FirstLineThatFails(string text, string fileName)
    {
        var lines = text.Split('\n');
        var (good, bad) = (0, lines.Length);
        while (bad - good > 1)
        {
            var middle = (good + bad) / 2;
            if (TryParse(string.Join('\n', lines[..middle]), fileName, out _)) good = middle;
            else bad = middle;
        }
        return bad;
    }
}
