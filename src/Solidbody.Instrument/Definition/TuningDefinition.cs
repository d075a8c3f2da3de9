using System.Collections.Immutable;

namespace Solidbody.Instrument;

/// <summary>What the strings are and what they sound.</summary>
/// <param name="A4">Pitch of A4, Hz.</param>
/// <param name="Strings">From the lowest, as many as the instrument has.</param>
public sealed record TuningDefinition(double A4, ImmutableArray<StringDefinition> Strings)
{
    /// <summary>Other tunings the same strings shall take.</summary>
    public ImmutableArray<AlsoTuned> Also { get; init; } = [];
}

/// <summary>Another tuning of the same strings.</summary>
/// <param name="Notes">Open, from the lowest string.</param>
public sealed record AlsoTuned(string Name, ImmutableArray<Note> Notes);

/// <summary>One string as it comes out of its envelope.</summary>
/// <param name="Note">What it sounds open.</param>
/// <param name="Gauge">Diameter, mm.</param>
/// <param name="UnitMass">kg/m; null for a plain steel string, whose mass follows from its diameter. A wound string's is always given: it cannot be worked out.</param>
/// <param name="Core">Diameter of a wound string's core, mm; null for a plain string.</param>
public sealed record StringDefinition(Note Note, double Gauge, double? UnitMass = null, double? Core = null)
{
    public bool IsWound => UnitMass is not null;
}

/// <summary>A note of twelve-tone equal temperament by its number: 69 is A4, 40 is E2, one more is a semitone higher.</summary>
public readonly record struct Note(int Number);
