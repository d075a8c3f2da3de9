using System.Globalization;

namespace Solidbody.Drawings.Svg;

/// <summary>Walks over a value's numbers as SVG writes them: blanks or a comma between, or nothing where a sign or a point begins the next (SVG 1.1, section 8.3.9).</summary>
internal ref struct SvgScanner(ReadOnlySpan<char> text)
{
    private readonly ReadOnlySpan<char> text = text;

    public int At { get; private set; }

    public bool IsAtEnd
    {
        get
        {
            SkipSeparators();
            return At >= text.Length;
        }
    }

    /// <summary>The next letter, eaten; 0 when a number or the end comes.</summary>
    public char Letter()
    {
        SkipSeparators();
        return At < text.Length && char.IsAsciiLetter(text[At]) ? text[At++] : '\0';
    }

    /// <summary>The next letters up to a bracket, eaten with it: a transform's name.</summary>
    public string Function()
    {
        SkipSeparators();
        var from = At;
        while (At < text.Length && text[At] != '(') At++;
        var name = text[from..At].Trim().ToString();
        if (At < text.Length) At++;
        return name;
    }

    public bool Bracket()
    {
        SkipSeparators();
        if (At >= text.Length || text[At] != ')') return false;
        At++;
        return true;
    }

    public bool IsNumberNext
    {
        get
        {
            SkipSeparators();
            return At < text.Length && (char.IsAsciiDigit(text[At]) || text[At] is '+' or '-' or '.');
        }
    }

    /// <summary>The next number; not finite counts as none.</summary>
    public bool Number(out double value)
    {
        SkipSeparators();
        var from = At;
        if (At < text.Length && text[At] is '+' or '-') At++;
        Digits();
        if (At < text.Length && text[At] == '.') { At++; Digits(); }
        if (At + 1 < text.Length && text[At] is 'e' or 'E' && (char.IsAsciiDigit(text[At + 1]) || At + 2 < text.Length && text[At + 1] is '+' or '-' && char.IsAsciiDigit(text[At + 2])))
        {
            At += 2;
            Digits();
        }
        return double.TryParse(text[from..At], NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }

    /// <summary>An arc's flag: one digit, 0 or 1, with or without anything after it.</summary>
    public bool Flag(out bool value)
    {
        SkipSeparators();
        value = At < text.Length && text[At] == '1';
        if (At >= text.Length || text[At] is not ('0' or '1')) return false;
        At++;
        return true;
    }

    /// <summary>What is left, without blanks around.</summary>
    public readonly ReadOnlySpan<char> Rest => text[At..].Trim();

    private void Digits()
    {
        while (At < text.Length && char.IsAsciiDigit(text[At])) At++;
    }

    private void SkipSeparators()
    {
        while (At < text.Length && text[At] is ' ' or '\t' or '\r' or '\n' or '\f' or ',') At++;
    }
}
