using System.Collections.Immutable;
using Solidbody.Findings;

namespace Solidbody.Programs;

/// <summary>Gathers the mistakes of one file, up to a number a person can read.</summary>
internal sealed class MistakeList(string file)
{
    public const int Most = 100;
    private readonly List<Mistake> _mistakes = [];

    public int Count => _mistakes.Count;
    public bool IsFull => Count >= Most;

    public void Add(int line, int column, string wrong, string allowed, string remedy)
    {
        if (!IsFull) _mistakes.Add(new(file, line, column, wrong, allowed, remedy));
    }

    /// <summary>In the order of the file.</summary>
    public ImmutableArray<Mistake> ToImmutable() => [.. _mistakes.OrderBy(m => m.Line).ThenBy(m => m.Column)];
}
