using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Toolpaths;

/// <summary>Which way round an outline goes with the grain, and finishing passes that do.</summary>
public class OutlineGrainTests
{
    private static PathLine Clockwise(Loop loop) => new(loop.CounterClockwise.Reversed);

    private static readonly Gen<Loop> Outlines = Gen.Select(Gen.Double[40, 90], Gen.Double[0, 0.25], Gen.Double[0, 0.2], Gen.Double[0, 6])
        .Select((radius, two, three, turn) => Loop.Of(Enumerable.Range(0, 720).Select(i => i * Math.PI / 360)
            .Select(a => radius * (1 + two * Math.Cos(2 * (a + turn)) + three * Math.Cos(3 * a)) * Point2.Polar(a))));

    [Fact] // A circle's wall leans every way alike: of each quarter, all but 3° along the grain and 10° square to it, and every second quarter.
    public void On_a_circle_half_of_what_tears_is_against_the_grain_whichever_way()
    {
        var line = Clockwise(Shapes.Circle(new(0, 0), 50, 1e-5));
        var tears = 2 * Math.PI * 50 * 77 / 90;
        Assert.Equal(tears / 2, OutlineGrain.Against(line, climbing: true), 1.5);
        Assert.Equal(tears / 2, OutlineGrain.Against(line, climbing: false), 1.5);
        var stretches = OutlineGrain.Stretches(line);
        Assert.Equal(4, stretches.Count);
        Assert.Equal(line.Length, stretches.Sum(s => s.Length), 9);
    }

    [Fact] // Said another way: from the wall, a little along the fibre that points ahead, one is inside the part where the way is against the grain.
    public void Fibres_ahead_run_out_of_the_part_on_every_stretch() => Outlines.Sample(outline =>
    {
        var (line, part) = (Clockwise(outline), new Region(outline.CounterClockwise));
        var (against, of) = (0.0, 0.0);
        foreach (var stretch in OutlineGrain.Stretches(line))
            for (var s = stretch.From + 0.25; s < stretch.To; s += 0.5)
            {
                var ahead = stretch.Climbs ? line.Direction(s) : -1 * line.Direction(s);
                if (Math.Atan2(Math.Abs(ahead.Y), Math.Abs(ahead.X)) is < 0.06 or > 1.38) continue;
                of++;
                if (part.Contains(line.At(s) + 0.1 * new Point2(Math.Sign(ahead.X), 0))) against++;
            }
        // Stretches under 15 mm go with their neighbours.
        Assert.InRange(against, 0, 0.12 * of + 60);
    }, iter: 40);

    [Fact]
    public void A_straight_sided_board_is_one_stretch() =>
        Assert.Single(OutlineGrain.Stretches(Clockwise(Loop.Of([new(0, -20), new(300, -26), new(300, 26), new(0, 20)]))));

    [Theory]
    [InlineData(OutlineWay.Climb)]
    [InlineData(OutlineWay.Conventional)]
    [InlineData(OutlineWay.WithGrain)]
    public void Finishing_takes_what_roughing_left_and_no_more(OutlineWay way) => Gen.Select(Outlines, Gen.Double[4, 12], Gen.Bool).Sample((outline, tabLength, plunges) =>
    {
        var s = Given.Settings(Given.Flat(6, plunges));
        TabSpan[] tabs = [new(outline.Points[100], tabLength, 4), new(outline.Points[460], tabLength, 4)];
        var finish = ProfileCutting.Finish(s with { StepDown = 30 }, outline, 20, -0.3, tabs, way).Checked(s with { StepDown = 30 });
        var block = new TestBlock(outline.Bounds.Grown(9), 0.5, 20).Cut(ProfileCutting.Path(s, outline, 20, -0.3, 0.3, tabs), s.Cutter).Cut(finish, s.Cutter);
        Assert.Equal(0, block.RapidBite);
        var part = new Region(outline);
        for (var i = 0; i < block.Grid.Count; i++)
        {
            var d = part.SignedDistance(block.At(i));
            if (d < -0.006) Assert.Equal(20, block[i]);
            if (d is < 0.03 or > 5.9) continue;
            var tab = tabs.Min(t => t.At.DistanceTo(block.At(i)));
            if (tab > tabLength / 2 + 12) Assert.True(block[i] < -0.29, $"left {block[i]} at {block.At(i)}");
            if (tab < tabLength / 2 - 1 && d < 3) Assert.Equal(4, block[i], 6);
        }
        var round = finish.Where(m => m.Kind == MotionKind.Line).Sum(m => m.From.Plan.Cross(m.To.Plan));
        if (way == OutlineWay.Climb) Assert.True(round < 0);
        if (way == OutlineWay.Conventional) Assert.True(round > 0);
    }, iter: 5);
}
