using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Toolpaths;

public class PocketTests
{
    private const double Cell = 0.6;

    /// <summary>Rounded rectangles, blobs with waists, some with an island.</summary>
    private static readonly Gen<Region> Pockets = Gen.Select(Gen.Double[14, 50], Gen.Double[12, 40], Gen.Double[0, 8], Gen.Double[0, 3], Gen.Int[0, 2], Gen.Double[2, 5])
        .Select((length, width, corner, turn, kind, island) =>
        {
            var room = new Region(Shapes.Rectangle(new(0, 0), length, width, corner, turn));
            if (kind == 1) room = Offsets.Union([room, new Region(Shapes.Circle(new(length / 2, width / 3), 9))])[0];
            return kind == 2 ? Offsets.Difference(room, new Region(Shapes.Circle(new(0, 0), island)))[0] : room;
        });

    [Fact] // Reached by the cutter: within its radius of a place at least its radius from the walls (an opening); Minkowski, closed form of what a round cutter can clear.
    public void Clearing_takes_all_the_cutter_reaches_and_nothing_else() => Gen.Select(Pockets, Gen.Double[3, 8], Gen.Double[0.3, 0.5], Gen.Bool)
        .Sample((pocket, diameter, over, arcs) =>
        {
            var s = Given.Settings(Given.Flat(diameter), stepDown: 2.5, stepOver: over * diameter) with { Arcs = arcs };
            var rooms = Offsets.Of(pocket, -s.Cutter.Radius - 0.3);
            if (rooms.Length == 0) return;
            var path = PocketClearing.Path(s, pocket, 20, 14, 0.3, 0.2).Checked(s).RampsKept(s);
            var block = new TestBlock(pocket.Bounds.Grown(3), Cell, 20).Cut(path, s.Cutter);
            Assert.Equal(0, block.RapidBite);
            Assert.Equal(0, block.PlungeBite);
            Assert.True(block.Bite <= 2.5 + 1e-9, $"bite {block.Bite}");
            for (var i = 0; i < block.Grid.Count; i++)
            {
                var p = block.At(i);
                var reached = rooms.Min(r => r.SignedDistance(p)) - s.Cutter.Radius;
                if (reached < -0.08) Assert.True(Math.Abs(block[i] - 14.2) < 1e-9, $"left {block[i]} at {p}, {-reached} within reach");
                if (reached > 0.02) Assert.Equal(20, block[i]);
            }
        }, iter: 16);

    [Fact] // Corner of 12 mm: the centre's ring at depth d turns on a circle of 12 − d about the same centre until nothing is left of it.
    public void Rings_and_walls_of_a_rounded_pocket_are_cut_in_arcs_about_its_own_corners()
    {
        var s = Given.Settings(Given.Flat(6), stepDown: 6, stepOver: 2.4);
        var pocket = new Region(Shapes.Rectangle(new(0, 0), 80, 50, 12));
        var rings = Corners(PocketClearing.Path(s, pocket, 20, 14, 0.3, 0));
        Assert.Equal([1.5, 3.9, 6.3, 8.7], rings.Select(a => Math.Round(a.Radius, 3)).Distinct().Order());
        Assert.Equal(16, rings.Length);
        var walls = Corners(PocketWalls.Path(s, pocket, 20, 14, 0));
        Assert.Equal(4, walls.Length);
        Assert.All(walls, a => Assert.Equal(9, a.Radius, 3));

        static (double Radius, Point2 Centre)[] Corners(IEnumerable<Motion> path) =>
            [.. path.Where(m => m.IsArc).Select(m => ((m.From.Plan - m.Centre).Length, m.Centre)).Where(a => a.Centre.DistanceTo(new(Math.Sign(a.Centre.X) * 28, Math.Sign(a.Centre.Y) * 13)) < 0.01)];
    }

    [Fact] // The seed's pocket, a block with a round room at its corner, once left a splinter outside its offset.
    public void Walls_are_cut_to_the_line_and_no_further() => Gen.Select(Pockets, Gen.Double[3, 6])
        .Sample((pocket, diameter) =>
        {
            var s = Given.Settings(Given.Flat(diameter), stepDown: 6);
            if (Offsets.Of(pocket, -s.Cutter.Radius - 0.3).Length == 0) return;
            var block = new TestBlock(pocket.Bounds.Grown(3), Cell, 20)
                .Cut(PocketClearing.Path(s, pocket, 20, 14, 0.3, 0), s.Cutter)
                .Cut(PocketWalls.Path(s, pocket, 20, 14, 1).Checked(s), s.Cutter);
            Assert.Equal(0, block.RapidBite);
            var rooms = Offsets.Of(pocket, -s.Cutter.Radius);
            for (var i = 0; i < block.Grid.Count; i++)
            {
                var p = block.At(i);
                var reached = rooms.Min(r => r.SignedDistance(p)) - s.Cutter.Radius;
                if (reached < -0.08) Assert.True(Math.Abs(block[i] - 14) < 1e-9, $"left {block[i]} at {p}, {-reached} within reach");
                if (reached > 0.02) Assert.Equal(20, block[i]);
            }
        }, seed: "7Ikg9QD9RLn1", iter: 8);

    [Fact]
    public void A_pocket_too_narrow_for_the_cutter_gets_no_path() =>
        Assert.Empty(PocketClearing.Path(Given.Settings(Given.Flat(6)), new Region(Shapes.Rectangle(new(0, 0), 40, 5.9)), 20, 10, 0, 0));

    [Fact]
    public void A_facing_covers_its_whole_zone() => Gen.Select(Gen.Double[20, 60], Gen.Double[10, 40], Gen.Double[0, 3])
        .Sample((length, width, turn) =>
        {
            var s = Given.Settings(Given.Flat(12), stepDown: 2);
            var zone = new Region(Shapes.Rectangle(new(0, 0), length, width, 0, turn));
            var block = new TestBlock(zone.Bounds.Grown(8), Cell, 20).Cut(FaceRaster.Path(s, zone, 20, 17, 20).Checked(s).RampsKept(s), s.Cutter);
            Assert.Equal(0, block.RapidBite);
            Assert.True(block.Bite <= 2 + 1e-9);
            for (var i = 0; i < block.Grid.Count; i++)
                if (zone.SignedDistance(block.At(i)) < 0) Assert.Equal(17, block[i]);
                else if (zone.SignedDistance(block.At(i)) > s.Cutter.Radius + 0.01) Assert.Equal(20, block[i]);
        }, iter: 8);

    [Fact] // Roughing leaves ridges at a zone's rim that stand above what it says it left.
    public void Facing_comes_down_at_feed_through_whatever_may_stand_there()
    {
        var zone = new Region(Shapes.Rectangle(new(0, 0), 40, 30));
        var s = Given.Settings(Given.Flat(6, plunges: true));
        var block = new TestBlock(zone.Bounds.Grown(5), 0.4, 12).Cut(FaceRaster.Path(s, zone, 8, 7, 12).Checked(s), s.Cutter);
        Assert.Equal(0, block.RapidBite);
        for (var i = 0; i < block.Grid.Count; i++)
            if (zone.SignedDistance(block.At(i)) < 0) Assert.Equal(7, block[i], 9);
    }
}
