using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Reading;

/// <summary>What all tables of one file share while it is read.</summary>
sealed class FileContext(MistakeList mistakes)
{
    readonly List<TableReader> _tables = [];
    readonly List<KeyNote> _notes = [];

    public MistakeList Mistakes { get; } = mistakes;
    /// <summary>What a bare length is in; null when the file does not say.</summary>
    public LengthUnit? Unit { get; set; }
    public HashSet<int> LinesWithBadSyntax { get; } = [];
    /// <summary>Whether the text is not TOML throughout: then a missing key may only be misplaced.</summary>
    public bool IsBroken => LinesWithBadSyntax.Count > 0;
    /// <summary>The top level.</summary>
    public TableReader Root { get; set; } = null!;

    public void Opened(TableReader table) => _tables.Add(table);

    public void Note(KeyNote note) => _notes.Add(note);

    /// <summary>Table by table in the order they were opened, lists of tables element by element.</summary>
    public ImmutableArray<KeyNote> NotesInOrder()
    {
        var order = _tables.Select((t, i) => ((t.Path, t.Element), Index: i)).ToDictionary(t => t.Item1, t => t.Index);
        return [.. _notes.OrderBy(n => order.TryGetValue((n.Table, n.Element), out var at) ? at : int.MaxValue)];
    }

    /// <summary>Tables that know a key, for one that stands in the wrong place.</summary>
    public string? OtherHomeOf(string key, string notIn) => _notes.Find(n => n.Key == key && n.Table != notIn)?.Table;

    public void RefuseUnknownKeys()
    {
        foreach (var table in _tables) table.RefuseUnknownKeys();
    }
}
