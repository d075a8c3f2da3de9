using System.Collections.Immutable;
using Solidbody.Findings;

namespace Solidbody.Programs;

/// <summary>A figure taken on the cut result against the instrument file's figure, mm.</summary>
public sealed record MeasureResult(string Name, double Expected, double Measured, double Tolerance)
{
    public bool IsWithin => Math.Abs(Measured - Expected) <= Tolerance;
}

/// <summary>One part's proof figures.</summary>
public sealed record PartResult
{
    public required string Part { get; init; }
    /// <summary>Deepest cut into the part, mm ≥ 0, and where (part frame, in words).</summary>
    public required double DeepestGouge { get; init; }
    public required string DeepestGougeAt { get; init; }
    /// <summary>Most wood left on, mm ≥ 0, and where.</summary>
    public required double MostLeftover { get; init; }
    public required string MostLeftoverAt { get; init; }
    public ImmutableArray<MeasureResult> Measures { get; init; } = [];
}

/// <summary>The packet's index, written as <c>packet.json</c> (docs/packet.md): from it alone an outsider can cut the packet again.</summary>
public sealed record PacketIndex
{
    public required string Instrument { get; init; }
    public required string Shop { get; init; }
    /// <summary>Version of this tool, and of the index's format.</summary>
    public required string ToolVersion { get; init; }
    public int FormatVersion { get; init; } = 1;
    /// <summary>Files the packet was made from, beside it: name → SHA-256.</summary>
    public required ImmutableSortedDictionary<string, string> Sources { get; init; }
    public required ImmutableArray<SetUp> SetUps { get; init; }
    public ImmutableArray<PartResult> Parts { get; init; } = [];
    public ImmutableArray<Finding> Findings { get; init; } = [];
}
