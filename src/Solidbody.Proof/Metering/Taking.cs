using System.Numerics;
using System.Runtime.CompilerServices;
using Solidbody.Geometry;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Metering;

/// <summary>Lowers columns to what the cutter leaves, and notes what that took: how much, how deep, and under which arc of the cutter's front.</summary>
/// <param name="field">The wood.</param>
/// <param name="up">The surface that is cut.</param>
/// <param name="step">The straight piece.</param>
/// <param name="radius">Of the cutter, mm.</param>
/// <param name="arc">Gets the arc's parts that met wood.</param>
internal struct Taking(ColumnField field, Side up, in CutSegment step, double radius, ContactArc arc) : IColumnWork
{
    /// <summary>A bite counts towards the arc from this depth on, mm: skins that a rough level left are not what loads a cutter's side.</summary>
    private const float Bite = 0.05f;

    private readonly float[] heights = field.Surface(up);
    private readonly float[] underside = field.Surface(up == Side.Front ? Side.Back : Side.Front);
    private readonly Grid grid = field.Grid;
    private readonly int stride = field.Stride;
    private readonly double x0 = step.X0, y0 = step.Y0;
    private readonly (double X, double Y) along = step.PlanLength < CutSegment.PlungeLength ? (0, 0) : ((step.X1 - step.X0) / step.PlanLength, (step.Y1 - step.Y0) / step.PlanLength);

    /// <summary>Sum of what the columns lost, mm.</summary>
    public double Sum { get; private set; } = 0;
    /// <summary>Most that one of them lost, mm.</summary>
    public float Deepest { get; private set; } = 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Do(int first, Vector<float> swept)
    {
        ref var at = ref heights[first];
        var before = Vector.LoadUnsafe(ref at);
        var after = Vector.Min(before, swept);
        after.StoreUnsafe(ref at);
        // A column's wood ends at its other face: an empty one gives a negative loss by itself.
        var lost = before - Vector.Max(after, -Vector.LoadUnsafe(ref underside[first]));
        if (Vector.GreaterThanAny(lost, Vector<float>.Zero)) Note(first, lost);
    }

    private void Note(int first, Vector<float> lost)
    {
        for (var i = 0; i < Vector<float>.Count; i++)
        {
            if (!(lost[i] > 0)) continue;
            Sum += lost[i];
            Deepest = Math.Max(Deepest, lost[i]);
            if (lost[i] > Bite && along != (0, 0)) NoteContact(first + i);
        }
    }

    /// <summary>Where the circumference met a column on the way. Those under the cutter where the step begins it did not meet: they were there when it came down.</summary>
    private readonly void NoteContact(int index)
    {
        var (dx, dy) = (grid.X(index % stride) - x0, grid.Y(index / stride) - y0);
        if (dx * dx + dy * dy < radius * radius) return;
        // A whole column to either side: the strip's true edge lies that far beyond the last column's middle at most.
        arc.Meets(dy * along.X - dx * along.Y, grid.Cell * (Math.Abs(along.X) + Math.Abs(along.Y)), radius);
    }
}
