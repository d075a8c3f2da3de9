using System.Collections.Immutable;
using Solidbody.Findings;

namespace Solidbody.Drawings;

/// <summary>Nothing more can be read of this drawing; why not stands in the log.</summary>
internal sealed class DrawingRefusal : Exception;

/// <summary>What reading one drawing has to say: mistakes and notes, each with its place.</summary>
internal sealed class ReadingLog(string file)
{
    /// <summary>Longest a person wants to read of a value; a hostile one is cut.</summary>
    private const int LongestQuote = 60;

    private readonly List<Mistake> mistakes = [];
    private readonly List<DrawingNote> mended = [];
    private readonly Dictionary<string, (DrawingPlace First, int Count)> understood = [];

    public bool IsClean => mistakes.Count == 0;
    public ImmutableArray<Mistake> Mistakes => [.. mistakes.OrderBy(m => m.Line).ThenBy(m => m.Column)];

    public ImmutableArray<DrawingNote> Notes =>
    [
        .. mended,
        .. understood.Select(u => new DrawingNote(DrawingNoteKind.Understood, u.Value.First, u.Value.Count == 1 ? u.Key : $"{u.Key} ({u.Value.Count} times)")),
    ];

    /// <summary>Notes a mistake; too many of them end the reading.</summary>
    public void Refuse(DrawingPlace at, string wrong, string allowed, string remedy)
    {
        mistakes.Add(new(file, at.Line, at.Column, wrong, allowed, remedy));
        if (mistakes.Count >= DrawingLimits.Mistakes) throw new DrawingRefusal();
    }

    /// <summary>Notes a mistake after which nothing more can be read.</summary>
    /// <returns>To be thrown.</returns>
    public DrawingRefusal Stop(DrawingPlace at, string wrong, string allowed, string remedy)
    {
        mistakes.Add(new(file, at.Line, at.Column, wrong, allowed, remedy));
        return new();
    }

    public void Mended(DrawingPlace at, string said, double size) => mended.Add(new(DrawingNoteKind.Mended, at, said, size));

    /// <summary>Notes what was left out or taken for granted; the same words are told once, with how often.</summary>
    public void Understood(DrawingPlace at, string said) =>
        understood[said] = understood.TryGetValue(said, out var before) ? (before.First, before.Count + 1) : (at, 1);

    /// <summary>What a person wrote, on one line and not too long.</summary>
    public static string Quote(ReadOnlySpan<char> text)
    {
        var cut = text.Length > LongestQuote ? string.Concat(text[..LongestQuote], "…") : text.ToString();
        return $"\"{string.Concat(cut.Select(c => char.IsControl(c) ? ' ' : c))}\"";
    }
}
