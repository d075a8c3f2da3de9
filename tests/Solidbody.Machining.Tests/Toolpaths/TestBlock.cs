using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Toolpaths;

/// <summary>A block of wood as columns, cut by standing the cutter at close points of every motion: plain, slow, and independent of the path code.</summary>
internal sealed class TestBlock
{
    /// <summary>Columns this near to the cutter's rim are in or out by rounding and chords: no bite is read there, mm.</summary>
    private const double Rim = 0.02;

    private readonly double[] heights;

    public TestBlock(Box2 box, double cell, double top)
    {
        Grid = Grid.Over(box, cell);
        heights = new double[Grid.Count];
        Array.Fill(heights, top);
    }

    /// <summary>A block whose face is given.</summary>
    public TestBlock(Box2 box, double cell, Func<Point2, double> top) : this(box, cell, 0)
    {
        for (var i = 0; i < heights.Length; i++) heights[i] = top(At(i));
    }

    public Grid Grid { get; }
    public double this[int i] => heights[i];
    public Point2 At(int i) => Grid.Centre(i % Grid.Columns, i / Grid.Columns);
    /// <summary>Deepest wood a rapid met, mm.</summary>
    public double RapidBite { get; private set; }
    /// <summary>Deepest wood a straight descent at feed met, mm.</summary>
    public double PlungeBite { get; private set; }
    /// <summary>Most that one motion at feed took off a column, mm.</summary>
    public double Bite { get; private set; }

    /// <summary>Lowers the block to a face, without a cutter.</summary>
    public TestBlock Carve(Func<Point2, double> face)
    {
        for (var i = 0; i < heights.Length; i++) heights[i] = Math.Min(heights[i], face(At(i)));
        return this;
    }

    public TestBlock Cut(ImmutableArray<Motion> motions, Cutter cutter)
    {
        foreach (var m in motions)
        {
            var n = Math.Max(1, (int)Math.Ceiling(m.Length / (Grid.Cell / 2)));
            var straightDown = m.Kind == MotionKind.Line && m.From.Plan.DistanceTo(m.To.Plan) < 1e-6 && m.To.Z < m.From.Z;
            var motionBite = 0.0;
            for (var i = 0; i <= n; i++) motionBite = Math.Max(motionBite, Stand(Along(m, (double)i / n), cutter));
            if (m.Kind == MotionKind.Rapid) RapidBite = Math.Max(RapidBite, motionBite);
            else if (straightDown) PlungeBite = Math.Max(PlungeBite, motionBite);
            else Bite = Math.Max(Bite, motionBite);
        }
        return this;
    }

    public static WorkPoint Along(Motion m, double t)
    {
        var z = m.From.Z + t * (m.To.Z - m.From.Z);
        var p = m.IsArc ? m.Centre + (m.From.Plan - m.Centre).Turned(t * m.Sweep) : m.From.Plan + t * (m.To.Plan - m.From.Plan);
        return new(p.X, p.Y, z);
    }

    private double Stand(WorkPoint tip, Cutter cutter)
    {
        var bite = 0.0;
        var (c0, c1) = ((int)Math.Floor((tip.X - cutter.Radius - Grid.X0) / Grid.Cell), (int)Math.Ceiling((tip.X + cutter.Radius - Grid.X0) / Grid.Cell));
        var (r0, r1) = ((int)Math.Floor((tip.Y - cutter.Radius - Grid.Y0) / Grid.Cell), (int)Math.Ceiling((tip.Y + cutter.Radius - Grid.Y0) / Grid.Cell));
        for (var r = Math.Max(0, r0); r < Math.Min(Grid.Rows, r1); r++)
            for (var c = Math.Max(0, c0); c < Math.Min(Grid.Columns, c1); c++)
            {
                var away = Grid.Centre(c, r).DistanceTo(tip.Plan);
                var z = tip.Z + cutter.Height(away);
                var i = r * Grid.Columns + c;
                if (!(z < heights[i])) continue;
                if (away < cutter.Radius - Rim) bite = Math.Max(bite, heights[i] - z);
                heights[i] = z;
            }
        return bite;
    }
}
