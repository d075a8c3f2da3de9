using Solidbody.Geometry.Arcs;

namespace Solidbody.Geometry.Tests.Arcs;

public class NestedOffsetTests
{
    private static IEnumerable<(NestedOffset Level, int Depth)> All(NestedOffset level, int depth = 0) =>
        level.Inner.SelectMany(inner => All(inner, depth + 1)).Prepend((level, depth));

    [Fact]
    public void A_disc_gives_one_disc_a_level_until_nothing_is_left()
    {
        var levels = All(Assert.Single(NestedOffset.Of(new([ArcLoop.Circle(new(3, 4), 30)]), 2, 3))).ToArray();
        Assert.Equal([28, 25, 22, 19, 16, 13, 10, 7, 4, 1], levels.Select(l => Math.Round(l.Level.Region.Loops[0].Segments[0].Radius, 9)));
    }

    [Fact]
    public void Rooms_that_part_have_levels_of_their_own()
    {
        // Two rooms of 30 by 30 with a way of 8 between them: joined at a depth of 1 and 3, apart at 5.
        var rooms = Offsets.Union([new Region(Shapes.Rectangle(new(-20, 0), 30, 30)), new Region(Shapes.Rectangle(new(20, 0), 30, 30)), new Region(Shapes.Rectangle(new(0, 0), 30, 8))])[0];
        var joined = Assert.Single(Assert.Single(NestedOffset.Of(ArcFit.Of(rooms), 1, 2)).Inner);
        Assert.Equal(2, joined.Inner.Length);
        Assert.All(joined.Inner, room => Assert.Equal(5, All(room).Count()));
    }

    [Fact] // 300 levels would add up 300 closings of gaps; the levels are taken from the source anew in time.
    public void Any_number_of_levels_keeps_its_depth()
    {
        var source = ArcFit.Of(OffsetsTests.Waisted, 0.001, 0.001);
        var levels = NestedOffset.Of(source, 0.2, 0.28).SelectMany(l => All(l)).ToArray();
        Assert.InRange(levels.Max(l => l.Depth), 300, 322);
        Assert.All(levels, l => Assert.InRange(l.Level.Region.Deviation - source.Deviation, 0, 0.0014));
        foreach (var (level, depth) in levels)
            foreach (var p in level.Region.Loops.SelectMany(l => l.Segments).Select(s => s.At(0.3)))
                Assert.InRange(-source.SignedDistance(p) - 0.2 - 0.28 * depth, -1e-4, 1e-4);
    }

    [Fact]
    public void Every_level_lies_within_the_one_around_it()
    {
        for (var seed = 1500; seed < 1560; seed++)
        {
            var source = RandomShapes.Of(seed);
            var step = Math.Min(source.Bounds.Width, source.Bounds.Height) / 2 / (4 + seed % 12);
            foreach (var (level, _) in NestedOffset.Of(source, step, step).SelectMany(l => All(l)))
                Assert.All(level.Inner.SelectMany(i => i.Region.Loops).Select(l => l.Segments[0].At(0.5)), p => Assert.Equal(-step, level.Region.SignedDistance(p), 4));
        }
    }

    [Fact]
    public void Levels_without_a_step_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => NestedOffset.Of(new([ArcLoop.Circle(new(0, 0), 5)]), 1, 0));
}
