using System.Collections.Immutable;
using Solidbody.Instrument.Playing;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[tuning]</c>: what the strings are and what they sound. Nothing about a string is a default.</summary>
static class TuningSection
{
    /// <summary>Heaviest metal wound on strings is nickel, kg/m³: 8908, from memory. No string is heavier than a solid one of it.</summary>
    const double DensestWrap = 8908;
    const int MostStrings = 12, MostTunings = 12;

    /// <returns>Null when the file names no strings.</returns>
    public static TuningDefinition? Read(TableReader tuning, InstrumentBasis basis)
    {
        var a4 = tuning.Frequency("a4", 400, 480, 440, "pitch of A4");
        var strings = tuning.Tables<StringDefinition>("strings", 0, MostStrings, [], (s, _) => ReadString(s));
        var also = tuning.Tables<AlsoTuned>("also", 0, MostTunings, [], (t, _) => ReadAlso(t, basis.Strings));
        if (tuning.IsSound && strings.Length != 0 && strings.Length != basis.Strings)
            tuning.Refuse("strings", $"{strings.Length} strings are described, the instrument has {basis.Strings}", $"{basis.Strings} [[tuning.strings]], from the lowest", "describe every string, or none");
        if (tuning.IsSound && strings.Length == 0 && also.Length != 0)
            tuning.Refuse("also", "other tunings are named, the strings are not described", $"{basis.Strings} [[tuning.strings]] first", "describe the strings, or remove these tunings");
        return strings.Length == 0 ? null : new(a4, strings) { Also = also };
    }

    static StringDefinition ReadString(TableReader s)
    {
        var note = s.Form("note", NoteName.Form, NoteName.Read, new Note(69), "write the letter large and the octave behind it: E2", "what the string sounds open; strings stand in order, from the lowest");
        var gauge = s.Length("gauge", 0.15, 4, null, "diameter of the whole string");
        var wound = s.Flag("wound", false, "whether it is wound");
        if (!wound)
        {
            const string plain = "a plain string has only a note and a gauge: its mass follows from steel", remedy = "remove it, or say `wound = true`";
            s.RefuseIfGiven("unit_mass", plain, remedy);
            s.RefuseIfGiven("core", plain, remedy);
            return new(note, gauge);
        }
        var mass = s.UnitMassIfGiven("unit_mass", 0.2, 120, "mass of a wound string's length: from its maker, or weigh a metre of it; it cannot be worked out");
        var core = s.LengthIfGiven("core", 0.15, 2, "diameter of a wound string's core; its stress is unknown without");
        if (mass is null)
        {
            s.Refuse("unit_mass", "a wound string's `unit_mass` is missing", "0.2 g/m to 120 g/m, in g/m, kg/m or lb/in", "take the maker's figure, or weigh a metre of the string: its mass cannot be worked out from its gauge");
            return new(note, gauge, 0, core);
        }
        if (s.IsSound) RefuseImpossible(s, gauge, mass.Value, core);
        return new(note, gauge, mass, core);
    }

    static void RefuseImpossible(TableReader s, double gauge, double mass, double? core)
    {
        if (core is { } inner && !(inner < gauge))
        {
            s.Refuse("core", $"the core is {s.Show(inner)}, the whole string {s.Show(gauge)}", $"less than {s.Show(gauge)}", "give the diameter of the core alone");
            return;
        }
        var (least, most) = (StringPull.SolidMass(core ?? 0, StringPull.SteelDensity), StringPull.SolidMass(gauge, DensestWrap));
        if (!(mass > least && mass <= most))
            s.Refuse("unit_mass", FormattableString.Invariant($"a string of {s.Show(gauge)} weighs {1000 * mass:0.###} g/m"), FormattableString.Invariant($"more than its core, {1000 * least:0.###} g/m, and not more than solid nickel, {1000 * most:0.###} g/m"),
                "look at the unit and the decimal point, or weigh a metre of the string");
    }

    static AlsoTuned ReadAlso(TableReader t, int strings)
    {
        var name = t.Text("name", 30, null, "what the tuning is called");
        var notes = t.Form("notes", $"{strings} notes from the lowest string, with spaces between, such as \"D2 A2 D3\"", text => ReadNotes(text, strings), default(ImmutableArray<Note>), "write a name and octave for each string: E2, Bb1 or F#3", "what the strings sound open then");
        return new(name, notes.IsDefault ? [] : notes);
    }

    static ImmutableArray<Note>? ReadNotes(string text, int strings)
    {
        var notes = text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(NoteName.Read).ToArray();
        return notes.Length == strings && notes.All(n => n is not null) ? [.. notes.Select(n => n!.Value)] : null;
    }
}
