using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Tests;

/// <summary>Volumes of cut wood against closed forms (mensuration of prism, cylinder, cone, cap of a sphere), to a thousandth.</summary>
public sealed class VolumeTests
{
    private static readonly Box3 Blank = new(-20, -15, -12, 20, 15, 0);

    /// <summary>Wood taken from a block 40 × 30 × 12, mm³, by one program.</summary>
    private static double Taken(Cutter cutter, params Motion[] motions)
    {
        var setUp = BlockJob.SetUps()[0] with { Blank = Blank, Placement = new(Side.Front, 0, new(0, 0, 0)) };
        var field = new ColumnField(Grid.Over(Blank.Plan, 0.02), Blank.Z0, Blank.Z1);
        var before = field.Volume;
        var read = new ReadProgram { FileName = "", Start = null, Motions = [.. motions], Tool = null, Comments = [], Lines = 0 };
        BlankCutter.Cut(field, CutProgram.Of(setUp, setUp.Programs[0] with { Cutter = cutter }, read), 0, 2, TestContext.Current.CancellationToken);
        return before - field.Volume;
    }

    private static Motion Line(WorkPoint a, WorkPoint b) => new(MotionKind.Line, a, b, default, 10);
    private static Motion[] Groove(double z) => [Line(new(-10, 0.007, z), new(10, 0.007, z))];

    [Fact]
    public void A_flat_slot_is_a_prism_and_a_disc() => IsNear(3 * (20 * 6 + Math.PI * 9), Taken(Cutters.Flat(6), Groove(-3)));

    [Fact] // Half a cylinder, and two quarter spheres at its ends.
    public void A_ball_groove_is_half_a_cylinder_and_half_a_sphere() => IsNear(Math.PI * 9 / 2 * 20 + 2 * Math.PI * 27 / 3, Taken(Cutters.Ball(6), Groove(-3)));

    [Fact]
    public void A_drilled_hole_is_a_cylinder_on_a_cone()
    {
        var cutter = Cutters.Drill(6, 118);
        IsNear(Math.PI * 9 * (8 - cutter.ConeHeight) + Math.PI * 9 * cutter.ConeHeight / 3, Taken(cutter, Line(new(0, 0, 5), new(0, 0, -8))));
    }

    [Fact]
    public void A_helix_bores_a_cylinder()
    {
        var at = new Point2(1.5, 0);
        var turns = Enumerable.Range(0, 6).Select(i => new Motion(MotionKind.ArcCounterClockwise, new(at.X, at.Y, -i), new(at.X, at.Y, -i - 1), new(0, 0), 10));
        IsNear(Math.PI * 4.5 * 4.5 * 6, Taken(Cutters.Flat(6), [.. turns, new(MotionKind.ArcClockwise, new(at.X, at.Y, -6), new(at.X, at.Y, -6), new(0, 0), 10)]));
    }

    [Fact] // Apart from each other: a pocket's prism with quarter discs at its corners, a hole through, half a cylinder with half a sphere.
    public void A_mixed_block_is_the_sum_of_its_rooms()
    {
        var setUp = BlockJob.SetUps()[0] with { Blank = Blank, Placement = new(Side.Front, 0, new(0, 0, 0)) };
        var field = new ColumnField(Grid.Over(Blank.Plan, 0.02), Blank.Z0, Blank.Z1);
        var before = field.Volume;
        void Cut(Cutter cutter, params Motion[] motions)
        {
            var read = new ReadProgram { FileName = "", Start = null, Motions = [.. motions], Tool = null, Comments = [], Lines = 0 };
            BlankCutter.Cut(field, CutProgram.Of(setUp, setUp.Programs[0] with { Cutter = cutter }, read), 0, 2, TestContext.Current.CancellationToken);
        }
        // Pocket 18 × 10, corners of 3, 5 deep: a 6 mm cutter twice along and once round.
        WorkPoint[] ring = [new(-16, -11, -5), new(-4, -11, -5), new(-4, -7, -5), new(-16, -7, -5), new(-16, -11, -5)];
        Cut(Cutters.Flat(6), [.. ring.Zip(ring.Skip(1), Line)]);
        Cut(Cutters.Drill(7, 118), Line(new(10, -8, 5), new(10, -8, -15)));
        Cut(Cutters.Ball(6), Line(new(-10, 8, -3), new(10, 8, -3)));
        var pocket = 5 * (18 * 10 - (4 - Math.PI) * 9);
        var hole = Math.PI * 3.5 * 3.5 * 12;
        var groove = Math.PI * 9 / 2 * 20 + 2 * Math.PI * 27 / 3;
        IsNear(pocket + hole + groove, before - field.Volume);
    }

    [Fact] // Plunged to a depth h above the ball: a cap of height t = r(1 − sin α), π t²(3r − t)/3, and the frustum above it.
    public void A_tapered_plunge_is_a_cap_and_a_frustum()
    {
        var cutter = Cutters.Tapered(1, 10, 6);
        const double depth = 7;
        var (sin, cos) = Math.SinCos(cutter.Angle);
        var (t, a) = (1 - sin, cos);
        var b = a + (depth - t) * Math.Tan(cutter.Angle);
        IsNear(Math.PI * t * t * (3 - t) / 3 + Math.PI * (depth - t) * (a * a + a * b + b * b) / 3, Taken(cutter, Line(new(0, 0, 1), new(0, 0, -depth))));
    }

    [Fact] // A roundover along an edge: the flat tip's prism, and the square less a quarter circle on each side.
    public void A_roundover_groove_keeps_two_quarter_circles()
    {
        var section = 2 * 1.0 * 3 + 2 * (9 - Math.PI * 9 / 4);
        var ends = Taken(Cutters.Roundover(1, 3), Line(new(-10, 0, 5), new(-10, 0, -3)));
        IsNear(20 * section + ends, Taken(Cutters.Roundover(1, 3), Groove(-3)));
    }

    [Theory] // h = R − √(R² − s²/4): right triangle with legs s/2 and R − h.
    [InlineData(1.5, 0.3, 0.00751884)]
    [InlineData(3, 0.5, 0.01043481)]
    [InlineData(3, 1, 0.04196011)]
    [InlineData(3.175, 0.5, 0.00985782)]
    [InlineData(6.35, 1, 0.01971565)]
    public void Ball_passes_leave_the_scallop_of_the_right_triangle(double radius, double spacing, double height)
    {
        var cutter = CutterProfile.Of(Cutters.Ball(2 * radius));
        var passes = Enumerable.Range(0, 5).SelectMany(i => Sweeps.Segments(Cutters.Ball(2 * radius), [new(-5, i * spacing, -1), new(5, i * spacing, -1)])).ToArray();
        // The ridge lies over the middle of a row of columns.
        var grid = new Grid(-0.05, spacing - 0.0005, 0.001, 100, (int)Math.Round(2 * spacing / 0.001));
        var heights = Sweeps.Cut(grid, passes, cutter);
        var highest = Enumerable.Range(0, grid.Rows).Max(row => heights[row * (grid.Columns + 31) + 50]);
        Assert.Equal(height, highest + 1, 3e-6);
    }

    private static void IsNear(double expected, double taken) => Assert.InRange(taken / expected, 0.999, 1.001);
}
