using System.Text;

namespace Solidbody.Programs;

/// <summary>Makes text safe to stand in a comment of a program.</summary>
/// <remarks>
/// A comment is printable ASCII without parentheses (NISTIR 6556, section 3.3.4, from memory). Some small controllers also act upon
/// ; ! ? ~ $ % wherever they meet them (common practice, no source), so these are replaced too.
/// </remarks>
public static class CommentText
{
    private static readonly Dictionary<char, string> Replacements = new()
    {
        ['('] = "[",
        [')'] = "]",
        [';'] = ",",
        ['!'] = ".",
        ['?'] = ".",
        ['~'] = "-",
        ['$'] = "S",
        ['%'] = " per cent",
        ['\t'] = " ",
        ['⌀'] = "dia. ",
        ['Ø'] = "dia. ",
        ['ø'] = "dia. ",
        ['°'] = " deg",
        ['±'] = "+/-",
        ['×'] = "x",
        ['·'] = ".",
        ['µ'] = "u",
        ['μ'] = "u",
        ['–'] = "-",
        ['—'] = "-",
        ['−'] = "-",
        ['‑'] = "-",
        ['‘'] = "'",
        ['’'] = "'",
        ['“'] = "\"",
        ['”'] = "\"",
        ['…'] = "...",
        ['\u00a0'] = " ",
        ['½'] = " 1/2",
        ['¼'] = " 1/4",
        ['¾'] = " 3/4",
        ['≤'] = "<=",
        ['≥'] = ">=",
        ['→'] = "->",
        ['²'] = "2",
        ['³'] = "3",
        ['ß'] = "ss",
        ['æ'] = "ae",
        ['Æ'] = "Ae",
        ['œ'] = "oe",
        ['ð'] = "d",
        ['þ'] = "th",
    };

    /// <summary>À to ÿ without their marks, letter for letter; _ where <see cref="Replacements"/> or nothing stands.</summary>
    private const string PlainLatin = "AAAAAA_CEEEEIIIIDNOOOOO__UUUUYTsaaaaaa_ceeeeiiii_nooooo__uuuuy_y";

    /// <summary>The text with only characters that may stand in a comment; what has no plain spelling becomes <c>_</c>.</summary>
    public static string Safe(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var safe = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (Replacements.TryGetValue(c, out var words)) safe.Append(words);
            else if (c is >= ' ' and <= '~') safe.Append(c);
            else if (c is >= 'À' and <= 'ÿ') safe.Append(PlainLatin[c - 'À']);
            else safe.Append('_');
        }
        return safe.ToString();
    }

    /// <summary>The safe text cut at blanks into lines of at most <paramref name="width"/> characters; longer words are cut where they stand.</summary>
    internal static IEnumerable<string> Lines(string text, int width)
    {
        var rest = Safe(text).Trim();
        while (rest.Length > width)
        {
            var cut = rest.LastIndexOf(' ', width);
            if (cut <= 0) cut = width;
            yield return rest[..cut].TrimEnd();
            rest = rest[cut..].TrimStart();
        }
        if (rest.Length > 0) yield return rest;
    }
}
