using System.Collections.Immutable;
using Solidbody.Findings;

namespace Solidbody.Instrument;

/// <summary>The instrument worked out: its parts in closed form, and what does not fit.</summary>
/// <param name="Definition">What the file says.</param>
/// <param name="Parts">Body, neck, fretboard, in that order, without what is bought; empty when a finding stops the geometry itself.</param>
/// <param name="Findings">In a stable order.</param>
public sealed record Design(InstrumentDefinition Definition, ImmutableArray<Part> Parts, ImmutableArray<Finding> Findings)
{
    /// <summary>How it plays, holds and hangs.</summary>
    public Figures Figures { get; init; } = Figures.None;

    public Part Part(string name) => Parts.First(p => p.Name == name);
}
