namespace Solidbody.Reading;

/// <summary>Turns away what is no TOML file at all, before a parser sees it: too long, not text, nested without end.</summary>
static class TextScreen
{
    public static bool LetsPass(string text, MistakeList mistakes)
    {
        if (text.Length > TomlFile.LongestText)
            return No(mistakes, new(1, 1), $"the file has {text.Length} characters", $"at most {TomlFile.LongestText}", "check that this is the right file");

        for (var i = 0; i < text.Length; i++)
            if (text[i] is < ' ' and not ('\t' or '\r' or '\n') or '\u007F' or '\uFFFD')
                return No(mistakes, PlaceAt(text, i), $"the character U+{(int)text[i]:X4} does not belong in a text file", "plain text in UTF-8", "check that this is the right file, and save it as UTF-8 text");

        return !NestsTooDeep(text, out var at) || No(mistakes, PlaceAt(text, at), $"brackets are nested more than {TomlFile.DeepestNesting} deep", $"at most {TomlFile.DeepestNesting}", "close the brackets that stand open");
    }

    static bool NestsTooDeep(string text, out int at)
    {
        var depth = 0;
        for (at = 0; at < text.Length; at++)
        {
            switch (text[at])
            {
                case '[' or '{':
                    if (++depth > TomlFile.DeepestNesting) return true;
                    break;
                case ']' or '}':
                    depth = Math.Max(0, depth - 1);
                    break;
                case '#':
                    at = EndOfLine(text, at);
                    break;
                case '"' or '\'':
                    at = EndOfQuoted(text, at);
                    break;
            }
        }
        return false;
    }

    static Place PlaceAt(string text, int at)
    {
        var before = text.AsSpan(0, at);
        return new Place(before.Count('\n') + 1, at - before.LastIndexOf('\n'));
    }

    static int EndOfLine(string text, int from) => text.IndexOf('\n', from) is var end and >= 0 ? end : text.Length;

    /// <summary>The closing quote of a text on one line; a text over several lines, or one never closed, ends with its first line here,
    /// and its brackets are counted: too careful by a few, never too lax.</summary>
    static int EndOfQuoted(string text, int from)
    {
        var end = EndOfLine(text, from);
        for (var i = from + 1; i < end; i++)
        {
            if (text[i] == '\\' && text[from] == '"') i++;
            else if (text[i] == text[from]) return i;
        }
        return from;
    }

    static bool No(MistakeList mistakes, Place place, string wrong, string allowed, string remedy)
    {
        mistakes.Add(place, wrong, allowed, remedy);
        return false;
    }
}
