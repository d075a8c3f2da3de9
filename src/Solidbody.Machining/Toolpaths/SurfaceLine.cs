using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A straight line in the plan laid on a surface.</summary>
internal sealed class SurfaceLine
{
    private const double Reading = 0.5;
    /// <summary>Greatest distance in height between the surface and the chords, mm.</summary>
    private const double Chord = 0.002;

    private readonly IHeight surface;
    private readonly Point2 start, along;
    private readonly List<(double X, double Z)> profile;

    public SurfaceLine(IHeight surface, Point2 a, Point2 b)
    {
        Length = a.DistanceTo(b);
        if (Length <= Tolerances.Geometry) throw new ArgumentException("A slot needs two ends apart.", nameof(b));
        (this.surface, start, along) = (surface, a, (b - a).Unit);
        var n = Math.Max(1, (int)Math.Ceiling(Length / Reading));
        profile = LineThinning.Of([.. Enumerable.Range(0, n + 1).Select(i => Length * i / n).Select(d => (d, surface.Z(start.X + d * along.X, start.Y + d * along.Y)))], Chord);
    }

    public double Length { get; }
    public Point2 Start => start;
    public double StartHeight => profile[0].Z;
    public double Highest => profile.Max(p => p.Z);

    /// <summary>Runs the tip along the line from one station to another, the depth below the surface changing evenly.</summary>
    public void Run(PathBuilder path, double from, double to, double depthFrom, double depthTo)
    {
        var back = to < from;
        foreach (var (x, z) in back ? profile.AsEnumerable().Reverse() : profile)
            if (back ? x < from && x > to : x > from && x < to) Go(x, z);
        var end = start + to * along;
        Go(to, surface.Z(end.X, end.Y));

        void Go(double x, double z) => path.Line(start + x * along, z - depthFrom - (depthTo - depthFrom) * (x - from) / (to - from));
    }
}
