using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Programs;

namespace Solidbody.Packet.Sheets;

/// <summary>What one set-up sheet says.</summary>
public sealed record SheetInput
{
    public required SetUp SetUp { get; init; }
    /// <summary>The finished part that comes out of this blank.</summary>
    public required Part Part { get; init; }
    /// <summary>The instrument's and the shop's names.</summary>
    public required string Instrument { get; init; }
    public required string Shop { get; init; }
    /// <summary>How many set-ups the packet has; <see cref="SetUp.Order"/> counts to it.</summary>
    public required int SetUps { get; init; }
    /// <summary>Faces of this blank that earlier set-ups have cut.</summary>
    public ImmutableArray<Side> FacesCut { get; init; } = [];
    /// <summary>Whether no later set-up cuts this blank: it comes out as the finished part.</summary>
    public bool IsLastOfBlank { get; init; } = true;
    /// <summary>Whether the instrument is mirrored for the left hand.</summary>
    public bool LeftHanded { get; init; }
    /// <summary>Titles of the set-ups before and after this one; null at the ends.</summary>
    public string? Previous { get; init; }
    public string? Next { get; init; }
    /// <summary>Page of the packet this sheet is, and of how many.</summary>
    public required int Sheet { get; init; }
    public required int Sheets { get; init; }
    /// <summary>The proof's verdict and the programs' content hash, in words: <c>proved, b2 9e 55</c>.</summary>
    public required string Proof { get; init; }
    /// <summary>Which change of the instrument file this is.</summary>
    public string Change { get; init; } = "1";
    /// <summary>Findings the person overrode, each with its reason.</summary>
    public ImmutableArray<Finding> Overridden { get; init; } = [];
}
