using System.Globalization;
using System.Text;

namespace Solidbody.Drawings.Dxf;

/// <summary>One group of a DXF: a code line and the value line below it.</summary>
/// <param name="From">Where the value begins in the text.</param>
/// <param name="Length">Of the value.</param>
/// <param name="Line">Of the value, from 1.</param>
internal readonly record struct DxfGroup(int Code, int From, int Length, int Line);

/// <summary>A DXF's groups. The text stays one string: a value is cut out only where it is wanted.</summary>
internal sealed class DxfGroups
{
    private readonly string text;
    private readonly List<DxfGroup> groups = [];

    private DxfGroups(string text) => this.text = text;

    public int Count => groups.Count;
    public DxfGroup this[int i] => groups[i];
    public ReadOnlySpan<char> Value(int i) => text.AsSpan(groups[i].From, groups[i].Length);
    public bool Is(int i, int code, string value) => groups[i].Code == code && Value(i).SequenceEqual(value);
    public DrawingPlace At(int i) => new(groups[i].Line, 1);

    public static DxfGroups Read(DrawingFile file, ReadingLog log)
    {
        var bytes = file.Content.Span;
        if (bytes.IndexOf((byte)0) is >= 0 and var zero)
            throw log.Stop(new(bytes[..zero].Count((byte)'\n') + 1, 1), "the drawing is not text: a binary DXF, or another kind of file", "an ASCII DXF", "save it again as ASCII (text) DXF");
        var result = new DxfGroups(Decode(bytes));
        result.Split(log);
        return result;
    }

    /// <summary>Later files are UTF-8; earlier ones have a code page that only names depend on.</summary>
    private static string Decode(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith(Encoding.UTF8.Preamble)) bytes = bytes[3..];
        return System.Text.Unicode.Utf8.IsValid(bytes) ? Encoding.UTF8.GetString(bytes) : Encoding.Latin1.GetString(bytes);
    }

    private void Split(ReadingLog log)
    {
        var (at, line) = (0, 0);
        while (NextLine(ref at, ref line) is var (codeFrom, codeLength))
        {
            var code = text.AsSpan(codeFrom, codeLength);
            if (code.IsEmpty && at >= text.Length) break;
            if (!int.TryParse(code, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
                throw log.Stop(new(line, 1), $"this line should be a group code, and is {ReadingLog.Quote(code)}", "a whole number; DXF alternates code and value, line by line", "check that this is a DXF, and save it again");
            if (NextLine(ref at, ref line) is not var (from, length))
                throw log.Stop(new(line, 1), "the drawing breaks off after a group code", "a value for every code, and EOF at the end", "save it again, or fetch it again: it is cut off");
            if (groups.Count == DrawingLimits.Groups)
                throw log.Stop(new(line, 1), $"the drawing holds more than {DrawingLimits.Groups} groups", $"at most {DrawingLimits.Groups}", "keep the outline alone in a file of its own");
            groups.Add(new(number, from, length, line));
            if (number == 0 && text.AsSpan(from, length).SequenceEqual("EOF")) return;
        }
        throw log.Stop(new(Math.Max(1, line), 1), "the drawing ends without EOF", "0 and EOF at the end", "save it again, or fetch it again: it is cut off");
    }

    /// <summary>The next line without blanks around; null at the end.</summary>
    private (int From, int Length)? NextLine(ref int at, ref int line)
    {
        if (at >= text.Length) return null;
        line++;
        var end = text.IndexOf('\n', at);
        var (from, to) = (at, end < 0 ? text.Length : end);
        at = to + 1;
        while (from < to && char.IsWhiteSpace(text[from])) from++;
        while (to > from && char.IsWhiteSpace(text[to - 1])) to--;
        return (from, to - from);
    }
}
