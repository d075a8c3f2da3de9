using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;

namespace Solidbody.Machining.Planning;

/// <summary>One feature to be made in a set-up, before its cutter is settled.</summary>
internal sealed record Job
{
    public required string Name { get; init; }
    public required Stage Stage { get; init; }
    /// <summary>Cutters that can do it, best first; never empty.</summary>
    public required ImmutableArray<Cutter> Candidates { get; init; }
    /// <summary>Wider cutters that get into most of the room: one of them may rough it before.</summary>
    public ImmutableArray<Cutter> Wider { get; init; } = [];
    /// <summary>Jobs of the same set-up that must be done before: the room it lies in.</summary>
    public ImmutableArray<Job> After { get; init; } = [];
    /// <summary>The operations, once the cutter is known.</summary>
    public required Func<Cutter, CutFeeds, IEnumerable<Step>> Steps { get; init; }

    /// <summary>One operation of the job.</summary>
    /// <param name="Suffix">Added to the job's name; empty for none.</param>
    /// <param name="Work">What is cut.</param>
    /// <param name="Skin">What a finishing pass takes: all its depth and the width roughing left; null for a roughing one.</param>
    /// <param name="StepDown">A roughing pass's own step-down, mm; null takes the deepest the limits allow.</param>
    /// <param name="RestAfter">The wider cutter that roughed the room before; null in solid wood.</param>
    internal sealed record Step(string Suffix, Work Work, Bite? Skin = null, double? StepDown = null, Cutter? RestAfter = null);

    /// <summary>By reference: two jobs that say the same are still two.</summary>
    public bool Equals(Job? other) => ReferenceEquals(this, other);
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}
