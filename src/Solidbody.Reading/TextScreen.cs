namespace Solidbody.Reading;

/// <summary>Turns away what is no TOML file at all, before a parser sees it: too long, not text, nested without end.</summary>
static class TextScreen
{
    public static bool LetsPass(string text, MistakeList mistakes)
    {
        if (text.Length > TomlFile.LongestText)
            return No(mistakes, new(1, 1), $"the file has {text.Length} characters", $"at most {TomlFile.LongestText}", "check that this is the right file");

        var (line, lineStart, depth) = (1, 0, 0);
        for (var i = 0; i < text.Length; i++)
        {
            var here = new Place(line, i - lineStart + 1);
            switch (text[i])
            {
                case '\n':
                    (line, lineStart) = (line + 1, i + 1);
                    break;
                case < ' ' and not ('\t' or '\r') or '\u007F' or '\uFFFD':
                    return No(mistakes, here, $"the character U+{(int)text[i]:X4} does not belong in a text file", "plain text in UTF-8", "check that this is the right file, and save it as UTF-8 text");
                case '[' or '{' when ++depth > TomlFile.DeepestNesting:
                    return No(mistakes, here, $"brackets are nested more than {TomlFile.DeepestNesting} deep", $"at most {TomlFile.DeepestNesting}", "close the brackets that stand open");
                case ']' or '}':
                    depth = Math.Max(0, depth - 1);
                    break;
                case '#':
                    i = EndOfLine(text, i) - 1;
                    break;
                case '"' or '\'':
                    i = EndOfQuoted(text, i);
                    break;
            }
        }
        return true;
    }

    static int EndOfLine(string text, int from) => text.IndexOf('\n', from) is var end and >= 0 ? end : text.Length;

    /// <summary>The closing quote of a text on one line; a text over several lines, or one never closed, ends with its first line here,
    /// and its brackets are counted: too careful by a few, never too lax.</summary>
    static int EndOfQuoted(string text, int from)
    {
        var end = EndOfLine(text, from);
        for (var i = from + 1; i < end; i++)
        {
            if (text[i] < ' ' && text[i] is not ('\t' or '\r')) return i - 1;
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
