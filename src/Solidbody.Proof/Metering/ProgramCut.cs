using System.Collections.Immutable;
using Solidbody.Programs;

namespace Solidbody.Proof.Metering;

/// <summary>What a program took from the wood, motion by motion.</summary>
/// <param name="SetUp">Where it runs.</param>
/// <param name="Entry">Its line of the index.</param>
/// <param name="Motions">Every motion of its text, rapids too, in order.</param>
public sealed record ProgramCut(SetUp SetUp, ProgramEntry Entry, ImmutableArray<MotionCut> Motions);
