using System.Text;
using System.Text.Json;

namespace Solidbody.Programs.Json;

/// <summary>A value of a JSON text that remembers where it stands.</summary>
internal sealed class JsonValue
{
    public required JsonTokenType Kind { get; init; }
    public required int Line { get; init; }
    public required int Column { get; init; }
    public string Text { get; init; } = "";
    public double Number { get; init; }
    public List<JsonMember> Members { get; } = [];
    public List<JsonValue> Items { get; } = [];

    /// <summary>What it is, for a message.</summary>
    public string Word => Kind switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.String => $"the text \"{(Text.Length <= 40 ? Text : Text[..40] + "…")}\"",
        JsonTokenType.Number => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"the number {Number:R}"),
        JsonTokenType.True => "true",
        JsonTokenType.False => "false",
        _ => "null",
    };
}

/// <summary>One key of an object with its value.</summary>
internal sealed record JsonMember(string Key, int Line, int Column, JsonValue Value);

/// <summary>Parses JSON (RFC 8259) into values with places; keys that stand twice and numbers too large are mistakes.</summary>
internal ref struct JsonTree
{
    /// <summary>Longest text, characters: a thousand times a usual index.</summary>
    private const int LongestText = 50_000_000;
    /// <summary>Our deepest nesting is 6.</summary>
    private const int MostDepth = 12;

    private readonly ReadOnlySpan<byte> _bytes;
    private readonly MistakeList _mistakes;
    private Utf8JsonReader _reader;
    private int _line = 1, _lineStart, _scanned;

    private JsonTree(ReadOnlySpan<byte> bytes, MistakeList mistakes)
    {
        _bytes = bytes;
        _mistakes = mistakes;
        _reader = new(bytes, new JsonReaderOptions { MaxDepth = MostDepth });
    }

    /// <summary>The tree, or null after telling the one place where the text stops being JSON.</summary>
    public static JsonValue? Parse(string text, MistakeList mistakes)
    {
        if (text.Length > LongestText)
        {
            mistakes.Add(1, 1, $"the text has {text.Length} characters", $"at most {LongestText} characters", "make the packet again");
            return null;
        }
        var tree = new JsonTree(Encoding.UTF8.GetBytes(text), mistakes);
        try
        {
            tree._reader.Read();
            var root = tree.Value();
            tree._reader.Read(); // refuses anything that follows
            return root;
        }
        catch (JsonException e)
        {
            var end = e.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
            var (line, column) = tree.Place((int)(e.LineNumber ?? 0), (int)(e.BytePositionInLine ?? 0));
            mistakes.Add(line, column, "not JSON: " + (end < 0 ? e.Message : e.Message[..end]).TrimEnd('.'), "JSON (RFC 8259)", "mend the text, or make the packet again");
        }
        catch (InvalidOperationException) // half of a surrogate pair, written as \uD800
        {
            var (line, column) = tree.Place();
            mistakes.Add(line, column, "a text that is not Unicode", "whole characters", "mend the text");
        }
        return null;
    }

    private JsonValue Value()
    {
        var (line, column) = Place();
        var kind = _reader.TokenType;
        var value = new JsonValue
        {
            Kind = kind,
            Line = line,
            Column = column,
            Text = kind == JsonTokenType.String ? _reader.GetString()! : "",
            Number = kind == JsonTokenType.Number ? Number(line, column) : 0,
        };
        if (kind == JsonTokenType.StartArray)
            while (_reader.Read() && _reader.TokenType != JsonTokenType.EndArray) value.Items.Add(Value());
        else if (kind == JsonTokenType.StartObject)
            Members(value);
        return value;
    }

    private void Members(JsonValue value)
    {
        var keys = new HashSet<string>(StringComparer.Ordinal);
        while (_reader.Read() && _reader.TokenType != JsonTokenType.EndObject)
        {
            var (line, column) = Place();
            var key = _reader.GetString()!;
            _reader.Read();
            var member = new JsonMember(key, line, column, Value());
            if (keys.Add(key)) value.Members.Add(member);
            else _mistakes.Add(line, column, $"key '{key}' stands twice", "each key once", "keep one of them");
        }
    }

    private double Number(int line, int column)
    {
        if (_reader.TryGetDouble(out var number) && double.IsFinite(number)) return number;
        _mistakes.Add(line, column, "a number too large", "finite numbers", "mend the number");
        return 0;
    }

    /// <summary>A place given in lines and bytes from 0, in lines and characters from 1.</summary>
    private readonly (int Line, int Column) Place(int lines, int bytes)
    {
        var rest = _bytes;
        for (var i = 0; i < lines; i++) rest = rest[(rest.IndexOf((byte)'\n') + 1)..];
        return (lines + 1, Encoding.UTF8.GetCharCount(rest[..Math.Min(bytes, rest.Length)]) + 1);
    }

    /// <summary>Line and column of the token, both from 1; the column in characters.</summary>
    private (int Line, int Column) Place()
    {
        var start = (int)_reader.TokenStartIndex;
        for (; _scanned < start; _scanned++)
            if (_bytes[_scanned] == '\n') (_line, _lineStart) = (_line + 1, _scanned + 1);
        return (_line, Encoding.UTF8.GetCharCount(_bytes[_lineStart..start]) + 1);
    }
}
