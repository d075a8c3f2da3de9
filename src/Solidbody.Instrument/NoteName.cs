using System.Collections.Immutable;

namespace Solidbody.Instrument;

/// <summary>Notes by letter and octave in scientific pitch notation: A4 is note 69, the octave changes at C.</summary>
public static class NoteName
{
    /// <summary>The form in words.</summary>
    public const string Form = "a letter A to G, then # or b or neither, then an octave 0 to 7, such as E2, Bb1 or F#3";

    /// <summary>The usual name of each step above C.</summary>
    private static readonly ImmutableArray<string> Names = ["C", "C#", "D", "Eb", "E", "F", "F#", "G", "G#", "A", "Bb", "B"];
    private static readonly ImmutableArray<int> Naturals = [9, 11, 0, 2, 4, 5, 7];

    private const int Octave = 12;
    /// <summary>C of octave 0.</summary>
    private const int Lowest = 12;

    /// <summary>The note of that name; null when it is none, spaces and lower-case letters included.</summary>
    public static Note? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length is < 2 or > 3 || text[0] is < 'A' or > 'G' || text[^1] is < '0' or > '7') return null;
        int? shift = text.Length == 2 ? 0 : text[1] switch { '#' => 1, 'b' => -1, _ => null };
        return Lowest + Octave * (text[^1] - '0') + Naturals[text[0] - 'A'] + shift is { } number ? new Note(number) : null;
    }

    /// <summary>A note's usual name: <c>E2</c>, <c>Bb1</c>.</summary>
    public static string Of(Note note)
    {
        var octave = (int)Math.Floor((note.Number - Lowest) / (double)Octave);
        return FormattableString.Invariant($"{Names[note.Number - Lowest - Octave * octave]}{octave}");
    }
}
