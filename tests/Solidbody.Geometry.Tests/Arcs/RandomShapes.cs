using Solidbody.Geometry.Arcs;

namespace Solidbody.Geometry.Tests.Arcs;

/// <summary>Regions of every kind an offset meets, drawn from a seed: waves, teeth, stars, rooms on a grid whose walls run into each other, rooms with islands; as polygons or with arcs fitted.</summary>
internal static class RandomShapes
{
    public static ArcRegion Of(int seed)
    {
        var random = new Random(seed);
        var region = (seed % 6) switch
        {
            0 => new Region(Wave(random)),
            1 => new Region(Star(random)),
            2 => OnGrid(random),
            3 => WithIslands(random),
            4 => new Region(Notched(random)),
            _ => Blobs(random),
        };
        // Polygons as they are: a fit of slivers could cross itself.
        return seed % 6 is 1 or 2 || seed % 12 > 8 ? new(region.Loops.Select(ArcLoop.Of)) : ArcFit.Of(region, 0.001, 0.001);
    }

    /// <summary>A distance that leaves something, most of the time; on a grid often one that makes walls meet exactly.</summary>
    public static double Distance(int seed, ArcRegion region)
    {
        var random = new Random(~seed);
        if (seed % 6 == 2 && random.Next(3) > 0) return random.Next(-6, 7) / 2.0;
        var deep = Math.Min(region.Bounds.Width, region.Bounds.Height) / 2;
        return (random.Next(4) > 0 ? -1 : 1) * deep * Math.Pow(random.NextDouble(), 2);
    }

    /// <summary>A wavy outline of some hundred points.</summary>
    public static Region Wavy(int seed) => new(Wave(new(seed)));

    private static double Size(Random r) => Math.Pow(10, 0.5 + 2 * r.NextDouble());

    private static Loop Wave(Random r)
    {
        var (n, size) = (r.Next(30, 900), Size(r));
        var waves = Enumerable.Range(2, 6).Select(k => (K: k, A: 0.5 * r.NextDouble() / k, Phase: 7 * r.NextDouble())).ToArray();
        return Loop.Of(Enumerable.Range(0, n).Select(i => 2 * Math.PI * i / n).Select(t => size * (1 + waves.Sum(w => w.A * Math.Cos(w.K * t + w.Phase))) * Point2.Polar(t)));
    }

    private static Loop Star(Random r)
    {
        var (n, size) = (r.Next(3, 40), Size(r));
        return Loop.Of(Enumerable.Range(0, n).Select(i => size * (0.1 + r.NextDouble()) * Point2.Polar(2 * Math.PI * i / n)));
    }

    private static Region OnGrid(Random r) =>
        Offsets.Union(Enumerable.Range(0, r.Next(1, 14)).Select(_ => new Region(Shapes.Rectangle(new(r.Next(0, 15), r.Next(0, 15)), 2 * r.Next(1, 7), 2 * r.Next(1, 7)))))[0];

    private static Region WithIslands(Random r)
    {
        var room = new Region(Shapes.Rectangle(new(0, 0), 100, 40 + 60 * r.NextDouble(), 15 * r.NextDouble()));
        for (var i = r.Next(1, 6); i > 0; i--)
        {
            var at = new Point2(80 * r.NextDouble() - 40, 40 * r.NextDouble() - 20);
            var island = r.Next(2) == 0 ? Shapes.Circle(at, 1 + 8 * r.NextDouble(), 0.001) : Shapes.Rectangle(at, 20 * r.NextDouble() + 1, 8 * r.NextDouble() + 1, 3 * r.NextDouble(), 7 * r.NextDouble(), 0.001);
            room = Offsets.Difference(room, new(island))[0];
        }
        return room;
    }

    private static Loop Notched(Random r)
    {
        var points = new List<Point2>();
        double x = 0, depth = 10 + 40 * r.NextDouble();
        for (var i = r.Next(2, 8); i > 0; i--)
        {
            var (width, notch) = (1 + 9 * r.NextDouble(), 0.2 + 5 * r.NextDouble());
            points.AddRange([new(x, 0), new(x + width, 0), new(x + width, depth * r.NextDouble()), new(x + width + notch, depth * r.NextDouble())]);
            x += width + notch;
        }
        return Loop.Of([.. points, new(x, 0), new(x + 5, 0), new(x + 5, depth + 3), new(0, depth + 3)]);
    }

    private static Region Blobs(Random r) =>
        Offsets.Union(Enumerable.Range(0, r.Next(2, 9)).Select(_ =>
        {
            var at = new Point2(60 * r.NextDouble(), 60 * r.NextDouble());
            return new Region(r.Next(2) == 0 ? Shapes.Circle(at, 2 + 14 * r.NextDouble(), 0.001) : Shapes.Capsule(at, at + 30 * r.NextDouble() * Point2.Polar(7 * r.NextDouble()), 0.5 + 8 * r.NextDouble(), 0.001));
        }))[0];
}
