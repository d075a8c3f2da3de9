using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A straight line in the plan laid on a surface.</summary>
internal sealed class SurfaceLine
{
    private const double Reading = 0.5;
    /// <summary>Greatest distance in height between the surface and the chords, mm.</summary>
    private const double Chord = 0.002;

    private readonly Point2 from, along;
    private readonly List<(double X, double Z)> profile;

    public SurfaceLine(IHeight surface, Point2 a, Point2 b)
    {
        Length = a.DistanceTo(b);
        if (Length <= Tolerances.Geometry) throw new ArgumentException("A slot needs two ends apart.", nameof(b));
        (from, along) = (a, (b - a).Unit);
        var n = Math.Max(1, (int)Math.Ceiling(Length / Reading));
        profile = LineThinning.Of([.. Enumerable.Range(0, n + 1).Select(i => Length * i / n).Select(d => (d, surface.Z(from.X + d * along.X, from.Y + d * along.Y)))], Chord);
    }

    public double Length { get; }
    public Point2 Start => from;
    public double StartHeight => profile[0].Z;
    public double Highest => profile.Max(p => p.Z);

    /// <summary>Runs the tip along the line, the depth below the surface changing evenly.</summary>
    public void Run(PathBuilder path, double depthFrom, double depthTo, bool back)
    {
        foreach (var (x, z) in back ? profile.AsEnumerable().Reverse() : profile)
        {
            var gone = (back ? Length - x : x) / Length;
            path.Line(from + x * along, z - depthFrom - (depthTo - depthFrom) * gone);
        }
    }
}
