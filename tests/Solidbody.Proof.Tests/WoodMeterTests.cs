using System.Collections.Immutable;
using CsCheck;
using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Proof.Metering;

namespace Solidbody.Proof.Tests;

/// <summary>Measures of single motions against closed forms: mensuration, and the arc of a circle over a strip of known width.</summary>
public sealed class WoodMeterTests
{
    private static readonly Box3 Blank = new(-25, -20, -12, 25, 20, 0);
    private static readonly Placement AsIs = new(Side.Front, 0, new(0, 0, 0));

    private static ImmutableArray<MotionCut> Cut(Cutter cutter, Placement placement, params Motion[] motions) =>
        WoodMeter.Cut(new(Grid.Over(Blank.Plan, 0.05), Blank.Z0, Blank.Z1), placement, cutter, motions);

    private static ImmutableArray<MotionCut> Cut(params Motion[] motions) => Cut(Cutters.Flat(6), AsIs, motions);

    private static Motion Line(WorkPoint a, WorkPoint b) => new(MotionKind.Line, a, b, default, 10);
    private static double Degrees(double radians) => radians * 180 / Math.PI;

    [Fact] // A slot's front is half a circle; its wood is a prism and, at the start, half a disc less than none: the plunge took the whole one.
    public void A_slot_engages_half_the_circumference_and_takes_its_prism()
    {
        var cuts = Cut(Line(new(-20, 0, 5), new(-20, 0, -3)), Line(new(-20, 0, -3), new(20, 0, -3)));
        Assert.Equal(Math.PI * 9 * 3, cuts[0].Volume, Math.PI * 9 * 3 * 0.01);
        Assert.True(cuts[0].Descends);
        Assert.Equal(40 * 6 * 3, cuts[1].Volume, 40 * 6 * 3 * 0.003);
        Assert.Equal(180, Degrees(cuts[1].Engagement), 0.5);
        Assert.Equal(3, cuts[1].Depth, 1e-4);
        Assert.Equal(0, cuts[1].AirShare, 1e-9);
    }

    [Theory] // Arc over a strip of width a beside a cleared slot: acos(1 − a/R).
    [InlineData(0.3)]
    [InlineData(1.2)]
    [InlineData(2.4)]
    [InlineData(3)]
    [InlineData(4.5)]
    public void A_strip_beside_a_slot_engages_the_arc_over_it(double strip)
    {
        foreach (var turn in new[] { 0, 1.1 })
        {
            WorkPoint At(double x, double y) => new Point2(x, y).Turned(turn) is var p ? new(p.X, p.Y, -3) : default;
            var cut = Cut(Line(At(-15, 0), At(15, 0)), Line(At(-8, strip), At(8, strip)))[1];
            var expected = Degrees(Math.Acos(1 - strip / 3));
            Assert.InRange(Degrees(cut.Engagement), expected - 0.5, expected + 1 + Degrees(1.5 * 0.05 / 3 / Math.Sin(expected * Math.PI / 180)));
        }
    }

    [Fact] // Twice the same way, on lines and on arcs: the second time is air, but for a column now and then that lies within rounding of the wall.
    public void A_way_cut_before_is_air()
    {
        var ring = new Motion(MotionKind.ArcCounterClockwise, new(10, 0, -3), new(10, 0, -3), new(0, 0), 10);
        var cuts = Cut(ring, ring, Line(new(10, 0, -3), new(-10, 0, -3)), Line(new(-10, 0, -3), new(10, 0, -3)));
        Assert.Equal(0, cuts[0].AirShare, 0.02);
        Assert.InRange(cuts[1].AirShare, 0.95, 1);
        Assert.InRange(cuts[3].AirShare, 0.9, 1);
        Assert.InRange(cuts[1].Volume, 0, 1e-3 * cuts[0].Volume);
        Assert.InRange(cuts[3].Volume, 0, 1e-3 * cuts[2].Volume);
    }

    [Fact] // Into the block from beside it: 10 mm of air, less the radius by which the rim is ahead.
    public void Of_a_motion_that_enters_wood_only_the_rest_cuts()
    {
        var cut = Assert.Single(Cut(Line(new(-35, 0, -3), new(0, 0, -3))));
        Assert.Equal(28.0, cut.CutLength, 1.1);
        Assert.Equal(25 * 6 * 3 + Math.PI * 9 * 3 / 2, cut.Volume, 5.0);
        var above = Assert.Single(Cut(Line(new(-20, 0, 1), new(20, 0, 1))));
        Assert.Equal((0, 1.0), (above.Volume, above.AirShare));
    }

    [Fact] // Turned over, turned on the bed and shifted, wood is the same wood.
    public void A_placement_changes_no_figure() => Gen.Select(Gen.Double[-3, 3], Gen.Bool, Gen.Double[-100, 100], Gen.Double[-11, -1]).Sample((turn, over, shift, depth) =>
    {
        var placement = new Placement(over ? Side.Back : Side.Front, turn, new(shift, -shift, over ? -12 : 0));
        // The block is its own mirror image about both axes.
        WorkPoint At(double x, double y) => new Point2(x, y).Turned(turn) is var p ? new(p.X + shift, p.Y - shift, depth) : default;
        var cut = Cut(Cutters.Flat(6), placement, Line(At(-15, 0.01), At(15, 0.01)))[0];
        Assert.Equal(1, cut.Volume / (-depth * (30 * 6 + Math.PI * 9)), 0.01);
        Assert.InRange(Degrees(cut.Engagement), 179.5, 180);
    }, iter: 12);

    [Fact] // Through the block and on into the bed: no wood there. Mensuration of the cylinder.
    public void Below_the_block_is_no_wood()
    {
        var cut = Cut(Line(new(0, 0, 5), new(0, 0, -14)))[0];
        Assert.Equal(Math.PI * 9 * 12, cut.Volume, Math.PI * 9 * 12 * 0.01);
        Assert.Equal(12, cut.CutLength, 1.6);
    }

    [Fact] // Short pieces of a raster say the same as one long line.
    public void A_line_in_short_pieces_takes_the_same() => Gen.Select(Gen.Int[2, 600], Gen.Double[-0.4, 0.4]).Sample((pieces, lean) =>
    {
        WorkPoint At(int i) => new(-15 + 30.0 * i / pieces, lean * (-15 + 30.0 * i / pieces), -2);
        var whole = Cut(Cutters.Ball(6), AsIs, Line(At(0), At(pieces)))[0];
        var parts = Cut(Cutters.Ball(6), AsIs, [.. Enumerable.Range(0, pieces).Select(i => Line(At(i), At(i + 1)))]);
        return Math.Abs(parts.Sum(p => p.Volume) - whole.Volume) < 1e-4 * whole.Volume && Math.Abs(parts.Sum(p => p.CutLength) - whole.CutLength) < 1e-6;
    }, iter: 10);
}
