using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Proof;

/// <summary>What cutting the packet from its own text showed.</summary>
/// <param name="Parts">Figures per part, in the design's order, for the parts that could be cut.</param>
/// <param name="Findings">Everything that must be said, in a stable order: programs in their order, then parts in theirs.</param>
/// <param name="Proofs">The cut wood and the maps, in the same order as <paramref name="Parts"/>.</param>
public sealed record ProofResult(ImmutableArray<PartResult> Parts, ImmutableArray<Finding> Findings, ImmutableArray<PartProof> Proofs)
{
    public bool Passes => Findings.All(f => f.Severity != Severity.Stops);
}

/// <summary>One part after all its set-ups.</summary>
/// <param name="Part">Its name.</param>
/// <param name="Field">The wood left.</param>
/// <param name="Front">Deviations seen from the front.</param>
/// <param name="Back">Deviations seen from the back.</param>
public sealed record PartProof(string Part, ColumnField Field, DeviationMap Front, DeviationMap Back);

/// <summary>How far the wood is from the part, column by column: positive where wood is left, negative where it is cut too deep, NaN where nothing is compared.</summary>
/// <param name="Grid">The columns, part frame.</param>
/// <param name="Values">mm, row-major as the grid.</param>
public sealed record DeviationMap(Grid Grid, float[] Values)
{
    public float At(int column, int row) => Values[row * Grid.Columns + column];
}

/// <summary>How far a proof has come.</summary>
/// <param name="Stage">What is being done, for people: <c>cutting body-front</c>.</param>
/// <param name="Fraction">Of the whole, 0 to 1.</param>
public readonly record struct ProofProgress(string Stage, double Fraction);
