namespace Solidbody.Findings;

/// <summary>What a finding means for the work: verbs, as they are said to a person.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing has to change.</summary>
    Notes,
    /// <summary>The work can go on, at a stated risk.</summary>
    Warns,
    /// <summary>Programs are not written while this stands.</summary>
    Stops,
}
