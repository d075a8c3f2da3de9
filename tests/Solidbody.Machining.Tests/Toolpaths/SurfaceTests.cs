using CsCheck;
using Solidbody.Geometry;
using Solidbody.Instrument.Fretboards;
using Solidbody.Machining.Toolpaths;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Toolpaths;

public class SurfaceTests
{
    private sealed record Formula(Func<double, double, double> Of) : IHeight
    {
        public double Z(double x, double y) => Of(x, y);
    }

    private static readonly Region Zone = new(Shapes.Rectangle(new(1, -2), 11, 9, 2, 0.3));

    /// <summary>Closed forms: a barrel, a dome, a slope, a hollow, soft waves.</summary>
    private static readonly Gen<IHeight> Surfaces = Gen.Select(Gen.Int[0, 4], Gen.Double[12, 60], Gen.Double[0, 6], Gen.Double[-0.9, 0.9]).Select((kind, r, turn, k) => (IHeight)new Formula(kind switch
    {
        0 => (x, y) => Root(r, x * Math.Cos(turn) + y * Math.Sin(turn)),
        1 => (x, y) => Root(r, Math.Sqrt(x * x + y * y)),
        2 => (x, y) => 10 + k * (x * Math.Cos(turn) + y * Math.Sin(turn)),
        3 => (x, y) => 10 + r - Root(r, Math.Sqrt(x * x + y * y)),
        _ => (x, y) => 10 + 0.8 * Math.Sin(0.35 * x + turn) * Math.Cos(0.3 * y + k) + k * 0.3 * y,
    }));

    private static double Root(double r, double d) => Math.Sqrt(Math.Max(1, r * r - d * d));

    private static readonly Gen<Cutter> Cutters = Gen.Int[0, 2].Select(i => i switch { 0 => Given.Ball(6), 1 => Given.Ball(3), _ => Given.Tapered(1, 0.1, 6) });

    [Fact] // Closed form: the surface itself; between passes a ridge of the scallop height, h = R − √(R² − s²/4).
    public void A_raster_leaves_the_surface_and_no_more_than_its_scallop() => Gen.Select(Surfaces, Cutters, Gen.Bool, Gen.Double[0.01, 0.04])
        .Sample((surface, cutter, across, scallop) =>
        {
            var s = Given.Settings(cutter, clearance: 90);
            var path = SurfaceRaster.Path(s, surface, Zone, across ? RasterDirection.Across : RasterDirection.Along, scallop, -100, null).Checked(s);
            var block = new TestBlock(Zone.Bounds.Grown(0.2), 0.3, 89).Cut(path, cutter);
            Assert.Equal(0, block.RapidBite);
            for (var i = 0; i < block.Grid.Count; i++)
            {
                if (Zone.SignedDistance(block.At(i)) > 0) continue;
                var over = block[i] - surface.Z(block.At(i).X, block.At(i).Y);
                Assert.True(over > -0.01, $"gouge {-over} at {block.At(i)}");
                // The ridge is measured square to the face; along Z it is longer by 1 / cos.
                Assert.True(over < 0.01 + scallop * Lean(surface, block.At(i)), $"left {over} of {scallop} at {block.At(i)}, {Zone.SignedDistance(block.At(i))} deep");
            }
        }, seed: "cKNtrQykoXx2", iter: 20);   // first a link past a slanted edge under a tapered tip

    private static double Lean(IHeight surface, Point2 p)
    {
        var (gx, gy) = ((surface.Z(p.X + 1e-3, p.Y) - surface.Z(p.X - 1e-3, p.Y)) / 2e-3, (surface.Z(p.X, p.Y + 1e-3) - surface.Z(p.X, p.Y - 1e-3)) / 2e-3);
        return Math.Sqrt(1 + gx * gx + gy * gy);
    }

    [Fact] // Contact of a ball on a sphere, closed form: centre at r + R from the sphere's middle.
    public void A_ball_rests_on_a_dome_where_geometry_says() => Gen.Select(Gen.Double[15, 60], Gen.Double[-3, 3], Gen.Double[-3, 3])
        .Sample((r, x, y) =>
        {
            var contact = new ZoneContact(new Formula((u, v) => Root(r, Math.Sqrt(u * u + v * v))), new Region(Shapes.Circle(new(0, 0), 8)), Given.Ball(6));
            var (z, inside) = contact.At(x, y);
            Assert.True(inside);
            Assert.Equal(Math.Sqrt((r + 3) * (r + 3) - x * x - y * y) - 3, z, 1e-5);
        }, iter: 8);

    [Fact]
    public void Beyond_the_edge_the_ball_goes_only_as_far_as_the_inside_carries_it()
    {
        // On a plane sinking at 30° outward the contact lags R sin 30° behind the axis, closed form.
        var slope = Math.Tan(Math.PI / 6);
        var zone = new Region(Shapes.Rectangle(new(0, 0), 20, 10));
        var s = Given.Settings(Given.Ball(6), clearance: 60);
        var path = SurfaceRaster.Path(s, new Formula((x, _) => 20 - slope * x), zone, RasterDirection.Along, 0.02, 0, null).Checked(s);
        Assert.Equal(10 + 1.5, path.Max(m => m.To.X), 0.02);
        Assert.Equal(-10, path.Min(m => m.To.X), 0.02);
        Assert.Equal(20 - slope * 11.5 + 3 / Math.Cos(Math.PI / 6) - 3, path.Where(m => m.Kind == MotionKind.Line).Min(m => m.To.Z), 0.02);
    }

    [Fact]
    public void The_tip_never_goes_below_the_lowest_and_skips_what_is_made()
    {
        var zone = new Region(Shapes.Rectangle(new(0, 0), 30, 20));
        var skip = new Region(Shapes.Rectangle(new(0, 0), 12, 8));
        var s = Given.Settings(Given.Ball(6), clearance: 60);
        var path = SurfaceRaster.Path(s, new Formula((x, _) => 20 - 0.5 * Math.Abs(x)), zone, RasterDirection.Across, 0.02, 14, skip).Checked(s);
        Assert.True(path.Min(m => m.To.Z) >= 14);
        Assert.DoesNotContain(path.Where(m => m.Kind != MotionKind.Rapid), m => m.To.Z < s.Clearance && skip.SignedDistance(m.To.Plan) < -1.05 && m.From.Z < s.Clearance);
    }

    [Fact]
    public void The_same_surface_gives_the_same_path()
    {
        var s = Given.Settings(Given.Ball(6), clearance: 60);
        var surface = new Formula((x, y) => Root(40, Math.Sqrt(x * x + y * y)));
        Assert.Equal(SurfaceRaster.Path(s, surface, Zone, RasterDirection.Along, 0.02, 0, null).AsEnumerable(), SurfaceRaster.Path(s, surface, Zone, RasterDirection.Along, 0.02, 0, null));
    }

    [Fact]
    public void Roughing_leaves_its_leave_and_takes_no_more_than_a_step() => Gen.Select(Surfaces, Gen.Double[1.5, 4], Gen.Double[0.2, 0.8])
        .Sample((surface, step, leave) =>
        {
            var zone = new Region(Shapes.Rectangle(new(0, 0), 40, 24));
            var tamed = new Formula((x, y) => 10 + Math.Clamp(surface.Z(x / 3, y / 3) - surface.Z(0, 0), -8, 8));
            var s = Given.Settings(Given.Flat(8), stepDown: step);
            var path = SurfaceRoughing.Path(s, tamed, zone, 24, leave, 1).Checked(s);
            var block = new TestBlock(zone.Bounds.Grown(3.9), 0.6, 24).Cut(path, s.Cutter);
            Assert.True(block.RapidBite <= 0.021, $"rapid {block.RapidBite}");
            Assert.True(block.Bite <= step + 0.05, $"bite {block.Bite}");
            Assert.True(block.PlungeBite <= 0.1, $"plunge {block.PlungeBite}");
            for (var i = 0; i < block.Grid.Count; i++)
            {
                var over = block[i] - tamed.Z(block.At(i).X, block.At(i).Y) - leave;
                Assert.True(over > -0.001, $"{over} into the leave at {block.At(i)}");
            }
        }, iter: 8);

    [Fact] // What roughing may leave on a level floor: nothing above the leave.
    public void Roughing_a_level_surface_clears_its_zone()
    {
        var zone = new Region(Shapes.Rectangle(new(0, 0), 60, 40));
        var s = Given.Settings(Given.Flat(10), stepDown: 4);
        var block = new TestBlock(zone.Bounds, 0.6, 30).Cut(SurfaceRoughing.Path(s, new LevelHeight(19.5), zone, 30, 0.5, 0).Checked(s).RampsKept(s), s.Cutter);
        Assert.Equal(0, block.RapidBite);
        for (var i = 0; i < block.Grid.Count; i++)
            if (zone.SignedDistance(block.At(i)) < -0.1) Assert.InRange(block[i], 20, 20.05);
    }

    [Fact]
    public void A_fret_slot_follows_the_board_at_its_depth()
    {
        var board = new Formula((_, y) => 6 - 254 + Math.Sqrt(254 * 254 - y * y));   // closed form: a 254 mm cylinder
        var s = Given.Settings(Given.Flat(0.6), stepDown: 0.5, clearance: 20);
        var path = FretSlotting.Path(s, [new(new(50, -30), new(50, 30), 1.7), new(new(30, 29), new(31, -29), 1.7)], board).Checked(s);
        var cuts = path.Where(m => m.Kind == MotionKind.Line).ToList();
        Assert.All(cuts, m => Assert.True(m.To.Z - board.Z(m.To.X, m.To.Y) >= -1.7 - 1e-9));
        foreach (var m in cuts.Where(m => m.To.Z - board.Z(m.To.X, m.To.Y) < -1.6999 && m.From.Z - board.Z(m.From.X, m.From.Y) < -1.6999))
            for (var t = 0.0; t <= 1; t += 0.1)
            {
                var p = TestBlock.Along(m, t);
                Assert.Equal(board.Z(p.X, p.Y) - 1.7, p.Z, 0.005);
            }
        Assert.Contains(cuts, m => m.To.Z < board.Z(m.To.X, m.To.Y) - 1.69);
        // A shallow line to saw by is the same path: ramped in, then level from end to end.
        var line = FretSlotting.Path(s, [new(new(50, -30), new(50, 30), 0.2)], board).Checked(s).Where(m => m.Kind == MotionKind.Line).ToList();
        Assert.All(line, m => Assert.True(board.Z(m.To.X, m.To.Y) - m.To.Z <= 0.203));
        Assert.Contains(line, m => m.To.Plan.DistanceTo(new(50, -30)) < 1e-9 && Math.Abs(board.Z(50, -30) - 0.2 - m.To.Z) < 0.003);
        Assert.Contains(line, m => m.To.Plan.DistanceTo(new(50, 30)) < 1e-9 && Math.Abs(board.Z(50, 30) - 0.2 - m.To.Z) < 0.003);
    }

    [Theory] // A fan's slots, 25° aslant on a face whose radius grows: each keeps its own line and depth, and never leaves the two ends it was given (blind slots).
    [InlineData(24), InlineData(31)]
    public void Slanted_slots_keep_their_line_their_depth_and_their_ends(double half)
    {
        var board = new RadiusedFace(6.35, 254, 0.2);
        var s = Given.Settings(Given.Flat(0.6), stepDown: 0.5, clearance: 20);
        var lean = Math.Tan(25 * Math.PI / 180);
        SlotLine[] slots = [.. Enumerable.Range(1, 4).Select(k => new SlotLine(new(30 * k + lean * half, -half), new(30 * k - lean * half, half), 2.2))];
        var cuts = FretSlotting.Path(s, slots, board).Checked(s).Where(m => m.Kind == MotionKind.Line).ToList();
        foreach (var m in cuts)
            for (var t = 0.0; t <= 1; t += 0.125)
            {
                var p = TestBlock.Along(m, t);
                var slot = slots.MinBy(k => Math.Abs((k.B - k.A).Unit.Cross(p.Plan - k.A)))!;
                var along = (slot.B - slot.A).Unit.Dot(p.Plan - slot.A);
                Assert.Equal(0, (slot.B - slot.A).Unit.Cross(p.Plan - slot.A), 1e-9);
                Assert.InRange(along, -1e-9, slot.A.DistanceTo(slot.B) + 1e-9);
                Assert.True(board.Z(p.X, p.Y) - p.Z <= 2.2 + 0.005, $"{board.Z(p.X, p.Y) - p.Z} deep at {p}");
            }
        foreach (var slot in slots)
            foreach (var end in (Point2[])[slot.A, slot.B])
                Assert.Contains(cuts, m => m.To.Plan.DistanceTo(end) < 1e-9 && Math.Abs(board.Z(end.X, end.Y) - 2.2 - m.To.Z) < 0.005);
    }

    [Fact] // Between neighbouring slots and passes alike: never deeper than the step-down at one place, and the floor level at the end.
    public void No_place_of_a_fret_slot_meets_more_wood_than_a_pass_may_take()
    {
        var s = Given.Settings(Given.Flat(0.6), stepDown: 0.25, clearance: 20);
        var path = FretSlotting.Path(s, [new(new(0, -25), new(0, 25), 1.7)], new LevelHeight(6)).Checked(s).RampsKept(s);
        var block = new TestBlock(Box2.Around([new(0, -25), new(0, 25)]).Grown(1), 0.1, 6).Cut(path, s.Cutter);
        Assert.InRange(block.Bite, 0.2, 0.25 + 1e-9);
        Assert.Equal((0.0, 0.0), (block.RapidBite, block.PlungeBite));
        for (var i = 0; i < block.Grid.Count; i++)
            if (Math.Abs(block.At(i).X) < 0.25 && Math.Abs(block.At(i).Y) < 25) Assert.Equal(6 - 1.7, block[i], 9);
        // Seven passes of 50 mm, each with a ramp of 0.243/tan 5° and the way back over it.
        Assert.InRange(path.Where(m => m.Kind == MotionKind.Line).Sum(m => m.Length), 350, 7 * (50 + 2 * 2.79) + 3);
    }

    [Fact] // At both ends a ridge stands over the face, a millimetre wide, as the ball-end leaves it past the board's edge.
    public void What_stands_at_a_slots_ends_is_taken_in_bites_too() => Gen.Select(Gen.Double[0.05, 1.6], Gen.Double[0.2, 2], Gen.Double[20, 60]).Sample((over, depth, length) =>
    {
        var s = Given.Settings(Given.Flat(0.6), stepDown: 0.25, clearance: 20);
        var half = length / 2;
        var path = FretSlotting.Path(s, [new(new(0, -half), new(0, half), depth, over)], new LevelHeight(6)).Checked(s);
        var block = new TestBlock(Box2.Around([new(0, -half), new(0, half)]).Grown(1), 0.1, p => Math.Abs(p.Y) > half - 1 ? 6 + over : 6).Cut(path, s.Cutter);
        Assert.InRange(block.Bite, 0.05, 0.25 + 1e-9);
        Assert.Equal((0.0, 0.0), (block.RapidBite, block.PlungeBite));
        for (var i = 0; i < block.Grid.Count; i++)
            if (Math.Abs(block.At(i).X) < 0.25 && Math.Abs(block.At(i).Y) < half) Assert.Equal(6 - depth, block[i], 9);
    }, iter: 20);
}
