using Solidbody.Geometry.Arcs;

namespace Solidbody.Geometry.Tests.Arcs;

public class ArcOffsetsTests
{
    /// <summary>What the offset promises of its distance, mm; measured here: 1e-5.</summary>
    private const double Exact = 1e-4;

    private static ArcRegion Polygon(params Point2[] points) => new([ArcLoop.Of(Loop.Of(points))]);
    private static readonly ArcRegion Square = new([ArcLoop.Of(Shapes.Rectangle(new(3, 4), 80, 50))]);
    private static readonly ArcRegion Ring = new([ArcLoop.Circle(new(3, 4), 30), ArcLoop.Circle(new(3, 4), 10).Reversed]);
    /// <summary>A stadium 80 long and 40 wide, of true arcs.</summary>
    private static readonly ArcRegion Stadium = new([new([
        Segment.Line(new(-20, -20), new(20, -20)), Segment.Arc(new(20, -20), new(20, 20), Math.PI), Segment.Line(new(20, 20), new(-20, 20)), Segment.Arc(new(-20, 20), new(-20, -20), Math.PI)])]);
    private static readonly ArcRegion Ell = Polygon(new(0, 0), new(60, 0), new(60, 30), new(30, 30), new(30, 60), new(0, 60));
    /// <summary>Two rooms of 20 by 20 with a slot of 4 between them.</summary>
    private static readonly ArcRegion Slotted = Polygon(
        new(0, 0), new(20, 0), new(20, 8), new(30, 8), new(30, 0), new(50, 0), new(50, 20), new(30, 20), new(30, 12), new(20, 12), new(20, 20), new(0, 20));

    public static TheoryData<string, ArcRegion, double, int, double> ClosedForms => new()
    {
        // What, region, distance, regions left, area of all of them: elementary geometry.
        { "rectangle, Steiner: A + P d + π d²", Square, 6, 1, 80 * 50 + 260 * 6 + Math.PI * 36 },
        { "rectangle, inward", Square, -6, 1, 68 * 38 },
        { "rectangle, to nothing", Square, -25, 0, 0 },
        { "ring, both edges closer", Ring, -3, 1, Math.PI * (27 * 27 - 13 * 13) },
        { "ring, both edges apart", Ring, 3, 1, Math.PI * (33 * 33 - 7 * 7) },
        { "ring, its hole filled", Ring, 10, 1, Math.PI * 40 * 40 },
        { "ring, to nothing", Ring, -10, 0, 0 },
        { "stadium, grown: arcs of 27", Stadium, 7, 1, 40 * 54 + Math.PI * 27 * 27 },
        { "stadium, shrunk: arcs of 1", Stadium, -19, 1, 40 * 2 + Math.PI },
        { "stadium, to nothing", Stadium, -20, 0, 0 },
        // Length at depth t: P − 2t for each of five corners + π t / 2 about the inner one; area its integral.
        { "L, inward", Ell, -8, 1, 2700 - 240 * 8 + 5 * 64 - Math.PI / 4 * 64 },
        { "L, outward: one inner corner, five arcs", Ell, 8, 1, 2700 + 240 * 8 + 5 * Math.PI / 4 * 64 - 64 },
        // Each room 16 by 16 and, before the slot's mouth, 2 by 4 less two quarter discs of radius 2.
        { "slot exactly twice the distance", Slotted, -2, 2, 2 * (256 + 8 - 2 * Math.PI) },
        { "slot a little wider", Slotted, -1.5, 1, 2 * 17 * 17 + 10 * 1 + 2 * (1.5 * 4 - Math.PI / 2 * 1.5 * 1.5) },
    };

    [Theory, MemberData(nameof(ClosedForms))]
    public void An_offset_has_its_closed_form_area(string what, ArcRegion region, double distance, int regions, double area)
    {
        var left = ArcOffsets.Of(region, distance);
        Assert.True(left.Length == regions, what);
        Assert.Equal(area, left.Sum(r => r.Area), 8);
    }

    [Fact]
    public void Arcs_stay_arcs_and_their_number_stays()
    {
        var grown = Assert.Single(Assert.Single(ArcOffsets.Of(Stadium, 7)).Loops);
        Assert.Equal(4, grown.Segments.Length);
        Assert.All(grown.Segments.Where(s => s.IsArc), s => Assert.Equal(27, s.Radius, 12));
        Assert.Equal(8, Assert.Single(Assert.Single(ArcOffsets.Of(Square, 6)).Loops).Segments.Length);
        // Grown and shrunk again, the corners are sharp again.
        Assert.Equal(4, Assert.Single(Assert.Single(ArcOffsets.Of(ArcOffsets.Of(Square, 6)[0], -6)).Loops).Segments.Length);
    }

    [Fact]
    public void An_island_near_the_wall_joins_it()
    {
        var room = new ArcRegion([ArcLoop.Of(Shapes.Rectangle(new(0, 0), 60, 60)), ArcLoop.Circle(new(20, 0), 6).Reversed]);
        Assert.Equal(2, Assert.Single(ArcOffsets.Of(room, -1.9)).Loops.Length);
        Assert.Single(Assert.Single(ArcOffsets.Of(room, -2.1)).Loops);
    }

    [Fact]
    public void Every_point_of_the_edge_lies_at_the_distance_and_the_edges_are_closed() => ForSeeds(0, 500, (seed, region, distance) =>
    {
        foreach (var loop in ArcOffsets.Of(region, distance).SelectMany(r => r.Loops))
        {
            for (var i = 0; i < loop.Segments.Length; i++)
                Assert.True(loop.Segments[i].To == loop.Segments[(i + 1) % loop.Segments.Length].From, $"seed {seed}: open");
            foreach (var p in loop.Segments.SelectMany(s => Enumerable.Range(0, 5).Select(k => s.At(k / 4.0))))
                Assert.True(Math.Abs(region.SignedDistance(p) - distance) < Exact, $"seed {seed}: {region.SignedDistance(p)} instead of {distance} at {p}");
        }
    });

    [Fact]
    public void Every_point_of_the_plane_lies_on_the_side_its_depth_says_and_in_one_region_only() => ForSeeds(500, 1000, (seed, region, distance) =>
    {
        var left = ArcOffsets.Of(region, distance);
        var (random, box) = (new Random(seed), region.Bounds.Grown(Math.Max(distance, 0) + 1));
        for (var i = 0; i < 200; i++)
        {
            var p = new Point2(box.X0 + box.Width * random.NextDouble(), box.Y0 + box.Height * random.NextDouble());
            var depth = region.SignedDistance(p);
            if (Math.Abs(depth - distance) < Exact) continue;
            Assert.True(left.Count(r => r.Contains(p)) == (depth < distance ? 1 : 0), $"seed {seed}: {p}, {depth} from the edge, offset {distance}");
        }
    });

    [Fact]
    public void Outer_edges_run_counter_clockwise_holes_clockwise_and_no_edge_crosses_another() => ForSeeds(1000, 1300, (seed, region, distance) =>
    {
        foreach (var left in ArcOffsets.Of(region, distance))
        {
            Assert.True(left.Loops[0].SignedArea > 0 && left.Loops.Skip(1).All(l => l.SignedArea < 0), $"seed {seed}: turned round");
            var (edges, met) = (left.Loops.SelectMany(l => l.Segments).ToArray(), new List<SegmentCrossings.Meeting>());
            for (var i = 0; i < edges.Length; i++)
                for (var k = i + 1; k < edges.Length; k++)
                    SegmentCrossings.Find(edges[i], edges[k], met);
            // Loops may touch; a crossing would lie within both edges, away from the joints of either.
            Assert.True(met.TrueForAll(m => edges.Any(e => e.From.DistanceTo(m.At) < 1e-3)), $"seed {seed}: crosses");
        }
    });

    [Fact]
    public void Forty_levels_one_from_the_other_are_those_from_the_source() => ForSeeds(1300, 1360, (seed, region, _) =>
    {
        var step = Math.Min(region.Bounds.Width, region.Bounds.Height) / 2 / (5 + seed % 40);
        ArcRegion[] level = [region];
        for (var n = 1; n <= 40; n++)
        {
            level = [.. level.SelectMany(r => ArcOffsets.Of(r, -step))];
            Assert.All(level, r => Assert.InRange(r.Deviation - region.Deviation, 0, 0.001));
            foreach (var p in level.SelectMany(r => r.Loops).SelectMany(l => l.Segments).Select(s => s.At(0.4)))
                Assert.True(Math.Abs(region.SignedDistance(p) + n * step) < Exact, $"seed {seed}, level {n}: {p}");
            if (n % 10 != 5) continue;
            var direct = ArcOffsets.Of(region, -n * step);
            Assert.Equal(direct.Sum(r => r.Area), level.Sum(r => r.Area), Exact * (1 + direct.Sum(r => r.Loops.Sum(l => l.Perimeter))));
        }
    });

    [Fact] // The polygon library at fine settings: its curves may be off by up to 7e-4 of the distance, its arcs by the tolerance.
    public void Areas_are_those_of_the_polygon_library() => ForSeeds(1400, 1500, (seed, region, distance) =>
    {
        var (ours, theirs) = (ArcOffsets.Of(region, distance), Offsets.Of(region.Flattened(1e-4), distance, 1e-4));
        var length = theirs.Sum(r => r.Loops.Sum(l => l.Perimeter));
        Assert.Equal(theirs.Sum(r => r.Area), ours.Sum(r => r.Area), (3e-4 + 1e-3 * Math.Abs(distance)) * length + 0.01);
    });

    [Theory] // Areas and lengths by an independent polygon library: shapely 1.8.5 on GEOS 3.11.1, Polygon(points).buffer(d, resolution=512), as in OffsetsTests.
    [InlineData(3, 55398.9997, 916.007)]
    [InlineData(-3, 50016.0555, 878.3077)]
    [InlineData(12, 63897.5305, 972.5556)]
    [InlineData(-40, 21819.5427, 645.8224)]
    [InlineData(-70, 5441.5778, 437.6388)]
    public void A_fitted_outlines_offset_is_that_of_another_library(double distance, double area, double length)
    {
        var moved = Assert.Single(ArcOffsets.Of(ArcFit.Of(OffsetsTests.Waisted, 0.002, 0.002), distance));
        Assert.InRange(Math.Abs(moved.Area - area), 0, 0.002 * length);
        Assert.Equal(length, Assert.Single(moved.Loops).Perimeter, 0.05);
    }

    [Fact]
    public void A_distance_that_is_no_number_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ArcOffsets.Of(Square, double.NaN));

    private static void ForSeeds(int from, int to, Action<int, ArcRegion, double> law) => Parallel.For(from, to, seed =>
    {
        var region = RandomShapes.Of(seed);
        law(seed, region, RandomShapes.Distance(seed, region));
    });
}
