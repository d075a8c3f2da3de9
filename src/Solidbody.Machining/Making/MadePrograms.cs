using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Programs;

namespace Solidbody.Machining.Making;

/// <summary>The programs of a plan.</summary>
/// <param name="SetUps">The plan's set-ups, each with its program entries in running order.</param>
/// <param name="Texts">Program text by file name.</param>
/// <param name="Findings">What came up while making them.</param>
public sealed record MadePrograms(ImmutableArray<SetUp> SetUps, ImmutableSortedDictionary<string, string> Texts, ImmutableArray<Finding> Findings);
