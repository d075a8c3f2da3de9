using System.Collections.Immutable;

namespace Solidbody.Instrument.Playing;

/// <summary>The same strings at other pitches.</summary>
/// <param name="Name">The tuning's name, or how far it is shifted.</param>
/// <param name="Strings">From the lowest, at these pitches.</param>
/// <param name="Named">Whether the instrument file asks for it.</param>
public sealed record Retuning(string Name, ImmutableArray<StringTension> Strings, bool Named)
{
    /// <summary>N.</summary>
    public double Total => Strings.Sum(s => s.Pull.Tension);

    /// <summary>All strings shifted by up to this many semitones.</summary>
    private const int Furthest = 2;

    /// <summary>Every shift from two semitones lower to two higher, the described tuning among them, then the tunings the file names.</summary>
    public static ImmutableArray<Retuning> All(InstrumentDefinition d, ImmutableArray<StringTension> strings)
    {
        ArgumentNullException.ThrowIfNull(d);
        if (d.Tuning is not { } tuning || strings.IsDefaultOrEmpty) return [];
        StringTension At(int i, Note note)
        {
            var s = strings[i];
            var at = s.String with { Note = note };
            return s with { String = at, Pull = StringPull.Of(at, s.Pull.Length, tuning.A4) };
        }
        return
        [
            .. Enumerable.Range(-Furthest, 2 * Furthest + 1).Select(shift => new Retuning(Shifted(shift), [.. strings.Select((s, i) => At(i, new(s.String.Note.Number + shift)))], false)),
            .. tuning.Also.Select(also => new Retuning(also.Name, [.. also.Notes.Select((note, i) => At(i, note))], true)),
        ];
    }

    private static string Shifted(int by) => by switch
    {
        0 => "as described",
        1 or -1 => by < 0 ? "1 semitone lower" : "1 semitone higher",
        _ => FormattableString.Invariant($"{Math.Abs(by)} semitones {(by < 0 ? "lower" : "higher")}"),
    };
}
