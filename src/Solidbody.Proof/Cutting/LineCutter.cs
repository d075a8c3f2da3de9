using Solidbody.Geometry;

namespace Solidbody.Proof.Cutting;

/// <summary>Cuts a single row of columns along any line of the plan: the path is turned instead of the row.</summary>
internal static class LineCutter
{
    /// <param name="row">One row, its x measured along the line from the origin, its y 0.</param>
    /// <param name="program">What cuts it.</param>
    /// <param name="origin">Part frame.</param>
    /// <param name="along">Unit vector, part frame.</param>
    public static void Cut(ColumnField row, CutProgram program, Point2 origin, Point2 along)
    {
        var lowering = new Lowering(row.Surface(program.Up));
        var (low, high) = (row.Grid.X0 - program.Profile.Radius, row.Grid.X(row.Grid.Columns) + program.Profile.Radius);
        foreach (ref readonly var m in program.Segments.AsSpan())
        {
            var a = new Point2(m.X0, m.Y0) - origin;
            var b = new Point2(m.X1, m.Y1) - origin;
            var (across0, across1) = (along.Cross(a), along.Cross(b));
            if (Math.Min(across0, across1) > program.Profile.Radius || Math.Max(across0, across1) < -program.Profile.Radius) continue;
            var (along0, along1) = (along.Dot(a), along.Dot(b));
            if (Math.Min(along0, along1) > high || Math.Max(along0, along1) < low) continue;
            var turned = m with { X0 = along0, Y0 = across0, X1 = along1, Y1 = across1 };
            SweepKernel.Sweep(turned, program.Profile, 0, row.Grid, row.Stride, 0, 1, ref lowering);
        }
    }
}
