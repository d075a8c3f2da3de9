using BenchmarkDotNet.Attributes;
using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Bench;

/// <summary>Where a cutter rests along lines over a neck's back: the pruned kernel, and the plain loop over every cell under the cutter.</summary>
/// <remarks>Both look at the same samples, so times compare as they stand. <c>grey_dilation.py</c> cuts the same field by an array library.</remarks>
[MemoryDiagnoser]
public class LineKernelBench
{
    /// <summary>A neck's back of 520 × 60 mm in cells of 0.1 mm, and some of its lines, from the crown to near the edges.</summary>
    private const int Columns = 5200, Rows = 600, Lines = 5, Apart = 80;
    private const float Cell = 0.1f;

    private readonly float[] field = new float[Columns * Rows];
    private readonly float[] tips = new float[Columns];
    private CutterStamp stamp = new(default, 1, 0, 0);
    private HeightPyramid pyramid = new(new float[1], 1, 1);

    [Params(CutterKind.BallEnd, CutterKind.TaperedBallEnd)]
    public CutterKind Kind { get; set; }

    /// <summary>Height over a plane, mm, of a back that widens from 42 to 56 mm and thickens from 20 to 23; −∞ beside it. The script holds the same formula.</summary>
    internal static float Back(int column, int row)
    {
        var (x, y) = (Cell * column, Cell * (row - Rows / 2));
        var (half, deep) = (21 + 7 * x / 520, 20 + 3 * x / 520);
        return MathF.Abs(y) > half ? float.NegativeInfinity : deep * MathF.Sqrt(1 - 0.9f * y * y / (half * half));
    }

    [GlobalSetup]
    public void MakeField()
    {
        for (var i = 0; i < field.Length; i++) field[i] = Back(i % Columns, i / Columns);
        var tapered = Kind == CutterKind.TaperedBallEnd;
        var cutter = new Cutter
        {
            Name = "bench",
            Kind = Kind,
            Diameter = tapered ? 6.35 : 12.7,
            FluteLength = 40,
            OverallLength = 80,
            ShankDiameter = 12.7,
            Flutes = 2,
            StickOut = 50,
            TipRadius = tapered ? 0.8 : 0,
            Angle = tapered ? 5.4 * Math.PI / 180 : 0,
        };
        stamp = new(CutterForm.Of(cutter), Cell, 0, 0);
        pyramid = new(field, Columns, stamp.Reach);
    }

    [Benchmark(Baseline = true)]
    public float Plainly()
    {
        for (var line = 0; line < Lines; line++) LineKernel.RestPlainly(field, Columns, stamp, Rows / 2 + (line - Lines / 2) * Apart, 0, tips);
        return tips[^1];
    }

    [Benchmark]
    public float Pruned()
    {
        for (var line = 0; line < Lines; line++) LineKernel.Rest(pyramid, stamp, Rows / 2 + (line - Lines / 2) * Apart, 0, tips);
        return tips[^1];
    }
}
