namespace Solidbody.Findings;

/// <summary>A person's mistake in a file they wrote: where, what is wrong, what is allowed, what to do.</summary>
/// <param name="File">The file's name as the person gave it.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
/// <param name="Wrong">What is wrong, naming the key and the value.</param>
/// <param name="Allowed">What is allowed there.</param>
/// <param name="Remedy">What to do.</param>
public sealed record Mistake(string File, int Line, int Column, string Wrong, string Allowed, string Remedy)
{
    public override string ToString() => $"{File}({Line},{Column}): {Wrong}; allowed: {Allowed}; {Remedy}";
}
