using System.Collections.Immutable;
using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Toolpaths;

public class EngagedClearingTests
{
    private const double Degree = Math.PI / 180;
    /// <summary>The stated angle, and what the meter may read over it: 1.5 columns of 0.025 mm on a rim of 1.5 mm, where the arc is 60°.</summary>
    private const double Stated = 90 * Degree, Reading = 2 * Degree;
    private const double Skin = 0.3;
    /// <summary>Wood that may stand on walls for the finishing pass, mm: a ripple, as much more between the places the planner tried, and the columns.</summary>
    private const double Ripple = 0.08 + 0.08 + 0.03;

    private static Region Union(params Region[] parts) => Offsets.Union(parts)[0];
    private static Region Without(Region whole, Region island) => Offsets.Difference(whole, island)[0];
    private static Region Box(double x, double y, double length, double width, double corner = 0, double turn = 0) => new(Shapes.Rectangle(new(x, y), length, width, corner, turn));
    private static Region Round(double x, double y, double radius) => new(Shapes.Circle(new(x, y), radius));

    public static TheoryData<string> Named => [.. Pockets.Keys];

    private static readonly Dictionary<string, Region> Pockets = new()
    {
        ["a room with round corners"] = Box(0, 0, 60, 40, 4, 0.3),
        ["sharp corners"] = Box(0, 0, 30, 24),
        ["a long slot half as wide again as the cutter"] = Box(0, 0, 60, 9, 4.5, 1),
        ["an ell"] = Union(Box(0, 0, 50, 18, 3.5), Box(-16, 12, 18, 40, 3.5)),
        ["two rooms and a waist barely wider than the cutter"] = Union(Round(-20, 0, 14), Round(18, 0, 11), Box(0, 0, 40, 6.9)),
        ["a room round an island"] = Without(Box(0, 0, 46, 40, 5), Round(3, 2, 6)),
        ["a ring"] = Without(Round(0, 0, 20), Round(2, 0, 9)),
        ["a star of sharp wedges"] = Union(Box(0, 0, 40, 10, 0, 0.2), Box(0, 0, 40, 10, 0, 0.2 + Math.PI / 3), Box(0, 0, 40, 10, 0, 0.2 + 2 * Math.PI / 3)),
    };

    [Theory, MemberData(nameof(Named))] // Shapes that force every kind of bite: corners, slots, waists, fronts that meet behind an island.
    public void No_bite_is_wider_than_stated_and_nothing_is_left(string name) => Assert.True(Check(Pockets[name], Given.Flat(6), Stated));

    /// <summary>Blocks and discs thrown together, some with an island.</summary>
    private static readonly Gen<Region> Thrown = Gen.Select(
            Gen.Select(Gen.Double[20, 45], Gen.Double[12, 30], Gen.Double[0, 6], Gen.Double[0, 3]),
            Gen.Select(Gen.Double[-20, 20], Gen.Double[-12, 12], Gen.Double[5, 14]), Gen.Select(Gen.Bool, Gen.Double[-5, 5], Gen.Double[2, 4]))
        .Select((block, disc, island) =>
        {
            var room = Union(Box(0, 0, block.Item1, block.Item2, block.Item3, block.Item4), Round(disc.Item1, disc.Item2, disc.Item3));
            return island.Item1 ? Without(room, Round(island.Item2, island.Item2 / 2, island.Item3)) : room;
        });

    [Fact]
    public void So_it_is_in_any_pocket_with_any_cutter_and_angle() => Gen.Select(Thrown, Gen.Double[3, 9], Gen.Double[50, 100])
        .Sample((pocket, diameter, angle) => { Check(pocket, Given.Flat(diameter), angle * Degree); }, iter: 6);

    private static bool Check(Region pocket, Cutter cutter, double stated)
    {
        var inset = cutter.Radius + Skin;
        var rooms = EngagedClearing.Rooms(pocket, inset, cutter, stated);
        // Places that only a circle of less than the smallest disc's radius gets to are left: corners' tips, and passages that narrow.
        var (all, reached) = (Offsets.Of(pocket, -inset), Offsets.Of(pocket, -inset - EngagedRoom.SmallestDisc));
        if (rooms.IsEmpty) return false;   // rings clear it then
        var s = Given.Settings(cutter, stepDown: 12);
        var path = EngagedClearing.Path(s, rooms, 10, 0).Checked(s).RampsKept(s);
        var meter = new EngagementMeter(pocket.Bounds.Grown(1), cutter.Radius).Cut(path, 0);
        Assert.True(meter.Most <= stated + Reading, $"{meter.Most / Degree:0.0}° at {meter.MostAt}, stated {stated / Degree:0.0}°, {meter.MostIn}");
        for (var i = 0; i < meter.Grid.Count; i += 31)
        {
            var p = meter.At(i);
            var away = reached.Min(r => r.SignedDistance(p)) - cutter.Radius - EngagedRoom.SmallestDisc;
            if (away < -Ripple) Assert.False(meter.Wood(i), $"left at {p}, {-away} within reach");
            if (all.Min(r => r.SignedDistance(p)) - cutter.Radius > 0.03) Assert.True(meter.Wood(i), $"cut out of reach at {p}");
        }
        return true;
    }

    [Fact] // What is measured must be able to fail: rings begin with a slot.
    public void Rings_engage_half_the_rim()
    {
        var s = Given.Settings(Given.Flat(6), stepDown: 12);
        var path = PocketClearing.Path(s, Box(0, 0, 60, 40, 4), 10, 0, Skin, 0);
        Assert.InRange(new EngagementMeter(Box(0, 0, 60, 40).Bounds.Grown(1), 3).Cut(path, 0).Most, 175 * Degree, 180 * Degree);
    }

    [Fact]
    public void Levels_are_cut_one_below_the_other_and_rapids_meet_no_wood()
    {
        var cutter = Given.Flat(6);
        var pocket = Pockets["an ell"];
        var s = Given.Settings(cutter, stepDown: 5);
        var path = EngagedClearing.Path(s, EngagedClearing.Rooms(pocket, 3 + Skin, cutter, Stated), 12, 0).Checked(s).RampsKept(s);
        var block = new TestBlock(pocket.Bounds.Grown(2), 0.5, 12).Cut(path, cutter);
        Assert.Equal(0, block.RapidBite);
        Assert.Equal(0, block.PlungeBite);
        Assert.True(block.Bite <= 5 + 1e-9, $"bite {block.Bite}");
        Assert.Equal([4.0, 8.0, 0.0], path.Where(m => m.IsArc && m.From.Z == m.To.Z).Select(m => m.To.Z).Distinct().OrderBy(z => z == 0 ? 9 : z));
    }

    [Fact] // A 7 mm slot less its skin leaves a 6 mm cutter a helix of 0.2 mm.
    public void A_room_too_narrow_for_a_helix_is_not_cleared_this_way() =>
        Assert.Empty(EngagedClearing.Rooms(Box(0, 0, 40, 7, 3), 3 + Skin, Given.Flat(6), Stated));

    [Fact] // Corners of 3.5 mm, roughed by a 12 mm cutter, then by one of 6 mm.
    public void What_a_wider_cutter_left_is_taken_and_no_more()
    {
        var (wide, thin, pocket) = (Given.Flat(12), Given.Flat(6), Pockets["an ell"]);
        var first = EngagedClearing.Path(Given.Settings(wide, 12), EngagedClearing.Rooms(pocket, 6 + Skin, wide, Stated), 10, 0);
        var rest = EngagedClearing.Rest(pocket, Skin, thin, wide, Stated);
        var s = Given.Settings(thin, 12);
        var path = EngagedClearing.Path(s, rest!.Value, 10, 0).Checked(s);
        var alone = EngagedClearing.Path(s, EngagedClearing.Rooms(pocket, 3 + Skin, thin, Stated), 10, 0);
        Assert.True(Feed(path) < Feed(alone) / 3);
        var block = new TestBlock(pocket.Bounds.Grown(2), 0.5, 10).Cut(first, wide);
        Assert.Equal(0, block.Cut(path, thin).RapidBite);
        Assert.True(block.PlungeBite < 1e-9);
        var reached = Offsets.Of(pocket, -3 - Skin - EngagedRoom.SmallestDisc);
        for (var i = 0; i < block.Grid.Count; i++)
        {
            var away = reached.Min(r => r.SignedDistance(block.At(i))) - 3 - EngagedRoom.SmallestDisc;
            if (away < -2 * Ripple) Assert.Equal(0, block[i], 9);
        }

        double Feed(ImmutableArray<Motion> motions) => motions.Where(m => m.Kind != MotionKind.Rapid).Sum(m => m.Length);
    }

    [Fact]
    public void A_wider_cutter_that_gets_everywhere_leaves_no_rest() =>
        Assert.Empty(EngagedClearing.Rest(Box(0, 0, 60, 40, 8), Skin, Given.Flat(6), Given.Flat(12), Stated)!.Value);

    [Fact]
    public void The_same_pocket_is_cleared_the_same_way()
    {
        ImmutableArray<Motion> Path() => EngagedClearing.Path(Given.Settings(Given.Flat(6)), EngagedClearing.Rooms(Pockets["a ring"], 3 + Skin, Given.Flat(6), Stated), 10, 0);
        Assert.Equal(Path(), Path());
    }
}
