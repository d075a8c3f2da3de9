using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Programs;

namespace Solidbody.Machining.Planning;

/// <summary>What is cut where, with what, in which order; no toolpaths yet.</summary>
/// <param name="SetUps">In running order.</param>
/// <param name="Findings">What does not work, in a stable order.</param>
public sealed record Plan(ImmutableArray<PlannedSetUp> SetUps, ImmutableArray<Finding> Findings);

/// <summary>A set-up without programs yet, and what is done in it.</summary>
public sealed record PlannedSetUp(SetUp SetUp, ImmutableArray<Operation> Operations);
