using System.Collections.Immutable;
using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Toolpaths;

public class SlopedPocketTests
{
    private const double Ridge = 0.02, WallLeave = 0.3, FloorLeave = 0.2;

    /// <summary>What a ramp's notch, the text of a pass and chords may add, mm.</summary>
    private const double Slack = 0.012;

    private sealed record Room(Region Region, SlopedHeight Floor, double Top, double Wide, double Fine)
    {
        public double Skin => FloorLeave + Wide * Math.Abs(Floor.Slope);
        public double Lowest => Math.Min(Floor.Z(Region.Bounds.X0, 0), Floor.Z(Region.Bounds.X1, 0));
    }

    /// <summary>Tapered rooms with round corners, some with a bulge or an island, under slopes both ways.</summary>
    private static readonly Gen<Room> Rooms = Gen.Select(Gen.Select(Gen.Double[25, 80], Gen.Double[20, 60], Gen.Double[-3, 3]), Gen.Select(Gen.Double[0.1, 1.9], Gen.Bool), Gen.Double[6, 12], Gen.Double[0.3, 1], Gen.Int[0, 2])
        .Select((plan, slope, wide, finer, kind) =>
        {
            var (length, width, taper) = plan;
            var corner = wide / 2 + 0.3;
            var (a, b) = (width / 2, width / 2 + taper);
            var room = new Region(Loop.Of([new(0, -a), new(length, -b), new(length, b), new(0, a)]));
            room = Offsets.Of(Offsets.Of(room, -corner)[0], corner)[0];
            if (kind == 1) room = Offsets.Of(Offsets.Union([room, new Region(Shapes.Circle(new(length / 2, a), 9))])[0], 0)[0];
            if (kind == 2 && width > 50) room = Offsets.Difference(room, new Region(Shapes.Circle(new(length / 2, 0), 4)))[0];
            var t = Math.Tan(double.DegreesToRadians(slope.Item1)) * (slope.Item2 ? 1 : -1);
            return new Room(room, new(10, length / 3, t), 24, wide, finer * wide);
        });

    private static CutSettings Settings(double diameter) => Given.Settings(Given.Flat(diameter), stepDown: diameter / 2);

    private static (ImmutableArray<Motion> Rough, ImmutableArray<Motion> Walls, ImmutableArray<Motion> Floor, ImmutableArray<Motion> Foot) Paths(Room r)
    {
        var (wide, fine) = (Settings(r.Wide), Settings(r.Fine));
        var wood = r.Top - r.Lowest;
        return (SlopedPocket.Rough(wide, r.Region, r.Floor, wood, WallLeave, FloorLeave).Checked(wide).RampsKept(wide),
            SlopedPocket.Walls(wide with { StepDown = 60 }, r.Region, r.Floor, wood, FloorLeave, 1).Checked(wide),
            SlopedPocket.Floor(fine, r.Region, r.Floor, r.Skin, Ridge, WallLeave).Checked(fine).RampsKept(fine),
            SlopedPocket.Walls(fine with { StepDown = 60 }, r.Region, r.Floor, r.Skin, 0, 1).Checked(fine));
    }

    [Fact]
    public void Nothing_is_cut_too_deep_and_no_more_is_left_than_the_closed_form() => Rooms.Sample(r =>
    {
        var paths = Paths(r);
        var swept = new SweptLevel([(paths.Rough, r.Wide / 2), (paths.Walls, r.Wide / 2), (paths.Floor, r.Fine / 2), (paths.Foot, r.Fine / 2)]);
        var reach = Offsets.Of(r.Region, -r.Fine / 2);
        if (reach.Length == 0) return;
        var downhill = FlatOnSlope.LeftAtWall(r.Fine / 2, r.Floor.Slope, -1);
        foreach (var p in Places(r.Region))
        {
            var (from, left) = (r.Region.SignedDistance(p), swept.At(p) - r.Floor.Z(p.X, p.Y));
            Assert.True(left >= -1e-9, $"gouge {left} at {p}");
            if (from > 0.01) Assert.True(swept.At(p) > r.Top, $"wall cut {from} deep at {p}");
            if (reach.Min(room => room.SignedDistance(p)) - r.Fine / 2 is var reached && reached > -0.006) continue;
            Assert.True(left <= Math.Max(downhill, Ridge + WallLeave * Math.Abs(r.Floor.Slope)) + Slack, $"left {left} at {p}, {from} from the wall");
            if (from < -r.Fine) Assert.True(left <= Ridge + Slack, $"ridge {left} at {p}, {from} from the wall");
        }
    }, iter: 20);

    /// <summary>On the walls' normals, close to and far from them, and all over.</summary>
    private static IEnumerable<Point2> Places(Region region)
    {
        foreach (var points in region.Loops.Select(l => l.Points))
            for (var i = 0; i < points.Length; i++)
            {
                var (a, b) = (points[i], points[(i + 1) % points.Length]);
                for (var k = 0; k < Math.Max(1, a.DistanceTo(b) / 5); k++)
                    foreach (var into in (double[])[-0.05, 0.01, 0.1, 0.5, 1.5])
                        yield return a + Math.Min(1, k * 5 / Math.Max(a.DistanceTo(b), 5)) * (b - a) + into * (b - a).Unit.Left;
            }
        var box = region.Bounds.Grown(1);
        for (var x = box.X0; x < box.X1; x += 1.37)
            for (var y = box.Y0; y < box.Y1; y += 1.71) yield return new(x, y);
    }

    [Fact]
    public void No_rapid_and_no_plunge_meets_wood_and_no_bite_is_deeper_than_a_step() => Rooms.Sample(r =>
    {
        var paths = Paths(r);
        var block = new TestBlock(r.Region.Bounds.Grown(3), 0.7, r.Top);
        block.Cut(paths.Rough, Given.Flat(r.Wide));
        Assert.True(block.Bite <= r.Wide / 2 + r.Wide * Math.Abs(r.Floor.Slope) + 1e-9, $"bite {block.Bite}");
        block.Cut(paths.Walls, Given.Flat(r.Wide)).Cut(paths.Floor, Given.Flat(r.Fine)).Cut(paths.Foot, Given.Flat(r.Fine));
        Assert.Equal(0, block.RapidBite);
        Assert.True(block.PlungeBite <= FlatOnSlope.LeftAtWall(r.Fine / 2, r.Floor.Slope, -1) + Slack, $"plunge {block.PlungeBite}");
    }, iter: 10);

    [Fact] // Beside walls along the slope, by hand: 6 mm on 0.9° leaves 3 × 0.015709 = 0.0471 mm at their feet, and a tenth of a millimetre out 0.744 of that.
    public void A_room_along_the_slope_keeps_the_strip_of_the_closed_form()
    {
        var floor = new SlopedHeight(10, 0, Math.Tan(double.DegreesToRadians(0.9)));
        var room = new Room(new(Shapes.Rectangle(new(40, 0), 80, 56, 6.5)), floor, 26, 12, 6);
        var paths = Paths(room);
        var swept = new SweptLevel([(paths.Rough, 6), (paths.Walls, 6), (paths.Floor, 3), (paths.Foot, 3)]);
        double Left(double x, double y) => swept.At(new(x, y)) - floor.Z(x, y);
        Assert.Equal(0.0471, Left(40, 28 - 1e-6), 3);
        Assert.Equal(0.0471 * (1 - Math.Sqrt(1 - 2.9 * 2.9 / 9)), Left(40, 27.9), 3);
        Assert.Equal(0, Left(80 - 1e-6, 0), 3);            // uphill
        Assert.Equal(0.0942, Left(1e-6, 0), 3);            // downhill
    }

    [Fact]
    public void A_floor_steeper_than_the_ramp_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() =>
        SlopedPocket.Rough(Settings(6), new(Shapes.Rectangle(new(0, 0), 40, 30, 4)), new(10, 0, 0.2), 10, 0.3, 0.2));
}
