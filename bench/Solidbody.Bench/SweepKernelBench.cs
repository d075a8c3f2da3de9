using BenchmarkDotNet.Attributes;
using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Proof.Cutting;

namespace Solidbody.Bench;

/// <summary>The sweep against a plain loop over every move's bounding box, on passes across a neck: one run shows the ratio.</summary>
[MemoryDiagnoser]
public class SweepKernelBench
{
    private static readonly Grid Field = new(0, -40, 0.15, 400, 533);
    private static readonly int Stride = Field.Columns + 31;

    private CutterProfile profile;
    private CutSegment[] segments = [];
    private float[] heights = [];

    [Params(CutterKind.BallEnd, CutterKind.UpSpiral, CutterKind.TaperedBallEnd)]
    public CutterKind Kind { get; set; }

    /// <summary>Passes across a rounded back, 1 mm apart, in moves of half a millimetre.</summary>
    [GlobalSetup]
    public void MakeMoves()
    {
        var tapered = Kind == CutterKind.TaperedBallEnd;
        profile = CutterProfile.Of(new Cutter
        {
            Name = "bench",
            Kind = Kind,
            Diameter = tapered ? 6 : 12,
            FluteLength = 40,
            OverallLength = 80,
            ShankDiameter = 12,
            Flutes = 2,
            StickOut = 50,
            TipRadius = tapered ? 0.8 : 0,
            Angle = tapered ? 0.1 : 0,
        });
        var points = Enumerable.Range(0, 40).SelectMany(pass => Enumerable.Range(-60, 121).Select(i =>
        {
            var y = (pass % 2 == 0 ? i : -i) * 0.5;
            return new WorkPoint(10 + pass, y, Kind == CutterKind.UpSpiral ? -5 : -5 - y * y / 150);
        })).ToArray();
        var motions = points.Zip(points.Skip(1), (a, b) => new Motion(MotionKind.Line, a, b, default, 10));
        segments = CutPath.Of([.. motions], new Placement(Side.Front, 0, new(0, 0, 0)), profile, 1e9);
        heights = new float[Stride * Field.Rows];
    }

    [Benchmark(Baseline = true)]
    public void BoundingBoxes()
    {
        foreach (ref readonly var m in segments.AsSpan())
        {
            var (column0, column1) = Cells(Math.Min(m.X0, m.X1), Math.Max(m.X0, m.X1), Field.X0, Field.Columns);
            var (row0, row1) = Cells(Math.Min(m.Y0, m.Y1), Math.Max(m.Y0, m.Y1), Field.Y0, Field.Rows);
            for (var row = row0; row <= row1; row++)
                for (var column = column0; column <= column1; column++)
                {
                    ref var height = ref heights[row * Stride + column];
                    height = Math.Min(height, (float)SweptHeight.At(m, profile, Field.X(column), Field.Y(row)));
                }
        }
    }

    [Benchmark]
    public void Swath()
    {
        var lowering = new Lowering(heights);
        foreach (ref readonly var m in segments.AsSpan())
            SweepKernel.Sweep(m, profile, 0, Field, Stride, 0, Field.Rows, ref lowering);
    }

    private (int First, int Last) Cells(double low, double high, double origin, int count) =>
        (Math.Max(0, (int)((low - profile.Radius - origin) / Field.Cell)), Math.Min(count - 1, (int)((high + profile.Radius - origin) / Field.Cell) + 1));
}
