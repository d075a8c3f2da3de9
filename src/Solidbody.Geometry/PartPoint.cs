namespace Solidbody.Geometry;

/// <summary>A point in a part's frame, mm: +X from nut to bridge, +Y to the treble side (right-handed), +Z out of the front.
/// X and Y are the instrument's own; Z = 0 is the part's datum face (glue plane of the neck, underside of the fretboard, front of the body).</summary>
public readonly record struct PartPoint(double X, double Y, double Z)
{
    public Point2 Plan => new(X, Y);
}
