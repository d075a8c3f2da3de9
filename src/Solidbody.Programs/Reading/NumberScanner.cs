using System.Globalization;

namespace Solidbody.Programs.Reading;

/// <summary>Reads a number as NISTIR 6556 section 3.3.2.1 writes it (from memory): a sign or none, digits, at most one point, blanks anywhere, no exponent.</summary>
internal static class NumberScanner
{
    /// <summary>Up to 15 digits are whole in a double and 10ⁿ is exact to n = 22, so one division rounds once.</summary>
    private const int ExactDigits = 15;
    private static readonly double[] PowersOfTen = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

    /// <summary>Reads from <paramref name="at"/> on and leaves it after the number. False when there is no digit.</summary>
    /// <param name="isPlain">Whether it was digits alone, without sign or point.</param>
    public static bool TryRead(ReadOnlySpan<char> line, ref int at, out double value, out bool isPlain)
    {
        value = 0;
        SkipBlanks(line, ref at);
        var begin = at;
        var negative = false;
        isPlain = true;
        if (at < line.Length && line[at] is '+' or '-')
        {
            negative = line[at] == '-';
            isPlain = false;
            at++;
        }
        long digits = 0;
        var (count, decimals) = (0, 0);
        var point = false;
        for (; at < line.Length; at++)
        {
            var c = line[at];
            if (char.IsAsciiDigit(c))
            {
                if (count < ExactDigits) digits = digits * 10 + (c - '0');
                count++;
                if (point) decimals++;
            }
            else if (c == '.' && !point) (point, isPlain) = (true, false);
            else if (c is not (' ' or '\t')) break;
        }
        if (count == 0) return false;
        value = count <= ExactDigits ? digits / PowersOfTen[decimals] : Long(line[begin..at]);
        if (negative && count <= ExactDigits) value = -value;
        return true;
    }

    public static void SkipBlanks(ReadOnlySpan<char> line, ref int at)
    {
        while (at < line.Length && line[at] is ' ' or '\t') at++;
    }

    /// <summary>Numbers of more digits than fit a double, the rare case.</summary>
    private static double Long(ReadOnlySpan<char> text)
    {
        Span<char> plain = stackalloc char[text.Length];
        var length = 0;
        foreach (var c in text)
            if (c is not (' ' or '\t')) plain[length++] = c;
        return double.Parse(plain[..length], NumberStyles.Float, CultureInfo.InvariantCulture);
    }
}
