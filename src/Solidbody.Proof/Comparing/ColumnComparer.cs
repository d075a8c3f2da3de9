using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Proof.Comparing;

/// <summary>Compares one column of cut wood with the part. A face's deviation is first the difference along z; where that is more than
/// <see cref="Plain"/>, the true distance, which an upright wall does not inflate.</summary>
internal sealed class ColumnComparer(PartShape shape, TabAllowance tabs)
{
    /// <summary>Differences along z up to this, mm, stand for themselves: they can only over-state.</summary>
    public const double Plain = 0.02;

    private readonly IdealSolid ideal = new(shape);

    /// <param name="p">Plan.</param>
    /// <param name="design">The part there.</param>
    /// <param name="bottom">Lower face of the wood, part frame.</param>
    /// <param name="top">Upper face of the wood; nothing is left when it is not above the lower.</param>
    /// <param name="exact">False for bounds: never too small, quickly had, and near on smooth faces.</param>
    public CellDeviation Compare(Point2 p, in DesignColumn design, double bottom, double top, bool exact)
    {
        var wood = top > bottom;
        if (design.IsEmpty) return wood ? OutsideThePart(p, bottom, top, exact) : CellDeviation.None;
        var front = wood && top > design.Top
            ? Left(p, Math.Max(bottom, design.Top), top, top, top - design.Top, exact)
            : -Taken(p, Math.Max(top, design.BottomDeepest), design.TopDeepest, top, exact);
        var back = wood && bottom < design.Bottom
            ? Left(p, bottom, Math.Min(top, design.Bottom), bottom, design.Bottom - bottom, exact)
            : -Taken(p, design.BottomDeepest, Math.Min(bottom, design.TopDeepest), bottom, exact);
        return new(front, back);
    }

    /// <summary>How deep the wood taken between two heights lies inside the part.</summary>
    /// <param name="face">Height of the face as cut: the deepest point of the cut, unless it went right through.</param>
    private double Taken(Point2 p, double low, double high, double face, bool exact)
    {
        var taken = high - low;
        if (!(taken > 0)) return 0;
        if (taken <= Plain) return taken;
        var middle = ideal.DepthInside(p, (low + high) / 2, taken, exact);
        return face >= low && face <= high ? Math.Max(middle, ideal.DepthInside(p, face, taken, exact)) : middle;
    }

    /// <summary>How far the wood left between two heights reaches out of the part.</summary>
    private double Left(Point2 p, double low, double high, double face, double most, bool exact) => most <= Plain
        ? most
        : Math.Max(ideal.DistanceTo(p, face, most, exact), ideal.DistanceTo(p, (low + high) / 2, most, exact));

    private CellDeviation OutsideThePart(Point2 p, double bottom, double top, bool exact)
    {
        var outside = shape.Part.Outline.SignedDistance(p, ProofLimits.OutlineBand);
        if (outside >= ProofLimits.OutlineBand || (outside > 0 && tabs.Covers(p, bottom, top))) return CellDeviation.None;
        // Beside the outline, and in a room that goes through, wood of any height is left over by its distance from the part.
        var left = outside > 0 ? outside : ideal.DistanceTo(p, (bottom + top) / 2, IdealSolid.Farthest, exact);
        return new(left, left);
    }
}
