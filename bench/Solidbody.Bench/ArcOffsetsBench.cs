using BenchmarkDotNet.Attributes;
using Solidbody.Geometry;
using Solidbody.Geometry.Arcs;

namespace Solidbody.Bench;

/// <summary>Forty nested inward offsets of an outline of 2,000 points with three islands, 1.9 mm apart: arcs that stay arcs against two polygon libraries.</summary>
[MemoryDiagnoser]
public class ArcOffsetsBench
{
    private const int Levels = 40;
    private const double Step = 1.9;
    /// <summary>Greatest distance of any point of an offset from where it should be, mm: fitting and offsets together for the arcs, chords for the libraries.</summary>
    private const double Allowed = 0.002;

    private Region outline = new(Shapes.Circle(new(0, 0), 1));
    private nint library;

    [GlobalSetup]
    public void Draw()
    {
        var points = Enumerable.Range(0, 2000).Select(i => 2 * Math.PI * i / 2000).Select(t =>
            new Point2((150 + 30 * Math.Cos(2 * t) + 12 * Math.Cos(3 * t)) * Math.Cos(t), (110 + 25 * Math.Cos(2 * t + 0.4) - 9 * Math.Sin(3 * t)) * Math.Sin(t)));
        var islands = new[] { new Point2(-80, 10), new Point2(0, -20), new Point2(85, 15) }.Select(at => Shapes.Circle(at, 12, 0.001).Clockwise);
        outline = new(islands.Prepend(Loop.Of(points).CounterClockwise));
        library = GeosLibrary.Polygon(outline);
        // Equal error is part of the comparison: the worst of every level, at many points, against the polygon itself.
        var worst = Nested().Max(level => level.Region.Loops.SelectMany(l => l.Segments).SelectMany(s => Enumerable.Range(0, 16).Select(i => s.At(i / 16.0)))
            .Max(p => Math.Abs(-outline.SignedDistance(p) - level.Depth)));
        Console.WriteLine($"// arcs: at most {worst:0.00000} mm off over {Levels} levels");
        if (worst > Allowed) throw new InvalidOperationException($"The arcs lie {worst} mm off, {Allowed} allowed.");
    }

    private IEnumerable<(ArcRegion Region, double Depth)> Nested()
    {
        ArcRegion[] level = [ArcFit.Of(outline, 0.95 * Allowed, 0.95 * Allowed)];
        for (var n = 1; n <= Levels; n++)
        {
            level = [.. level.SelectMany(r => ArcOffsets.Of(r, -Step))];
            foreach (var region in level) yield return (region, n * Step);
        }
    }

    [Benchmark(Baseline = true)]
    public int GeosDirect() => Enumerable.Range(1, Levels).Sum(n => GeosLibrary.Offset(library, -n * Step, Shapes.ChordsFor(n * Step, Math.PI / 2, Allowed)));

    [Benchmark]
    public int NetTopologySuiteDirect() => Enumerable.Range(1, Levels).Sum(n => Offsets.Of(outline, -n * Step, Allowed).Sum(r => r.Loops.Sum(l => l.Points.Length)));

    [Benchmark]
    public int ArcsNested() => Nested().Sum(level => level.Region.Loops.Sum(l => l.Segments.Length));

    [Benchmark]
    public int ArcsDirect()
    {
        var fitted = ArcFit.Of(outline, 0.95 * Allowed, 0.95 * Allowed);
        return Enumerable.Range(1, Levels).Sum(n => ArcOffsets.Of(fitted, -n * Step).Sum(r => r.Loops.Sum(l => l.Segments.Length)));
    }
}
