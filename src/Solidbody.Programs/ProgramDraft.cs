using System.Collections.Immutable;

namespace Solidbody.Programs;

/// <summary>A program before it is text: what its header says, and the motions in the order they run.</summary>
public sealed record ProgramDraft
{
    public required ProgramHeader Header { get; init; }
    /// <summary>Work Z above everything that stands on the bed, mm. The first section begins at this height.</summary>
    public required double ClearanceHeight { get; init; }
    /// <summary>Turns a second; written as whole turns a minute.</summary>
    public required double SpindleSpeed { get; init; }
    /// <summary>Operations in order; each begins where the one before it ended.</summary>
    public required ImmutableArray<ProgramSection> Sections { get; init; }
}

/// <summary>One operation of a program.</summary>
/// <param name="Title">Said in a comment before its first motion; empty for none.</param>
/// <param name="Motions">Work frame, each beginning where the one before it ended within 1e-6 mm.</param>
public sealed record ProgramSection(string Title, IReadOnlyList<Motion> Motions)
{
    /// <summary>Place among the operations of the run, kept where a long program is divided within one.</summary>
    public int Number { get; init; }
}
