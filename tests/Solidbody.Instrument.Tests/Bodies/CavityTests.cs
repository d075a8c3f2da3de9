using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Bodies;

public class CavityTests
{
    private const string Shafts = """

        [[body.controls.around]]
        name = "volume"
        x = 652
        y = 112
        [[body.controls.around]]
        name = "tone"
        x = 690
        y = 98
        [[body.controls.around]]
        name = "switch"
        x = 716
        y = 66
        diameter = 3
        slot = 28
        turn = "-40 deg"
        room = 18
        screws_apart = 41.3
        """;

    private static Design Six(string more) => Designer.Design(Read(more).Good);
    private static Result<InstrumentDefinition> Read(string more) => InstrumentFile.Read($"units = \"mm\"\nname = \"any\"\nscale = 635\n{more}\n", "any");

    [Fact]
    public void A_cavity_without_measures_is_drawn_round_its_shafts()
    {
        var design = Six(Shafts);
        var (body, controls) = (design.Part("body"), design.Definition.Body.Controls!);
        var cavity = body.Pockets.Single(p => p.Name == RoomNames.Controls).Region;
        var ledge = body.Pockets.Single(p => p.Name == RoomNames.CoverLedge).Region;

        Assert.True(controls.IsAroundShafts);
        foreach (var (s, at) in new ControlsPlan(controls).Shafts)
            Assert.True(-cavity.SignedDistance(at) >= s.Room - 2 * Tolerances.Flattening, $"{s.Name}: {-cavity.SignedDistance(at)}");
        // Every point of the ledge's edge is the ledge's width away from the cavity.
        Assert.All(ledge.Loops[0].Points, p => Assert.Equal(controls.LedgeWidth, cavity.SignedDistance(p), 1.5 * Tolerances.Flattening));
        Assert.Equal(new Point2(652, 112), Rounded(body.Holes.Single(h => h.Name == "volume").Centre));
        Assert.Empty(design.Findings.Where(f => f.Severity == Severity.Stops).Select(f => f.ToString()));
    }

    private static Point2 Rounded(Point2 p) => new(Math.Round(p.X, 6), Math.Round(p.Y, 6));

    [Fact]
    public void A_blade_switch_gets_a_slot_and_two_screws()
    {
        var body = Six(Shafts).Part("body");
        var slot = body.Pockets.Single(p => p.Name == "switch slot").Region;

        // A slot with round ends: length less width, times width, and one full circle.
        Assert.Equal((28 - 3) * 3 + Math.PI * 1.5 * 1.5, slot.Area, 0.05);
        var (a, b) = (body.Holes.Single(h => h.Name == "switch screw 1").Centre, body.Holes.Single(h => h.Name == "switch screw 2").Centre);
        Assert.Equal(41.3, a.DistanceTo(b), 6);
        Assert.Equal(-40, double.RadiansToDegrees(Math.Atan2((b - a).Y, (b - a).X)), 6);
    }

    [Fact]
    public void Measures_given_with_placed_shafts_keep_the_rectangle()
    {
        var design = Six("body.controls.length = 120\n" + Shafts);

        Assert.False(design.Definition.Body.Controls!.IsAroundShafts);
        Assert.Equal(new Point2(690, 98), Rounded(design.Part("body").Holes.Single(h => h.Name == "tone").Centre));
    }

    [Theory]
    [InlineData("\n[[body.controls.around]]\nname = \"a\"\nx = 652\ny = 112\n[[body.controls.shafts]]\nname = \"b\"\nalong = 10", "shafts stand in")]
    [InlineData("\n[[body.controls.around]]\nname = \"a\"\nx = 652\ny = 112\nalong = 3", "`along`")]
    [InlineData("\n[body.controls]\nangle = \"10 deg\"\n[[body.controls.around]]\nname = \"a\"\nx = 652\ny = 112", "`body.controls.angle`")]
    [InlineData("\n[[body.controls.around]]\nname = \"a\"\nx = 652", "`y`")]
    [InlineData("\n[[body.pickups]]\nname = \"a\"\ncentre = 500\nsize = \"triple\"", "\"triple\"")]
    public void What_makes_no_sense_is_refused_with_its_place(string more, string wrong) => Assert.Contains(Read(more).Mistakes, m => m.Wrong.Contains(wrong, StringComparison.Ordinal) && m.Line > 0 && m.Remedy.Length > 0);

    [Fact]
    public void The_covers_outline_is_the_ledges_less_the_gap_and_its_screws_stand_on_the_ledge()
    {
        var design = Six("");
        var (body, cover) = (design.Part("body"), Assert.Single(design.Figures.Covers));
        var (ledge, cavity) = (body.Pockets.Single(p => p.Name == RoomNames.CoverLedge).Region, body.Pockets.Single(p => p.Name == RoomNames.Controls).Region);

        Assert.All(cover.Outline.Loops[0].Points, p => Assert.Equal(-0.25, ledge.SignedDistance(p), 0.02));
        Assert.Equal(4, cover.Screws.Length);
        Assert.All(cover.Screws, p => Assert.Equal(3, cavity.SignedDistance(p), 0.02));
        Assert.Equal(cover.Screws, body.Holes.Where(h => h.Name.StartsWith("cover screw", StringComparison.Ordinal)).Select(h => h.Centre));
    }

    [Fact]
    public void A_common_size_gives_every_measure_that_is_not_written()
    {
        var pickup = Read("strings = 7\n[[body.pickups]]\nname = \"a\"\ncentre = 590\nsize = \"double\"\ndepth = 17").Good.Body.Pickups.Single();

        Assert.Equal((40, 81.5, 17.0), (pickup.AlongX, pickup.AlongY, pickup.Depth));
        Assert.Equal(new PickupLegs(95.5, 14, 24), pickup.Legs);
        Assert.Null(pickup.Screws);
    }

    [Fact]
    public void Legs_are_deeper_rooms_at_both_ends()
    {
        var body = Six("\n[[body.pickups]]\nname = \"a\"\ncentre = 590\nsize = \"double\"").Part("body");
        var shape = new PartShape(body);

        Assert.Equal(-18, shape.At(new(590, 0)).Top, 6);
        Assert.Equal(-24, shape.At(new(590, 39)).Top, 6);
        Assert.Equal(-24, shape.At(new(590, -39)).Top, 6);
        Assert.Equal(0, shape.At(new(590 + 10, 39)).Top, 6);
    }

    [Fact]
    public void A_tremolos_opening_goes_through_to_its_well()
    {
        var design = Six("body.tremolo.fitted = true");
        var shape = new PartShape(design.Part("body"));

        Assert.True(shape.At(new(635 + 2, 0)).IsEmpty);
        Assert.True(shape.At(new(635 + 2, 34)).IsEmpty);
        // Behind the opening the well has a floor; before it the springs have one.
        Assert.Equal(-44.45 + 16, shape.At(new(635 + 20, 0)).Bottom, 6);
        Assert.Equal(-44.45 + 16, shape.At(new(635 - 60, 0)).Bottom, 6);
        Assert.Empty(design.Findings.Where(f => f.Severity == Severity.Stops).Select(f => f.ToString()));
        Assert.Equal(2, design.Figures.Covers.Length);
    }
}
