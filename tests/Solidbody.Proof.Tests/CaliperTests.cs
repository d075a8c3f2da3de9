using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Programs;
using Solidbody.Proof.Comparing;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Tests;

/// <summary>Calipers find walls and middles within 0.005 mm wherever they lie; the places are the paths' own closed forms.</summary>
public sealed class CaliperTests
{
    private const double Within = 0.005;
    private static readonly Box3 Blank = new(-20, -15, -12, 20, 15, 0);

    private static CaliperTaker After(Cutter cutter, params Motion[] motions)
    {
        var setUp = BlockJob.SetUps()[0] with { Blank = Blank, Placement = new(Side.Front, 0, new(0, 0, 0)) };
        var read = new ReadProgram { FileName = "", Start = null, Motions = [.. motions], Tool = null, Comments = [], Lines = 0 };
        return new CaliperTaker([CutProgram.Of(setUp, setUp.Programs[0] with { Cutter = cutter }, read)], Blank);
    }

    private static Motion Line(WorkPoint a, WorkPoint b) => new(MotionKind.Line, a, b, default, 10);

    [Theory]
    [InlineData(3.1234, -1.777)]
    [InlineData(-7.0009, 2.5)]
    public void A_drilled_hole_is_found_where_it_is(double x, double y)
    {
        var calipers = After(Cutters.Drill(5, 118), Line(new(x, y, 5), new(x, y, -10)));
        foreach (var along in (Point2[])[new(1, 0), new(0, 1), new(0.6, 0.8)])
        {
            var origin = new Point2(x, y) - 4 * along;
            Assert.Equal(4, calipers.Take(new Caliper.InsideCentre(origin, along, 4.3, -3, 6)), Within);
            Assert.Equal(5, calipers.Take(new Caliper.Inside(new(x, y), along, -3, 6)), 2 * Within);
        }
    }

    [Fact] // A 4 mm cutter's middle on a circle of 1.5 mm bores 7 mm.
    public void A_bored_hole_is_found_where_it_is()
    {
        var centre = new Point2(1.2345, -0.4321);
        WorkPoint At(double z) => new(centre.X + 1.5, centre.Y, z);
        var calipers = After(Cutters.Flat(4), [.. Enumerable.Range(0, 5).Select(i => new Motion(MotionKind.ArcCounterClockwise, At(-i), At(-i - 1), centre, 10))]);
        foreach (var along in (Point2[])[new(1, 0), new(0, 1), new(0.8, -0.6)])
        {
            Assert.Equal(10, calipers.Take(new Caliper.InsideCentre(centre - 10 * along, along, 10, -3, 6)), Within);
            Assert.Equal(7, calipers.Take(new Caliper.Inside(centre, along, -3, 6)), 2 * Within);
        }
    }

    [Fact] // A 4 mm cutter running up a slope of 0.02 cuts level under itself: each point lies as low as the tip came over it, 2 mm downhill.
    public void The_fall_of_a_floor_is_the_difference_of_its_depths()
    {
        var calipers = After(Cutters.Flat(4), Line(new(-10, 0, -3), new(10, 0, -2.6)));
        Assert.Equal(10 * 0.02, calipers.Take(new Caliper.Fall(new(6, 0), new(-4, 0))), Within);
        Assert.Equal(-10 * 0.02, calipers.Take(new Caliper.Fall(new(-4, 0), new(6, 0))), Within);
    }

    [Theory] // The rule of equal temperament, s (1 − 2^(−n/12)) from the nut, at a scale of 20 mm; slots of 0.58 mm.
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(12)]
    public void A_fret_slot_is_found_at_its_distance_from_the_nut(int fret)
    {
        var x = -15 + 20 * (1 - Math.Pow(2, -fret / 12.0));
        var calipers = After(Cutters.Flat(0.58), Line(new(x, -14, -2), new(x, 14, -2)));
        Assert.Equal(x + 15, calipers.Take(new Caliper.InsideCentre(new(-15, 0), new(1, 0), x + 15, -1, 1)), Within);
        Assert.Equal(0.58, calipers.Take(new Caliper.Inside(new(x, 3), new(1, 0), -1, 1)), 2 * Within);
        Assert.Equal(2, calipers.Take(new Caliper.DepthFromTop(new(x, -5), 0)), 1e-9);
    }
}
