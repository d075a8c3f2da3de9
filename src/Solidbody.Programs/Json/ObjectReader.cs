using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;

namespace Solidbody.Programs.Json;

/// <summary>Asks an object for its keys by name and type. What is missing, of another type, out of range or not asked for is told.</summary>
/// <remarks>After a mistake it hands back a harmless value: the whole is thrown away then.</remarks>
internal sealed class ObjectReader
{
    private readonly JsonValue _value;
    private readonly MistakeList _mistakes;
    private readonly List<string> _asked = [];

    public ObjectReader(JsonValue value, MistakeList mistakes)
    {
        _value = value;
        _mistakes = mistakes;
    }

    /// <summary>Reads one object and refuses the keys that were not asked for.</summary>
    public static T Read<T>(JsonValue value, string name, MistakeList mistakes, Func<ObjectReader, T> members) where T : notnull
    {
        if (value.Kind != JsonTokenType.StartObject)
        {
            mistakes.Add(value.Line, value.Column, $"'{name}' is {value.Word}", "an object { … }", "write an object, or make the packet again");
            return default!;
        }
        var reader = new ObjectReader(value, mistakes);
        var read = members(reader);
        foreach (var member in value.Members)
            if (!reader._asked.Contains(member.Key))
                mistakes.Add(member.Line, member.Column, $"unknown key '{member.Key}'", string.Join(", ", reader._asked), "take it out");
        return read;
    }

    public string Text(string key) => Find(key, JsonTokenType.String, "a text")?.Text ?? "";

    /// <summary>A text that may be missing.</summary>
    public string? TextIfGiven(string key)
    {
        _asked.Add(key);
        return Peek(key) is null ? null : Text(key);
    }

    /// <summary>A text that obeys a rule.</summary>
    public string Text(string key, Predicate<string> obeys, string rule)
    {
        if (Find(key, JsonTokenType.String, "a text") is not { } found) return "";
        if (!obeys(found.Text)) _mistakes.Add(found.Line, found.Column, $"'{key}' is {found.Word}", rule, "mend it, or make the packet again");
        return found.Text;
    }

    public T Word<T>(string key, IReadOnlyList<(string Word, T Value)> words)
    {
        var text = Text(key, t => words.Any(w => w.Word == t), string.Join(", ", words.Select(w => w.Word)));
        return words.FirstOrDefault(w => w.Word == text).Value;
    }

    /// <summary>A number in [least, most].</summary>
    public double Number(string key, double least = double.MinValue, double most = double.MaxValue)
    {
        if (Find(key, JsonTokenType.Number, "a number") is not { } found) return 0;
        if (!(found.Number >= least && found.Number <= most))
            _mistakes.Add(found.Line, found.Column, $"'{key}' is {found.Word}", Range(least, most), "mend it, or make the packet again");
        return found.Number;
    }

    public double? NumberOrNull(string key)
    {
        if (Peek(key)?.Kind != JsonTokenType.Null) return Number(key);
        _asked.Add(key);
        return null;
    }

    public int Whole(string key, int least, int most)
    {
        var number = Number(key, least, most);
        if (number == Math.Floor(number)) return number >= least && number <= most ? (int)number : 0;
        var found = Peek(key)!;
        _mistakes.Add(found.Line, found.Column, $"'{key}' is {found.Word}", "a whole number", "mend it, or make the packet again");
        return 0;
    }

    public bool Flag(string key)
    {
        _asked.Add(key);
        var found = Peek(key);
        if (found is null) Missing(key);
        else if (found.Kind is not (JsonTokenType.True or JsonTokenType.False)) WrongType(key, found, "true or false");
        return found?.Kind == JsonTokenType.True;
    }

    public T Object<T>(string key, Func<ObjectReader, T> members) where T : notnull
    {
        _asked.Add(key);
        if (Peek(key) is { } found) return Read(found, key, _mistakes, members);
        Missing(key);
        return default!;
    }

    /// <summary>An object, or null where there is none.</summary>
    public T? ObjectOrNull<T>(string key, Func<ObjectReader, T> members) where T : class
    {
        if (Peek(key)?.Kind != JsonTokenType.Null) return Object(key, members);
        _asked.Add(key);
        return null;
    }

    public ImmutableArray<T> Objects<T>(string key, Func<ObjectReader, T> members) where T : notnull =>
        Items(key, item => Read(item, $"an item of {key}", _mistakes, members));

    public ImmutableArray<string> Texts(string key) => Items(key, item =>
    {
        if (item.Kind != JsonTokenType.String) WrongType($"an item of {key}", item, "a text");
        return item.Text;
    });

    public ImmutableArray<T> Items<T>(string key, Func<JsonValue, T> read) =>
        Find(key, JsonTokenType.StartArray, "a list") is { } found ? [.. found.Items.Select(read)] : [];

    /// <summary>Tells something about a key that was read.</summary>
    public void Tell(string key, string wrong, string allowed)
    {
        var place = Peek(key) ?? _value;
        _mistakes.Add(place.Line, place.Column, wrong, allowed, "mend it, or make the packet again");
    }

    private JsonValue? Find(string key, JsonTokenType kind, string word)
    {
        _asked.Add(key);
        var found = Peek(key);
        if (found is null) Missing(key);
        else if (found.Kind != kind)
        {
            WrongType(key, found, word);
            return null;
        }
        return found;
    }

    private JsonValue? Peek(string key) => _value.Members.FirstOrDefault(m => m.Key == key)?.Value;

    private void Missing(string key) => _mistakes.Add(_value.Line, _value.Column, $"key '{key}' is missing", "every key of docs/packet.md", $"write '{key}', or make the packet again");

    private void WrongType(string key, JsonValue found, string word) => _mistakes.Add(found.Line, found.Column, $"'{key}' is {found.Word}", word, "mend it, or make the packet again");

    private static string Range(double least, double most) => (least, most) switch
    {
        (double.MinValue, _) => string.Create(CultureInfo.InvariantCulture, $"at most {most}"),
        (_, double.MaxValue) => string.Create(CultureInfo.InvariantCulture, $"at least {least}"),
        _ => string.Create(CultureInfo.InvariantCulture, $"from {least} to {most}"),
    };
}
