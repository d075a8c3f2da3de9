namespace Solidbody.Findings;

/// <summary>One thing the tool has to say about an instrument, a plan or a proof.</summary>
/// <param name="Code">Stable code such as <c>POCKET-01</c>; <c>docs/checks/CODE.md</c> explains it.</param>
/// <param name="Severity">Whether it stops, warns or notes.</param>
/// <param name="Place">Where: part, feature, program and line, in words a maker reads.</param>
/// <param name="Figure">What was found, with its unit; lengths in millimetres.</param>
/// <param name="Limit">What is allowed, with its unit.</param>
/// <param name="Source">Where the limit comes from: a publication, <c>common practice, no source</c>, the person's own file.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record Finding(string Code, Severity Severity, string Place, string Figure, string Limit, string Source, string Remedy)
{
    /// <summary>The thing that is wrong, in one clause; the code's own sentence.</summary>
    public required string Title { get; init; }
    /// <summary>Why the person goes on all the same; null where they have not said so.</summary>
    public string? OverriddenBecause { get; init; }
    /// <summary>Whether programs must not be written.</summary>
    public bool KeepsProgramsBack => Severity == Severity.Stops && OverriddenBecause is null;
}
