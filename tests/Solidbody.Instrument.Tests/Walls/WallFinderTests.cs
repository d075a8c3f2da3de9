using System.Collections.Immutable;
using CsCheck;
using Solidbody.Geometry;
using Solidbody.Instrument.Walls;

namespace Solidbody.Instrument.Tests.Walls;

/// <summary>Walls against figures worked by hand and against points strewn over both voids.</summary>
public class WallFinderTests
{
    private const double Thickness = 45;

    private static Part Block(ImmutableArray<Pocket> pockets, ImmutableArray<Hole> holes, ImmutableArray<HandBore> bores) => new()
    {
        Name = "block",
        Wood = "red-alder",
        Outline = new(Shapes.Rectangle(new(0, 0), 400, 300)),
        Front = new LevelHeight(0),
        Back = new LevelHeight(-Thickness),
        FrontFinish = FaceFinish.AsPlaned,
        BackFinish = FaceFinish.AsPlaned,
        Bounds = new(-200, -150, -Thickness, 200, 150, 0),
        Pockets = pockets,
        Holes = holes,
        HandBores = bores,
    };

    private static Pocket Room(string name, Side from, Point2 at, double length, double width, double depth, double turn = 0) =>
        new(name, from, new(Shapes.Rectangle(at, length, width, 3, turn)), new LevelHeight(from == Side.Front ? -depth : depth - Thickness));

    private static double Wood(Part part, string of, string to) => WallFinder.Of(part).Single(w => w.Of == of && w.To == to).Wood;

    [Fact]
    public void Rooms_side_by_side_are_parted_by_their_gap() =>
        Assert.Equal(7, Wood(Block([Room("a", Side.Front, new(0, 0), 40, 60, 18), Room("b", Side.Front, new(47, 0), 40, 60, 10)], [], []), "a", "b"), 6);

    [Fact]
    public void Rooms_over_each_other_are_parted_floor_to_floor() =>
        Assert.Equal(45 - 18 - 20, Wood(Block([Room("a", Side.Front, new(0, 0), 40, 60, 18), Room("b", Side.Back, new(5, 5), 40, 60, 20)], [], []), "a", "b"), 6);

    [Fact] // 3, 4, 5: three apart in the plan, four in height.
    public void Rooms_askew_are_parted_by_the_way_through_the_wood() =>
        Assert.Equal(5, Wood(Block([Room("a", Side.Front, new(0, 0), 40, 60, 18), Room("b", Side.Back, new(43, 0), 40, 60, 45 - 18 - 4)], [], []), "a", "b"), 6);

    [Fact]
    public void A_room_knows_its_edge_and_its_floor()
    {
        var walls = WallFinder.Of(Block([Room("a", Side.Front, new(170, 0), 40, 60, 25)], [], []));

        Assert.Equal(10, walls.Single(w => w.Against == WallSide.Edge).Wood, 6);
        Assert.Equal(20, walls.Single(w => w.Against == WallSide.Back).Wood, 6);
        Assert.Equal(190, walls.Single(w => w.Against == WallSide.Edge).At.X, 6);
    }

    [Fact]
    public void What_opens_into_a_room_has_no_wall_to_it() =>
        Assert.DoesNotContain(WallFinder.Of(Block([Room("a", Side.Back, new(0, 0), 40, 60, 39)], [new("shaft", Side.Front, new(0, 0), 8, 0, -7, -9) { Into = "a" }], [])), w => w.Against == WallSide.Void);

    private static readonly Gen<Point2> Place = Gen.Select(Gen.Double[-40, 40], Gen.Double[-40, 40], (x, y) => new Point2(x, y));
    private static readonly Gen<Pocket> AnyRoom = Gen.Select(Place, Gen.Double[20, 50], Gen.Double[15, 40], Gen.Double[6, 35], Gen.Double[-1, 1], Gen.Bool, (at, l, w, d, turn, front) => Room("room", front ? Side.Front : Side.Back, at, l, w, d, turn));
    private static readonly Gen<PartPoint> AnyPoint = Gen.Select(Place, Gen.Double[-40, -5], (p, z) => new PartPoint(p.X, p.Y, z));
    private static readonly Gen<HandBore> AnyBore = Gen.Select(AnyPoint, AnyPoint, Gen.Double[3, 12], (a, b, d) => new HandBore("bore", a, b, d, "")).Where(b => new BoreVoid(b).Length > 5);
    private static readonly Gen<Hole> AnyHole = Gen.Select(Place, Gen.Double[2, 12], Gen.Double[5, 40], (at, d, depth) => new Hole("hole", Side.Front, at, d, 0, -depth, -depth));

    [Fact]
    public void A_bore_is_as_far_from_a_room_as_the_nearest_of_their_points() => Gen.Select(AnyBore, AnyRoom).Sample((bore, room) =>
        Agrees(Block([room], [], [bore]), "room", "bore", OnAxis(bore).Any(p => Holds(room, p)) ? 0 : OnAxis(bore).SelectMany(p => Strewn(room).Select(q => Distance(p, q) - bore.Diameter / 2)).Min()), iter: 200);

    [Fact]
    public void A_bore_is_as_far_from_another_as_their_axes_less_both_radii() => Gen.Select(AnyBore, AnyBore).Sample((a, b) =>
        Agrees(Block([], [], [a with { Name = "a" }, b with { Name = "b" }]), "a", "b", OnAxis(a).SelectMany(p => OnAxis(b).Select(q => Distance(p, q))).Min() - (a.Diameter + b.Diameter) / 2), iter: 200);

    [Fact]
    public void A_hole_is_as_far_from_a_room_as_the_nearest_of_their_points() => Gen.Select(AnyHole, AnyRoom).Sample((hole, room) =>
        Agrees(Block([room], [hole], []), "room", "hole", Enumerable.Range(0, 30).Any(i => Holds(room, new(hole.Centre.X, hole.Centre.Y, hole.Tip * i / 29))) ? 0 : Enumerable.Range(0, 30).SelectMany(i => Strewn(room).Select(q =>
            Math.Max(0, Math.Sqrt(Square(Math.Max(0, q.Plan.DistanceTo(hole.Centre) - hole.Diameter / 2)) + Square(q.Z - hole.Tip * i / 29))))).Min()), iter: 200);

    /// <summary>Strewn points overestimate a distance by less than their spacing; voids that meet only have to be found to meet.</summary>
    private static void Agrees(Part part, string of, string to, double strewn)
    {
        const double spacing = 1.6;
        var found = WallFinder.Of(part).SingleOrDefault(w => w.Of == of && w.To == to)?.Wood ?? WallFinder.Interest;
        if (strewn >= WallFinder.Interest) Assert.True(found >= WallFinder.Interest - spacing, $"{found}, strewn {strewn}");
        else if (found > 0) Assert.True(found <= strewn + 0.2 && found >= strewn - spacing, $"{found}, strewn {strewn}");
        else Assert.True(strewn < spacing, $"{found}, strewn {strewn}");
    }

    /// <summary>Points of a room's walls and floor, 1.5 mm apart.</summary>
    private static IEnumerable<PartPoint> Strewn(Pocket room)
    {
        var floor = room.Floor.Z(0, 0);
        var mouth = room.From == Side.Front ? 0 : -Thickness;
        var points = room.Region.Loops[0].Points;
        for (var i = 0; i < points.Length; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Length]);
            var n = Math.Max(1, (int)(a.DistanceTo(b) / 1.5));
            for (var k = 0; k < n; k++)
                for (var h = 0; h <= 24; h++)
                    yield return At(a + (double)k / n * (b - a), floor + (mouth - floor) * h / 24);
        }
        var box = room.Region.Bounds;
        for (var x = box.X0; x < box.X1; x += 1.5)
            for (var y = box.Y0; y < box.Y1; y += 1.5)
                if (room.Region.Contains(new(x, y))) yield return new(x, y, floor);

        static PartPoint At(Point2 p, double z) => new(p.X, p.Y, z);
    }

    private static bool Holds(Pocket room, PartPoint p) => room.Region.Contains(p.Plan) && (room.From == Side.Front ? p.Z >= room.Floor.Z(0, 0) : p.Z <= room.Floor.Z(0, 0));
    private static IEnumerable<PartPoint> OnAxis(HandBore bore) => Enumerable.Range(0, 121).Select(i => new BoreVoid(bore).Axis(i / 120.0));
    private static double Distance(PartPoint a, PartPoint b) => Math.Sqrt(Square(a.X - b.X) + Square(a.Y - b.Y) + Square(a.Z - b.Z));
    private static double Square(double v) => v * v;
}
