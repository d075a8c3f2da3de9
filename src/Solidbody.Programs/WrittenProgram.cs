using System.Collections.Immutable;

namespace Solidbody.Programs;

/// <summary>A program as text.</summary>
/// <param name="Text">Lines ending in LF.</param>
/// <param name="SectionLines">For each section of the draft the line it begins in, from 1.</param>
public sealed record WrittenProgram(string Text, ImmutableArray<int> SectionLines);
