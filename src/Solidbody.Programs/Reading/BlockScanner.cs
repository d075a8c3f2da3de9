using System.Collections.Immutable;

namespace Solidbody.Programs.Reading;

/// <summary>Cuts one line into words and comments, and refuses what is not a word of the subset.</summary>
internal sealed class BlockScanner(MistakeList mistakes, ImmutableArray<string>.Builder comments)
{
    /// <summary>Longest line, characters (NISTIR 6556, section 3.3.1, from memory).</summary>
    public const int LongestLine = 256;
    /// <summary>Greatest line number (NISTIR 6556, section 3.3.2, from memory).</summary>
    private const int GreatestLineNumber = 99_999;
    /// <summary>A value within this of a whole number counts as it (NISTIR 6556, section 3.3.2, from memory).</summary>
    private const double NearlyInteger = 0.0001;
    /// <summary>Numbers larger than this are a slip of the hand on any router.</summary>
    private const double LargestNumber = 1e6;

    private const string Letters = "FGHIJLMNPQRSTXYZ";

    /// <summary>Fills <paramref name="block"/> with the words of <paramref name="text"/>; mistakes go to the list, the rest of the line is still read.</summary>
    public void Scan(ReadOnlySpan<char> text, Block block)
    {
        if (text.Length > LongestLine)
        {
            mistakes.Add(block.Line, LongestLine + 1, $"the line has {text.Length} characters", $"at most {LongestLine} characters a line", "divide it");
            return;
        }
        var at = 0;
        while (true)
        {
            NumberScanner.SkipBlanks(text, ref at);
            if (at >= text.Length) return;
            var column = at + 1;
            var c = text[at];
            if (c == ';')
            {
                Comment(text[(at + 1)..], block.Line, column + 1);
                return;
            }
            if (c == '(')
            {
                if (!BracketComment(text, ref at, block.Line)) return;
            }
            else if (char.IsAsciiLetter(c))
            {
                at++;
                if (!Word(text, ref at, char.ToUpperInvariant(c), column, block)) return;
            }
            else
            {
                Refuse(c, block.Line, column);
                return;
            }
        }
    }

    private bool BracketComment(ReadOnlySpan<char> text, ref int at, int line)
    {
        var column = at + 1;
        var length = text[(at + 1)..].IndexOfAny('(', ')');
        if (length < 0 || text[at + 1 + length] == '(')
        {
            mistakes.Add(line, length < 0 ? column : column + 1 + length, length < 0 ? "a comment is not closed" : "a comment holds another '('",
                "( text without parentheses )", length < 0 ? "write ')' at its end, on the same line" : "write [ ] inside comments");
            return false;
        }
        Comment(text.Slice(at + 1, length), line, column + 1);
        at += length + 2;
        return true;
    }

    private void Comment(ReadOnlySpan<char> text, int line, int column)
    {
        var odd = text.IndexOfAnyExceptInRange(' ', '~');
        while (odd >= 0 && text[odd] == '\t')
        {
            var next = text[(odd + 1)..].IndexOfAnyExceptInRange(' ', '~');
            odd = next < 0 ? -1 : odd + 1 + next;
        }
        if (odd >= 0) RefuseCharacter(text[odd], line, column + odd);
        else if (!text.Trim().IsEmpty) comments.Add(text.Trim().ToString());
    }

    /// <summary>One letter with its number. False when the rest of the line makes no sense any more.</summary>
    private bool Word(ReadOnlySpan<char> text, ref int at, char letter, int column, Block block)
    {
        if (!Letters.Contains(letter, StringComparison.Ordinal))
        {
            mistakes.Add(block.Line, column, $"unknown word {letter}{Peek(text, at)}", $"words with the letters {string.Join(' ', Letters.AsEnumerable())}", WhyNoLetter(letter));
            return NumberScanner.TryRead(text, ref at, out _, out _);
        }
        if (!NumberScanner.TryRead(text, ref at, out var value, out var isPlain))
        {
            NumberScanner.SkipBlanks(text, ref at);
            var next = at < text.Length ? text[at] : '\0';
            if (next is '#' or '[') Refuse(next, block.Line, at + 1);
            else mistakes.Add(block.Line, column, $"{letter} has no number", "a letter and its number, such as X12.5", "write the number, or take the letter out");
            return false;
        }
        if (at < text.Length && text[at] is 'e' or 'E')
        {
            mistakes.Add(block.Line, at + 1, $"{letter} has a number with an exponent", "digits, one point, one sign in front", "write the number out");
            return false;
        }
        if (!(Math.Abs(value) <= LargestNumber))
        {
            mistakes.Add(block.Line, column, $"{letter} is {value:R}", $"numbers from -{LargestNumber:0} to {LargestNumber:0}", "mend the number");
            return true;
        }
        switch (letter)
        {
            case 'G': GWord(value, column, block); break;
            case 'M': MWord(value, column, block); break;
            default: LetterWord(letter, value, isPlain, column, block); break;
        }
        return true;
    }

    private void GWord(double value, int column, Block block)
    {
        var tenths = (int)Math.Round(value * 10);
        var group = Math.Abs(value * 10 - tenths) <= 10 * NearlyInteger ? ModalGroups.OfG(tenths) : ModalGroup.None;
        if (group == ModalGroup.None || !ModalGroups.TakesG(tenths))
            mistakes.Add(block.Line, column, $"G{value:R} is not taken: {ModalGroups.WhyNot(group, tenths / 10)}", ModalGroups.SupportedG, "take it out, or write it with these words");
        else if (!block.Put(group, tenths / 10, column))
            mistakes.Add(block.Line, column, $"G{tenths / 10} stands on one line with G{block[group]} of the same modal group", "one word of each modal group a line", "keep one of them, or use two lines");
    }

    private void MWord(double value, int column, Block block)
    {
        var number = (int)Math.Round(value);
        var group = Math.Abs(value - number) <= NearlyInteger ? ModalGroups.OfM(number) : ModalGroup.None;
        if (group == ModalGroup.None || !ModalGroups.TakesM(number))
            mistakes.Add(block.Line, column, $"M{value:R} is not taken: {ModalGroups.WhyNot(group, number)}", ModalGroups.SupportedM, "take it out");
        else if (!block.Put(group, number, column))
            mistakes.Add(block.Line, column, $"M{number} stands on one line with M{block[group]} of the same modal group", "one word of each modal group a line", "keep one of them, or use two lines");
    }

    private void LetterWord(char letter, double value, bool isPlain, int column, Block block)
    {
        if (letter == 'N' && !(isPlain && value <= GreatestLineNumber && block.IsEmpty))
        {
            mistakes.Add(block.Line, column, $"N{value:R} is not a line number here", $"first on its line, digits only, 0 to {GreatestLineNumber}", "mend it or take it out");
            return;
        }
        if (letter == 'T' && !(value >= 0 && Math.Abs(value - Math.Round(value)) <= NearlyInteger))
            mistakes.Add(block.Line, column, $"T{value:R} is not a tool's number", "whole numbers from 0", "write the cutter's place in the changer");
        else if (letter == 'H' && !(value >= 0 && Math.Abs(value - Math.Round(value)) <= NearlyInteger))
            mistakes.Add(block.Line, column, $"H{value:R} is not a cutter's number", "whole numbers from 0", "write the cutter's place in the changer");
        else if (letter is 'S' or 'P' && value < 0)
            mistakes.Add(block.Line, column, $"{letter} is {value:R}", letter == 'S' ? "turns a minute, 0 or more" : "seconds, 0 or more", "mend the number");
        else if (letter == 'F' && !(value > 0))
            mistakes.Add(block.Line, column, $"F is {value:R}: the cutter would stand still in the wood", "a feed a minute above 0", "write the feed");
        else if (!block.Put(letter, value, column))
            mistakes.Add(block.Line, column, $"{letter} stands twice on the line", "each letter but G and M once a line", "keep one of them");
    }

    private void Refuse(char c, int line, int column)
    {
        var (wrong, remedy) = c switch
        {
            '/' => ("'/' would let a switch on the machine leave this line out", "take '/' out, or the line"),
            '#' => ("'#' is a parameter, whose value depends on the machine", "write the number itself"),
            '[' or ']' => ("'[' is an expression, which many small controllers lack", "write the number itself"),
            '%' => ("'%' marks the ends of a tape", "take '%' out; M2 ends the program"),
            ')' => ("')' closes no comment", "take it out, or open the comment with '('"),
            _ => ("", ""),
        };
        if (wrong.Length == 0) RefuseCharacter(c, line, column);
        else mistakes.Add(line, column, wrong, "words (a letter and a number) and comments", remedy);
    }

    private void RefuseCharacter(char c, int line, int column) =>
        mistakes.Add(line, column, c is > ' ' and <= '~' ? $"'{c}' stands where a word should begin" : $"character U+{(int)c:X4}",
            "words (a letter and a number) and comments, in plain ASCII", "take it out");

    private static string WhyNoLetter(char letter) => letter switch
    {
        'A' or 'B' or 'C' => "this router does not turn the work; take it out",
        'K' => "arcs lie in the XY plane: their centre is I and J; take it out",
        'D' => "no offsets from a tool table are used; take it out",
        'O' => "subprograms are not taken; write their lines out",
        'E' => "numbers have no exponents; write the number out",
        _ => "take it out",
    };

    private static string Peek(ReadOnlySpan<char> text, int at)
    {
        var end = at;
        while (end < text.Length && end < at + 12 && text[end] is >= '0' and <= '9' or '.' or '-' or '+') end++;
        return text[at..end].ToString();
    }
}
