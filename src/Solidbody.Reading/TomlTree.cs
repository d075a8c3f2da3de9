namespace Solidbody.Reading;

/// <summary>Where something stands in a file: line and column, from 1.</summary>
readonly record struct Place(int Line, int Column);

/// <summary>A file's values with the place of each.</summary>
abstract class TomlValue(Place place)
{
    public Place Place { get; } = place;
}

/// <summary>A value that is not a table or array.</summary>
/// <param name="kind">What it is, in words: <c>text</c>, <c>whole number</c>, <c>number</c>, <c>true or false</c>, <c>date or time</c>.</param>
/// <param name="text">A text without its quotes; anything else as written.</param>
sealed class TomlScalar(Place place, string kind, string text) : TomlValue(place)
{
    public const string String = "text", Integer = "whole number", Float = "number", Boolean = "true or false", Date = "date or time";
    public string Kind { get; } = kind;
    public string Text { get; } = text;
    public bool IsNumber => Kind is Integer or Float;
    /// <summary>As the person wrote it.</summary>
    public string Written => Kind == String ? $"\"{Text}\"" : Text;
}

sealed class TomlArray(Place place) : TomlValue(place)
{
    public List<TomlValue> Items { get; } = [];
}

sealed class TomlTable(Place place) : TomlValue(place)
{
    /// <summary>Keys in the file's order.</summary>
    public List<string> Keys { get; } = [];
    readonly Dictionary<string, (Place Key, TomlValue Value)> _entries = [];

    /// <summary>Whether a header <c>[name]</c> opened it: a second one is a mistake.</summary>
    public bool HasHeader { get; set; }

    public bool TryGet(string key, out (Place Key, TomlValue Value) entry) => _entries.TryGetValue(key, out entry);

    public void Add(string key, Place place, TomlValue value)
    {
        _entries.Add(key, (place, value));
        Keys.Add(key);
    }
}
