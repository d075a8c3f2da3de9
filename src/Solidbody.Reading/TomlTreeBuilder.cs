using Tomlyn.Syntax;

namespace Solidbody.Reading;

/// <summary>Turns TOML's syntax tree into a tree of values with places; a key or table given twice is refused here, naming the first.</summary>
sealed class TomlTreeBuilder(MistakeList mistakes)
{
    readonly TomlTable _root = new(new Place(1, 1));

    public TomlTable Build(DocumentSyntax document)
    {
        foreach (var entry in document.KeyValues) Enter(_root, entry);
        foreach (var table in document.Tables)
        {
            if (table.Name is null) continue;
            if (OpenTable(table) is { } open)
                foreach (var entry in table.Items) Enter(open, entry);
        }
        return _root;
    }

    /// <summary>The table a header names, new or continued; null when the name is taken by a value.</summary>
    TomlTable? OpenTable(TableSyntaxBase syntax)
    {
        var place = PlaceOf(syntax);
        var path = Path(syntax.Name!);
        if (path.Count == 0 || Walk(_root, path) is not { } parent) return null;
        var (key, keyPlace) = path[^1];
        if (syntax is TableArraySyntax)
        {
            if (!parent.TryGet(key, out var entry))
            {
                entry = (keyPlace, new TomlArray(place));
                parent.Add(key, keyPlace, entry.Value);
            }
            if (entry.Value is not TomlArray array) return Twice(key, keyPlace, entry.Key);
            var element = new TomlTable(place) { HasHeader = true };
            array.Items.Add(element);
            return element;
        }
        if (!parent.TryGet(key, out var known))
        {
            var table = new TomlTable(place) { HasHeader = true };
            parent.Add(key, keyPlace, table);
            return table;
        }
        if (known.Value is not TomlTable old || old.HasHeader) return Twice(key, keyPlace, known.Key);
        old.HasHeader = true;
        return old;
    }

    void Enter(TomlTable table, KeyValueSyntax syntax)
    {
        if (syntax.Key is null || syntax.Value is null) return;
        var path = Path(syntax.Key);
        if (path.Count == 0 || Walk(table, path) is not { } parent) return;
        var (key, place) = path[^1];
        if (parent.TryGet(key, out var first)) Twice(key, place, first.Key);
        else parent.Add(key, place, Value(syntax.Value));
    }

    /// <summary>The table that holds the last key of a path; tables on the way come into being.</summary>
    TomlTable? Walk(TomlTable table, List<(string Key, Place Place)> path)
    {
        foreach (var (key, place) in path[..^1])
        {
            if (!table.TryGet(key, out var entry))
            {
                entry = (place, new TomlTable(place));
                table.Add(key, place, entry.Value);
            }
            var next = entry.Value is TomlArray { Items: [.., TomlTable last] } ? last : entry.Value as TomlTable;
            if (next is null) return Twice(key, place, entry.Key);
            table = next;
        }
        return table;
    }

    TomlTable? Twice(string key, Place place, Place first)
    {
        mistakes.Add(place, $"`{key}` is given twice", "each key and table once", $"remove one of the two; the first stands on line {first.Line}");
        return null;
    }

    TomlValue Value(ValueSyntax syntax)
    {
        var place = PlaceOf(syntax);
        switch (syntax)
        {
            case StringValueSyntax text: return new TomlScalar(place, TomlScalar.String, text.Value ?? "");
            case IntegerValueSyntax whole: return new TomlScalar(place, TomlScalar.Integer, Number(whole.Token));
            case FloatValueSyntax number: return new TomlScalar(place, TomlScalar.Float, Number(number.Token));
            case BooleanValueSyntax flag: return new TomlScalar(place, TomlScalar.Boolean, flag.Value ? "true" : "false");
            case ArraySyntax array:
                var items = new TomlArray(place);
                foreach (var item in array.Items)
                    if (item.Value is not null) items.Items.Add(Value(item.Value));
                return items;
            case InlineTableSyntax inline:
                var table = new TomlTable(place) { HasHeader = true };
                foreach (var item in inline.Items)
                    if (item.KeyValue is not null) Enter(table, item.KeyValue);
                return table;
            default: return new TomlScalar(place, TomlScalar.Date, syntax.ToString()?.Trim() ?? "");
        }
    }

    /// <summary>TOML lets people write 24_000.</summary>
    static string Number(SyntaxToken? token) => (token?.Text ?? "").Replace("_", "", StringComparison.Ordinal);

    static List<(string Key, Place Place)> Path(KeySyntax key)
    {
        var path = new List<(string, Place)>();
        if (key.Key is not null) path.Add((Word(key.Key), PlaceOf(key.Key)));
        foreach (var dotted in key.DotKeys)
            if (dotted.Key is not null) path.Add((Word(dotted.Key), PlaceOf(dotted.Key)));
        return path;
    }

    static string Word(BareKeyOrStringValueSyntax key) => key switch
    {
        BareKeySyntax bare => bare.Key?.Text ?? "",
        StringValueSyntax text => text.Value ?? "",
        _ => "",
    };

    static Place PlaceOf(SyntaxNode node) => new(node.Span.Start.Line + 1, node.Span.Start.Column + 1);
}
