using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Toolpaths;

public class ProfileTests
{
    [Fact]
    public void The_part_stands_its_leave_proud_and_is_free_all_round() => Gen.Select(Gen.Double[25, 70], Gen.Double[20, 50], Gen.Double[0, 9], Gen.Double[0, 3], Gen.Double[0, 0.5])
        .Sample((length, width, corner, turn, leave) =>
        {
            var outline = Shapes.Rectangle(new(0, 0), length, width, corner, turn);
            var s = Given.Settings(Given.Flat(6));
            var path = ProfileCutting.Path(s, outline, 20, -0.3, leave, []).Checked(s).RampsKept(s);
            var block = new TestBlock(outline.Bounds.Grown(9), 0.6, 20).Cut(path, s.Cutter);
            Assert.Equal((0, 0), (block.RapidBite, block.PlungeBite));
            Assert.True(block.Bite <= 3 + 0.01, $"bite {block.Bite}");
            var part = new Region(outline);
            for (var i = 0; i < block.Grid.Count; i++)
            {
                var d = part.SignedDistance(block.At(i)) - leave;
                if (d < -0.006) Assert.Equal(20, block[i]);
                if (d > 0.03 && d < 5.95) Assert.Equal(-0.3, block[i], 9);
            }
        }, iter: 8);

    [Fact]
    public void Tabs_keep_their_length_and_height_and_no_wood_stands_elsewhere() => Gen.Select(Gen.Double[4, 12], Gen.Double[2, 6], Gen.Double[-15, 15], Gen.Bool, Gen.Bool)
        .Sample((tabLength, tabTop, at, plunges, finishing) =>
        {
            var outline = Shapes.Rectangle(new(0, 0), 80, 40, 6);
            var s = Given.Settings(Given.Flat(6, plunges), stepDown: finishing ? 30 : 3);
            TabSpan[] tabs = [new(new(at, 20), tabLength, tabTop), new(new(-at, -20), tabLength, tabTop)];
            var path = ProfileCutting.Path(s, outline, 20, -0.3, 0, tabs).Checked(s);
            if (!plunges) path.RampsKept(s);
            var block = new TestBlock(outline.Bounds.Grown(8), 0.4, 20).Cut(path, s.Cutter);
            var part = new Region(outline);
            Assert.Equal(0, block.RapidBite);
            if (!plunges) Assert.Equal(0, block.PlungeBite);
            for (var i = 0; i < block.Grid.Count; i++)
            {
                var p = block.At(i);
                var d = part.SignedDistance(p);
                if (d < 0.03 || d > 5.95) continue;
                var along = tabs.Min(t => Math.Sign(t.At.Y) == Math.Sign(p.Y) ? Math.Abs(p.X - t.At.X) : double.PositiveInfinity);
                if (along < tabLength / 2 && Math.Abs(p.Y) > 20) Assert.Equal(tabTop, block[i], 9);
                // Past the tab the cutter's round end leaves a fillet of at most its radius, plus the 0.05 mm walk, and the tab's end slopes 45°.
                if (along > tabLength / 2 + 3.1 + tabTop + 0.3 || Math.Abs(p.Y) < 20) Assert.True(block[i] < -0.299, $"left {block[i]} at {p}");
            }
        }, iter: 10);

    [Fact]
    public void The_outline_is_followed_clockwise_so_that_it_climbs()
    {
        var s = Given.Settings(Given.Flat(6));
        var path = ProfileCutting.Path(s, Shapes.Rectangle(new(0, 0), 40, 30), 10, 0, 0, []);
        Assert.True(path.Where(m => m.Kind != MotionKind.Rapid).Sum(m => m.From.Plan.Cross(m.To.Plan)) < 0);
    }
}
