using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Planning;
using Solidbody.Shop;

namespace Solidbody.Machining.Tests.Planning;

public class BedPlacementTests
{
    private static readonly Gen<(Footprint Footprint, Machine Machine)> Cases = Gen.Select(
        Gen.Double[200, 900], Gen.Double[60, 420], Gen.Double[300, 800], Gen.Double[300, 800], Gen.Double[0, 60], Gen.Double[0, 60], Gen.Double[0, 20])
        .Select((length, width, travelX, travelY, moreX, moreY, grow) => (Of(length, width, grow),
            Samples.Machine with { TravelX = travelX, TravelY = travelY, BedX = travelX + moreX, BedY = travelY + moreY }));

    /// <summary>A blank off the origin, with a swept part of it off the middle.</summary>
    private static Footprint Of(double length, double width, double grow)
    {
        Point2[] blank = [new(-200, -width / 2), new(length - 200, -width / 2), new(length - 200, width / 2), new(-200, width / 2)];
        Point2[] swept = [new(-180, 0), new(length - 240, -width / 4), new(length - 230, width / 3), new(-100, width / 3)];
        return new(blank, swept, grow);
    }

    [Fact]
    public void An_accepted_laying_stays_on_the_bed_and_inside_the_travel() => Cases.Sample(c =>
    {
        var laying = BedPlacement.Find(c.Footprint, c.Machine);
        return laying.Slack < 0 || (c.Footprint.Blank.All(p => IsOnBed(laying.OnBed(p), c.Machine)) && c.Footprint.Swept.All(p => IsInTravel(laying.OnBed(p), c.Footprint.Grow, c.Machine)));
    });

    [Fact] // Against a coarse search over everything: angles a quarter degree apart, shifts 2 mm apart.
    public void Where_nothing_is_accepted_a_search_over_everything_finds_nothing() => Cases.Sample(c =>
    {
        if (BedPlacement.Find(c.Footprint, c.Machine).Slack >= 0) return true;
        for (var k = 0; k < 720; k += 2)
        {
            var turn = k * Math.PI / 720;
            // Shifts by a grid: the blank's own box tells which can be on the bed at all.
            var box = Box2.Around(c.Footprint.Blank.Select(p => p.Turned(turn)));
            for (var x = -box.X0; x <= c.Machine.BedX - box.X1; x += 2)
                for (var y = -box.Y0; y <= c.Machine.BedY - box.Y1; y += 2)
                {
                    var laying = new Laying(turn, new(x, y), 0, false);
                    if (c.Footprint.Swept.All(p => IsInTravel(laying.OnBed(p), c.Footprint.Grow, c.Machine))) return false;
                }
        }
        return true;
    }, iter: 60);

    [Fact]
    public void Straight_comes_first() =>
        Assert.Equal(0, BedPlacement.Find(Of(500, 300, 10), Samples.Machine).Turn);

    [Fact]
    public void A_blank_longer_than_the_bed_lies_turned_by_whole_degrees()
    {
        var laying = BedPlacement.Find(Of(700, 110, 6), Samples.Machine);
        Assert.True(laying.Slack >= 0);
        Assert.Equal(0, laying.Turn * 180 / Math.PI - Math.Round(laying.Turn * 180 / Math.PI), 9);
        Assert.InRange(Math.Abs(laying.Turn), 0.1, Math.PI / 2);
    }

    [Fact] // A rectangle l × w at 45° in a square takes (l + w)/√2: the least square of all angles once l is long enough; (900 + 100)/√2 = 707.107.
    public void What_is_missing_is_told_to_the_millimetre()
    {
        var machine = Samples.Machine with { TravelX = 700, TravelY = 700, BedX = 700, BedY = 700 };
        Point2[] blank = [new(0, -50), new(900, -50), new(900, 50), new(0, 50)];
        var laying = BedPlacement.Find(new(blank, [new(450, 0)], 0), machine);
        Assert.Equal(700 - 1000 / Math.Sqrt(2), laying.Slack, 6);
    }

    private static bool IsOnBed(Point2 p, Machine m) => p.X >= -1e-9 && p.Y >= -1e-9 && p.X <= m.BedX + 1e-9 && p.Y <= m.BedY + 1e-9;

    private static bool IsInTravel(Point2 p, double grow, Machine m)
    {
        var (x, y) = ((m.BedX - m.TravelX) / 2, (m.BedY - m.TravelY) / 2);
        return p.X - grow >= x - 1e-9 && p.Y - grow >= y - 1e-9 && p.X + grow <= x + m.TravelX + 1e-9 && p.Y + grow <= y + m.TravelY + 1e-9;
    }
}
