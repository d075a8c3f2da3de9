using Solidbody.Geometry;

namespace Solidbody.Instrument;

/// <summary>The wood over one point of a finished part, part frame, mm.</summary>
/// <param name="Bottom">Lower face: wood below it is left over.</param>
/// <param name="Top">Upper face: wood above it is left over.</param>
/// <param name="BottomDeepest">Highest a cut from below may reach (above Bottom only under a drill's cone).</param>
/// <param name="TopDeepest">Lowest a cut from above may reach (below Top only under a drill's cone).</param>
public readonly record struct DesignColumn(double Bottom, double Top, double BottomDeepest, double TopDeepest)
{
    /// <summary>Outside the outline, or in a room that goes through.</summary>
    public static DesignColumn Empty => new(double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity);
    public bool IsEmpty => !(Top > Bottom);
}

/// <summary>Evaluates a part exactly, anywhere: the one place where faces, rooms, holes, slots and edges become wood or air.</summary>
public sealed class PartShape(Part part)
{
    public Part Part { get; } = part;

    /// <summary>The wood over one point; exact up to the flattening of the part's regions.</summary>
    public DesignColumn At(Point2 p) => throw new NotImplementedException();

    /// <summary>The wood over every cell of a grid: the same numbers as <see cref="At"/>, row by row and much faster.</summary>
    public void Sample(Grid grid, Span<DesignColumn> columns) => throw new NotImplementedException();
}
