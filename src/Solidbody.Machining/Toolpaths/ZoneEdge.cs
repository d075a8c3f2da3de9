using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>The surface along a zone's edges, in close points: what carries a cutter that has run up to the edge.</summary>
internal sealed class ZoneEdge
{
    /// <summary>Distance between points, mm: a ball of 0.8 mm radius between two of them sinks 0.025²/1.6 = 0.0004 mm.</summary>
    private const double Spacing = 0.05;

    private readonly (Point2 P, double Z)[][] buckets;
    private readonly Box2 bounds;
    private readonly double side;
    private readonly int columns, rows;
    private readonly Cutter cutter;

    public ZoneEdge(IHeight surface, Region zone, Cutter cutter)
    {
        this.cutter = cutter;
        bounds = zone.Bounds;
        side = cutter.Radius;
        columns = (int)(bounds.Width / side) + 1;
        rows = (int)(bounds.Height / side) + 1;
        var lists = new List<(Point2, double)>?[columns * rows];
        foreach (var loop in zone.Loops)
            for (var i = 0; i < loop.Points.Length; i++)
            {
                var (a, b) = (loop.Points[i], loop.Points[(i + 1) % loop.Points.Length]);
                var n = Math.Max(1, (int)Math.Ceiling(a.DistanceTo(b) / Spacing));
                for (var k = 0; k < n; k++)
                {
                    var p = a + (double)k / n * (b - a);
                    (lists[Row(p.Y) * columns + Column(p.X)] ??= []).Add((p, surface.Z(p.X, p.Y)));
                }
            }
        buckets = [.. lists.Select(l => l?.ToArray() ?? [])];
    }

    /// <summary>Tip height at which the cutter at (x, y) rests on the edge; −∞ out of its reach.</summary>
    public double Rest(double x, double y)
    {
        var best = double.NegativeInfinity;
        for (var r = Row(y - side); r <= Row(y + side); r++)
            for (var c = Column(x - side); c <= Column(x + side); c++)
                foreach (var (p, z) in buckets[r * columns + c])
                {
                    var away = p.DistanceTo(new(x, y));
                    if (away <= cutter.Radius) best = Math.Max(best, z - cutter.Height(away));
                }
        return best;
    }

    private int Column(double x) => Math.Clamp((int)((x - bounds.X0) / side), 0, columns - 1);
    private int Row(double y) => Math.Clamp((int)((y - bounds.Y0) / side), 0, rows - 1);
}
