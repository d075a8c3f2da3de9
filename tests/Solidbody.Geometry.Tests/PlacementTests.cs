using CsCheck;

namespace Solidbody.Geometry.Tests;

public class PlacementTests
{
    private static readonly Gen<Placement> Any =
        Gen.Select(Gen.Bool, Gen.Double[-3.1, 3.1], Gen.Double[-500, 500], Gen.Double[-500, 500], Gen.Double[0, 60],
            (back, turn, x, y, z) => new Placement(back ? Side.Back : Side.Front, turn, new(x, y, z)));
    private static readonly Gen<PartPoint> Point =
        Gen.Select(Gen.Double[-800, 800], Gen.Double[-200, 200], Gen.Double[-50, 50], (x, y, z) => new PartPoint(x, y, z));

    [Fact]
    public void Going_to_work_and_back_changes_nothing() => Any.Select(Point).Sample((placement, p) =>
    {
        var again = placement.ToPart(placement.ToWork(p));
        return Math.Abs(again.X - p.X) < 1e-9 && Math.Abs(again.Y - p.Y) < 1e-9 && Math.Abs(again.Z - p.Z) < 1e-9;
    });

    [Fact]
    public void A_placement_is_rigid_and_never_mirrors() => Any.Sample(placement =>
    {
        var m = placement.ToMatrix();
        // Determinant of the 3×3 turn: +1 for a rigid motion, −1 for a mirror (textbook linear algebra).
        var determinant = m[0] * (m[5] * m[10] - m[6] * m[9]) - m[1] * (m[4] * m[10] - m[6] * m[8]) + m[2] * (m[4] * m[9] - m[5] * m[8]);
        return Math.Abs(determinant - 1) < 1e-12;
    });

    [Fact]
    public void The_matrix_says_the_same_as_the_placement() => Any.Select(Point).Sample((placement, p) =>
    {
        var m = placement.ToMatrix();
        var w = placement.ToWork(p);
        return Math.Abs(m[0] * p.X + m[1] * p.Y + m[2] * p.Z + m[3] - w.X) < 1e-9
            && Math.Abs(m[4] * p.X + m[5] * p.Y + m[6] * p.Z + m[7] - w.Y) < 1e-9
            && Math.Abs(m[8] * p.X + m[9] * p.Y + m[10] * p.Z + m[11] - w.Z) < 1e-9
            && Placement.FromMatrix(m) == placement with { Turn = Math.Atan2(m[4], m[0]) };
    });

    [Fact]
    public void A_point_on_the_centre_line_stays_under_the_spindle_when_the_blank_is_turned_over()
    {
        var front = new Placement(Side.Front, 0.7, new(120, 80, 20));
        var back = front with { Up = Side.Back };
        var before = front.ToWork(new(-40, 0, 0));
        var after = back.ToWork(new(-40, 0, 0));
        Assert.Equal(before.X, after.X, 12);
        Assert.Equal(before.Y, after.Y, 12);
    }

    [Theory]
    [InlineData(0, 1.01)]  // stretched
    [InlineData(5, -1)]    // mirrored: y turned round alone
    [InlineData(8, 0.1)]   // tilted
    [InlineData(3, double.NaN)]
    public void A_matrix_that_is_no_level_rigid_placement_is_refused(int entry, double value)
    {
        var m = new Placement(Side.Front, 0, new(0, 0, 0)).ToMatrix();
        m[entry] = value;
        Assert.Throws<ArgumentException>(() => Placement.FromMatrix(m));
    }
}
