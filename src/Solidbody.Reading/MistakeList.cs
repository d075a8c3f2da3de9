using System.Collections.Immutable;
using Solidbody.Findings;

namespace Solidbody.Reading;

/// <summary>The mistakes found in one file, given out in the order they stand there.</summary>
sealed class MistakeList(string file)
{
    readonly List<Mistake> _mistakes = [];

    public int Count => _mistakes.Count;

    public void Add(Place place, string wrong, string allowed, string remedy) =>
        _mistakes.Add(new Mistake(file, place.Line, place.Column, OneLine(wrong), OneLine(allowed), OneLine(remedy)));

    public bool HasOnLine(int line) => _mistakes.Exists(m => m.Line == line);

    public ImmutableArray<Mistake> InOrder() => [.. _mistakes.OrderBy(m => m.Line).ThenBy(m => m.Column)];

    /// <summary>Longest a person wants to read; a hostile value is cut.</summary>
    const int Longest = 1000;

    /// <summary>What a person wrote may hold line ends; a mistake is one line.</summary>
    static string OneLine(string text)
    {
        if (text.Length > Longest) text = text[..Longest] + "…";
        return string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c));
    }
}
