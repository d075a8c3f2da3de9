using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Proof.Cutting;

/// <summary>One program of a set-up, ready to be cut: its text's motions and the straight pieces they become.</summary>
internal sealed record CutProgram(SetUp SetUp, ProgramEntry Entry, ProgramStart? Start, int? Tool, ImmutableArray<Motion> Motions, CutterProfile Profile, CutSegment[] Segments)
{
    public Side Up => SetUp.Placement.Up;

    /// <summary>Height of the uncut blank's face that lies up, as its surface sees it.</summary>
    public double WoodTop => WoodTopOf(SetUp);

    /// <summary>The same height in the work frame.</summary>
    public double WorkTop => WoodTop + SetUp.Placement.Origin.Z;

    public static CutProgram Of(SetUp setUp, ProgramEntry entry, ReadProgram read)
    {
        var profile = CutterProfile.Of(entry.Cutter);
        return new(setUp, entry, read.Start, read.Tool, read.Motions, profile, CutPath.Of(read.Motions, setUp.Placement, profile, WoodTopOf(setUp)));
    }

    private static double WoodTopOf(SetUp setUp) => setUp.Placement.Up == Side.Front ? setUp.Blank.Z1 : -setUp.Blank.Z0;

    /// <summary>Height this program leaves over a point, as its surface sees it, and the line that does it first; +∞ where it does not pass.</summary>
    public (double Height, int Line) At(Point2 p)
    {
        var (height, line) = (double.PositiveInfinity, 0);
        foreach (ref readonly var segment in Segments.AsSpan())
        {
            var left = SweptHeight.At(segment, Profile, p.X, p.Y);
            if (left < height) (height, line) = (left, segment.Line);
        }
        return (height, line);
    }
}
