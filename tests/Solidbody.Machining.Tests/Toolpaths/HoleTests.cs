using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Toolpaths;

public class HoleTests
{
    [Fact]
    public void A_drill_reaches_its_tip_in_pecks_and_rapids_only_inside_the_hole() => Gen.Select(Gen.Double[2, 10], Gen.Double[1, 25], Gen.Double[0.5, 6])
        .Sample((diameter, depth, peck) =>
        {
            var s = Given.Settings(Given.Drill(diameter));
            var path = PeckDrilling.Path(s, [new(new(1, 2), 25, 25 - depth)], peck).Checked(s);
            Assert.Equal(25 - depth, path.Min(m => m.To.Z), 9);
            var block = new TestBlock(new Box2(1, 2, 1, 2).Grown(diameter), 0.2, 25).Cut(path, s.Cutter);
            Assert.Equal(0, block.RapidBite);
            Assert.True(block.PlungeBite <= peck + 1e-9);
        }, iter: 50);

    [Fact]
    public void A_row_of_holes_is_visited_in_a_walk_no_longer_than_there_and_back()
    {
        var spots = Enumerable.Range(0, 12).Select(i => new DrillSpot(new(i * 7 % 12 * 10, 0), 20, 10)).ToList();
        var s = Given.Settings(Given.Drill(3));
        var path = PeckDrilling.Path(s, spots, 4).Checked(s);
        Assert.Equal(110, path.Where(m => m.From.Z == s.Clearance && m.To.Z == s.Clearance).Sum(m => m.Length), 6);   // closed form: the row's length
    }

    [Fact]
    public void A_bore_is_round_flat_and_as_wide_as_told() => Gen.Select(Gen.Double[6.03, 40], Gen.Double[1, 12], Gen.Bool, Gen.Bool)
        .Sample((diameter, depth, plunges, arcs) =>
        {
            var s = Given.Settings(Given.Flat(6, plunges)) with { Arcs = arcs };
            var path = HelicalBoring.Path(s, [new(new(0, 0), diameter, 20, 20 - depth)]).Checked(s).RampsKept(s);
            var block = new TestBlock(new Box2(0, 0, 0, 0).Grown(diameter / 2 + 2), 0.3, 20).Cut(path, s.Cutter);
            Assert.Equal(0, block.RapidBite);
            if (!plunges) Assert.Equal(0, block.PlungeBite);
            Assert.True(Math.Max(block.Bite, block.PlungeBite) <= 3 + 1e-9 || plunges, $"bite {block.Bite}");
            for (var i = 0; i < block.Grid.Count; i++)
            {
                var r = block.At(i).Length;
                if (r < diameter / 2 - 0.03) Assert.True(Math.Abs(block[i] - (20 - depth)) < 1e-9, $"left {block[i]} at radius {r} of {diameter / 2}");
                if (r > diameter / 2 + 0.001) Assert.Equal(20, block[i]);
            }
        }, seed: "5Eo6igsgEWg2", iter: 50);   // first a thin helix on chords

    [Fact]
    public void A_hole_of_the_cutters_own_width_is_plunged_or_refused()
    {
        BoreSpot spot = new(new(0, 0), 6, 20, 10);
        var s = Given.Settings(Given.Flat(6, plunges: true));
        Assert.All(HelicalBoring.Path(s, [spot]).Checked(s), m => Assert.Equal(new Point2(0, 0), m.To.Plan));
        Assert.Throws<ArgumentException>(() => HelicalBoring.Path(Given.Settings(Given.Flat(6)), [spot]));
        Assert.Throws<ArgumentException>(() => HelicalBoring.Path(s, [spot with { Diameter = 5.9 }]));
    }

    [Fact]
    public void A_bore_climbs()
    {
        var s = Given.Settings(Given.Flat(6));
        Assert.All(HelicalBoring.Path(s, [new(new(0, 0), 20, 20, 10)]).Where(m => m.IsArc), m => Assert.Equal(MotionKind.ArcCounterClockwise, m.Kind));
    }

    [Fact]
    public void A_slot_is_as_wide_as_its_cutter_with_a_flat_floor() => Gen.Select(Gen.Double[2, 60], Gen.Double[0, 6], Gen.Double[0.3, 12])
        .Sample((length, turn, depth) =>
        {
            var s = Given.Settings(Given.Flat(5));
            var (a, b) = (new Point2(3, 1), new Point2(3, 1) + length * Point2.Polar(turn));
            var block = new TestBlock(Box2.Around([a, b]).Grown(4), 0.3, 20).Cut(Slotting.Path(s, a, b, 20, 20 - depth).Checked(s).RampsKept(s), s.Cutter);
            Assert.Equal((0, 0), (block.RapidBite, block.PlungeBite));
            Assert.True(block.Bite <= 3 + 1e-9, $"bite {block.Bite}");
            var slot = new Region(Shapes.Capsule(a, b, 2.5, 1e-4));
            for (var i = 0; i < block.Grid.Count; i++)
            {
                var d = slot.SignedDistance(block.At(i));
                if (d < -0.03) Assert.Equal(20 - depth, block[i], 9);
                if (d > 0.001) Assert.Equal(20, block[i]);
            }
        }, iter: 40);
}
