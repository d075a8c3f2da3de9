using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Programs;

/// <summary>What a program's text says, word by word obeyed.</summary>
public sealed record ReadProgram
{
    public required string FileName { get; init; }
    /// <summary>Where the tip is first known to be; null when the program never travels.</summary>
    public required ProgramStart? Start { get; init; }
    /// <summary>
    /// Every move after <see cref="Start"/>, both ends known: the first begins at <see cref="ProgramStart.At"/>, each at the end of the one
    /// before it. With line numbers, feeds in mm/s and the spindle's turns a second. Moves that go nowhere are left out.
    /// </summary>
    public required ImmutableArray<Motion> Motions { get; init; }
    /// <summary>The room the tip moves in from <see cref="Start"/> on, work frame, mm; null when nothing moves.</summary>
    public Box3? Bounds => Motions.IsEmpty ? null : MotionBounds.Of(Motions);
    /// <summary>The tool the changer was told to fetch; null without a changer.</summary>
    public required int? Tool { get; init; }
    /// <summary>Comments in order, without their brackets.</summary>
    public required ImmutableArray<string> Comments { get; init; }
    /// <summary>Lines of the text.</summary>
    public required int Lines { get; init; }
}

/// <summary>
/// How a program finds its way from wherever the machine stands. Nobody knows that place, so its two kinds of move there are not
/// <see cref="Motion"/>s: straight rises (X and Y unknown), then one travel in the plan (its beginning unknown) to <see cref="At"/>.
/// </summary>
/// <param name="LowestRise">The lowest height any of the rises ends at, work Z, mm. Safe only when it is the clearance height or above.</param>
/// <param name="RiseLine">Line of that rise.</param>
/// <param name="At">Where the travel ends: from here on the tip's place is known.</param>
/// <param name="TravelLine">Line of the travel.</param>
public sealed record ProgramStart(double LowestRise, int RiseLine, WorkPoint At, int TravelLine);
