using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Machining.Planning;

/// <summary>A part as it lies on the bed, before the turn and shift in the plan: the one place where turning over happens to its geometry.</summary>
/// <remarks>Front up: (x, y, z) → (x, y, z + lift). Back up, half a turn about the centre line: (x, y, z) → (x, −y, −z + lift). Lift puts the blank's lower face on Z = 0.</remarks>
public sealed class LaidPart(Part part, Side up, Box3 blank)
{
    public Part Part { get; } = part;
    public Side Up { get; } = up;
    public Box3 Blank { get; } = blank;
    /// <summary>Z of the part's datum, laid frame.</summary>
    public double Lift { get; } = up == Side.Front ? -blank.Z0 : blank.Z1;
    /// <summary>Upper face of the blank, laid frame.</summary>
    public double Top => Blank.Thickness;
    public FaceFinish Finish => Up == Side.Front ? Part.FrontFinish : Part.BackFinish;
    /// <summary>The face that lies up, laid frame.</summary>
    public IHeight Face => Height(Up == Side.Front ? Part.Front : Part.Back);
    public Region Outline { get; } = up == Side.Back ? part.Outline.Mirrored : part.Outline;

    private bool Over => Up == Side.Back;

    public double Z(double z) => Over ? Lift - z : Lift + z;
    public double PartZ(double laid) => Over ? Lift - laid : laid - Lift;
    public Point2 Point(Point2 p) => Over ? new(p.X, -p.Y) : p;
    public Region Region(Region region) => Over ? region.Mirrored : region;
    public IHeight Height(IHeight height) => new Laid(height, this);
    public SlopedHeight Sloped(SlopedHeight plane) => new(Z(plane.At), plane.X, Over ? -plane.Slope : plane.Slope);
    /// <summary>A path with wood on its left, with wood still on its left.</summary>
    public ImmutableArray<Point2> Path(ImmutableArray<Point2> path) => Over ? [.. path.Select(Point).Reverse()] : path;
    /// <summary>Part frame → work frame, for a turn in the plan that puts the given mark at X0 Y0.</summary>
    public Placement Place(double turn, Point2 mark)
    {
        var at = Point(mark).Turned(turn);
        return new(Up, turn, new(-at.X, -at.Y, Lift));
    }

    private sealed class Laid(IHeight height, LaidPart laid) : IHeight
    {
        public double Z(double x, double y)
        {
            var p = laid.Point(new(x, y));
            return laid.Z(height.Z(p.X, p.Y));
        }
    }
}
