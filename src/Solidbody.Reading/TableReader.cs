using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Reading;

/// <summary>One table of a person's file. Every key is asked for once, with what is allowed, its default and what it means;
/// a mistake is noted with its place and a stand-in goes on in its stead, so that one reading finds all. What nobody asks for is refused at the end.</summary>
public sealed partial class TableReader
{
    readonly FileContext _file;
    readonly TomlTable _table;
    readonly List<string> _known = [];
    readonly Dictionary<string, TableReader> _tables = [];
    int _mistakes;

    internal TableReader(FileContext file, TomlTable table, string path, int element)
    {
        (_file, _table, Path, Element) = (file, table, path, element);
        file.Opened(this);
    }

    /// <summary>Dotted path from the top of the file, such as <c>body.pickups</c>; empty at the top.</summary>
    internal string Path { get; }
    /// <summary>Place in a list of tables, from 0; −1 for a plain table.</summary>
    internal int Element { get; }

    /// <summary>The unit the file declares; millimetres where it fails to.</summary>
    public LengthUnit Unit => _file.Unit ?? LengthUnit.Millimetre;

    /// <summary>A length as the person would write it.</summary>
    public string Show(double millimetres) => Geometry.Length.Show(millimetres, Unit);

    /// <summary>Whether every key read so far was good: only then is it fair to compare them with each other.</summary>
    public bool IsSound => _mistakes == 0;

    /// <summary>Whether the person wrote this key.</summary>
    public bool Has(string key) => _table.TryGet(key, out _);

    /// <summary>Notes a mistake at a key (at the table, when the person did not write the key).</summary>
    public void Refuse(string key, string wrong, string allowed, string remedy) =>
        Refuse(_table.TryGet(key, out var entry) ? entry.Value.Place : _table.Place, wrong, allowed, remedy);

    void Refuse(Place place, string wrong, string allowed, string remedy)
    {
        _mistakes++;
        // What stands on a line that is not TOML is no value to judge.
        if (!_file.LinesWithBadSyntax.Contains(place.Line)) _file.Mistakes.Add(place, wrong, allowed, remedy);
    }

    /// <summary>Refuses a key that has no meaning beside the others given.</summary>
    public void RefuseIfGiven(string key, string allowed, string remedy)
    {
        if (!_known.Contains(key)) _known.Add(key);
        if (Has(key)) Refuse(key, $"{Named(key)} has no meaning here", allowed, remedy);
    }

    /// <summary>A table inside this one, the same each time; an empty one when the person did not write it.</summary>
    public TableReader Table(string key)
    {
        if (_tables.TryGetValue(key, out var known)) return known;
        _known.Add(key);
        var table = new TomlTable(_table.Place);
        if (_table.TryGet(key, out var entry))
        {
            if (entry.Value is TomlTable written) table = written;
            else Refuse(key, $"{Named(key)} is {Describe(entry.Value)}", "a table", $"write [{PathTo(key)}] on a line of its own and its keys below");
        }
        return _tables[key] = new TableReader(_file, table, PathTo(key), -1);
    }

    /// <summary>A list of tables: <c>[[name]]</c>, once for each element.</summary>
    /// <param name="or">Stands in when the person wrote none; an empty list written by the person stays empty.</param>
    /// <param name="read">Reads one element; its second argument is the element of <paramref name="or"/> whose values are the defaults, null for one the person wrote.</param>
    public ImmutableArray<T> Tables<T>(string key, int least, int most, IReadOnlyList<T> or, Func<TableReader, T?, T> read) where T : class
    {
        _known.Add(key);
        if (!_table.TryGet(key, out var entry))
        {
            if (or.Count < least && !_file.IsBroken) RefuseMissing(key, $"{least} or more [[{PathTo(key)}]]");
            return [.. or.Select((value, i) => read(new TableReader(_file, new TomlTable(_table.Place), PathTo(key), i), value))];
        }
        if (entry.Value is not TomlArray array || array.Items.Exists(i => i is not TomlTable))
        {
            Refuse(key, $"{Named(key)} is {Describe(entry.Value)}", "a list of tables", $"write [[{PathTo(key)}]] for each, and its keys below");
            return [];
        }
        if (array.Items.Count < least || array.Items.Count > most)
            Refuse(key, $"{Named(key)} has {array.Items.Count} entries", $"{least} to {most}", "add or remove entries");
        return [.. array.Items.Cast<TomlTable>().Take(most).Select((table, i) => read(new TableReader(_file, table, PathTo(key), i), null))];
    }

    internal void RefuseUnknownKeys()
    {
        foreach (var key in _table.Keys)
        {
            if (_known.Contains(key)) continue;
            _table.TryGet(key, out var entry);
            if (_file.LinesWithBadSyntax.Contains(entry.Key.Line)) continue;
            var where = Path == "" ? "at the top level" : $"in [{Path}]";
            _file.Mistakes.Add(entry.Key, $"unknown key `{key}` {where}", Listing.Keys(_known), RemedyForUnknown(key));
        }
    }

    string RemedyForUnknown(string key)
    {
        if (NearestWord.To(key, _known) is { } near) return $"did you mean `{near}`?";
        return _file.OtherHomeOf(key, Path) switch
        {
            null => "remove it, or use one of the keys allowed here",
            "" => $"`{key}` belongs at the top of the file, before the first table",
            var home => $"`{key}` belongs in [{home}]",
        };
    }

    void RefuseMissing(string key, string allowed)
    {
        _mistakes++;
        if (_file.IsBroken) return;
        _file.Mistakes.Add(_table.Place, $"{Named(key)} is missing", allowed, Path == "" ? "give it at the top of the file, before the first table" : $"add it under {Header}");
    }

    string Header => Element < 0 ? $"[{Path}]" : $"[[{Path}]]";

    string PathTo(string key) => Path == "" ? key : $"{Path}.{key}";

    /// <summary>A key as a person finds it: <c>`nut.width`</c>, <c>`body.pickups` 2: `depth`</c>.</summary>
    string Named(string key) => Element < 0 ? $"`{PathTo(key)}`" : $"`{key}` of [[{Path}]] {Element + 1}";

    static string Describe(TomlValue value) => value switch
    {
        TomlScalar { Kind: TomlScalar.String } text => text.Written,
        TomlScalar scalar => $"{scalar.Written}, a {scalar.Kind}",
        TomlArray => "a list",
        _ => "a table",
    };
}
