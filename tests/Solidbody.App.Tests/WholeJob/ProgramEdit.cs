using System.Globalization;
using System.Text.RegularExpressions;
using Solidbody.Programs;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>A program's text after one word or line was changed by hand.</summary>
/// <param name="Text">The changed text.</param>
/// <param name="Line">The line changed.</param>
/// <param name="Last">The last line whose move differs because of it: coordinates hold until they are given again.</param>
internal sealed partial record ProgramEdit(string Text, int Line, int Last)
{
    /// <summary>The deepest Z of an operation, where it is last given, is given deeper.</summary>
    public static ProgramEdit Deeper(string text, string operation, double by)
    {
        var lines = text.Split('\n');
        var (from, to) = Section(lines, operation);
        var depths = Enumerable.Range(from, to - from).Where(i => Z().IsMatch(lines[i])).Select(i => (Index: i, Z: Value(Z().Match(lines[i])))).ToList();
        var deepest = depths.Min(d => d.Z);
        var at = depths.Last(d => d.Z == deepest).Index;
        return Changed(lines, at, Z().Replace(lines[at], Word("Z", deepest - by)), Z());
    }

    /// <summary>A coordinate is given as another one.</summary>
    public static ProgramEdit Moved(string text, int line, char axis, double by)
    {
        var lines = text.Split('\n');
        var word = axis == 'X' ? X() : Y();
        return Changed(lines, line - 1, word.Replace(lines[line - 1], m => Word(axis.ToString(), Value(m) + by)), word);
    }

    public static ProgramEdit Without(string text, int line)
    {
        var lines = text.Split('\n').ToList();
        lines.RemoveAt(line - 1);
        return new(string.Join('\n', lines), line, line);
    }

    /// <summary>The line by which the cutter last goes down to the operation's depth is left out.</summary>
    public static ProgramEdit WithoutLastDescent(string text, string operation)
    {
        var cuts = Cuts(text, operation);
        var deepest = cuts.Min(m => m.To.Z);
        return Without(text, cuts.Last(m => m.To.Z <= deepest && m.From.Z > m.To.Z + 0.1).Line);
    }

    public static ProgramEdit Replaced(string text, int line, string old, string with)
    {
        var lines = text.Split('\n');
        Assert.Contains(old, lines[line - 1], StringComparison.Ordinal);
        return new(string.Join('\n', lines.Select((l, i) => i == line - 1 ? l.Replace(old, with, StringComparison.Ordinal) : l)), line, line);
    }

    public static int LineWith(string text, string word) => Array.FindIndex(text.Split('\n'), l => l.Contains(word, StringComparison.Ordinal)) + 1;

    /// <summary>The feed moves of an operation, as the reader reads them.</summary>
    public static List<Motion> Cuts(string text, string operation)
    {
        var (from, to) = Section(text.Split('\n'), operation);
        return [.. ProgramReader.Read(text, "text").Good.Motions.Where(m => m.Line > from && m.Line <= to && m.Kind != MotionKind.Rapid)];
    }

    /// <summary>Lines after an operation's comment, up to the next operation's.</summary>
    private static (int From, int To) Section(string[] lines, string operation)
    {
        var from = Array.IndexOf(lines, $"({operation})") + 1;
        Assert.True(from > 0, $"no operation {operation}");
        var to = Array.FindIndex(lines, from, l => l.StartsWith('(') || l.StartsWith('M'));
        return (from, to < 0 ? lines.Length : to);
    }

    private static ProgramEdit Changed(string[] lines, int at, string line, Regex word)
    {
        Assert.NotEqual(lines[at], line);
        var next = Array.FindIndex(lines, at + 1, l => word.IsMatch(l));
        return new(string.Join('\n', lines.Select((l, i) => i == at ? line : l)), at + 1, next < 0 ? lines.Length : next + 1);
    }

    private static double Value(Match m) => double.Parse(m.ValueSpan[1..], CultureInfo.InvariantCulture);
    private static string Word(string letter, double value) => letter + value.ToString("0.###", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"X-?[0-9.]+")]
    private static partial Regex X();
    [GeneratedRegex(@"Y-?[0-9.]+")]
    private static partial Regex Y();
    [GeneratedRegex(@"Z-?[0-9.]+")]
    private static partial Regex Z();
}
