using Solidbody.Geometry;
using Solidbody.Instrument.Balance;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Balance;

public class PartVolumeTests
{
    private static Part Block(Region outline, double thickness) => new()
    {
        Name = "block",
        Wood = "red-alder",
        Outline = outline,
        Front = new LevelHeight(0),
        Back = new LevelHeight(-thickness),
        FrontFinish = FaceFinish.AsPlaned,
        BackFinish = FaceFinish.AsPlaned,
        Bounds = new(outline.Bounds.X0, outline.Bounds.Y0, -thickness, outline.Bounds.X1, outline.Bounds.Y1, 0),
    };

    [Fact] // A box: length × width × thickness, centred.
    public void A_box_is_its_three_sides()
    {
        var box = PartVolume.Of(Block(new(Shapes.Rectangle(new(100, 20), 300, 80, 0, 0)), 40));
        Assert.Equal(300.0 * 80 * 40, box.Volume, 300.0 * 80 * 40 * 1e-9);
        Assert.Equal(new PartPoint(100, 20, -20), new PartPoint(Math.Round(box.Centre.X, 6), Math.Round(box.Centre.Y, 6), Math.Round(box.Centre.Z, 6)));
    }

    [Fact] // A cylinder: π r² h; with a room 20 mm deep over half of it, whose half circle's centre lies 4r/3π beside the middle.
    public void A_cylinder_with_half_of_it_lowered_is_known_in_closed_form()
    {
        const double r = 100, h = 40;
        var round = Block(new(Shapes.Circle(new(0, 0), r)), h);
        var whole = PartVolume.Of(round);
        Assert.Equal(Math.PI * r * r * h, whole.Volume, Math.PI * r * r * h * 2e-3);
        Assert.Equal(0, whole.Centre.X, 0.05);
        var half = PartVolume.Of(round with { Pockets = [new("room", Side.Front, new(Shapes.Rectangle(new(r, 0), 2 * r, 3 * r, 0, 0)), new LevelHeight(-h / 2))] });
        Assert.Equal(0.75 * Math.PI * r * r * h, half.Volume, 0.75 * Math.PI * r * r * h * 2e-3);
        // (h·A/2 · −4r/3π + h/2·A/2 · 4r/3π) / (3/4 h·A) = −(1/3)·4r/3π
        Assert.Equal(-4 * r / (9 * Math.PI), half.Centre.X, 0.1);
        Assert.Equal((-20.0 * 2 - 30.0) / 3, half.Centre.Z, 0.02);
    }

    [Fact] // Slots and bores are exact though thinner than a column: 10 slots of 0.58 × 2 × 50 mm; a bore of 10 mm through 80 mm, its run outside not counted.
    public void Slots_and_bores_are_taken_off()
    {
        var box = Block(new(Shapes.Rectangle(new(0, 0), 300, 80, 0, 0)), 40);
        var cut = PartVolume.Of(box with
        {
            Slots = [.. Enumerable.Range(0, 10).Select(i => new Slot($"{i}", new(10 * i, -25), new(10 * i, 25), 0.58, 2))],
            HandBores = [new("bore", new(-100, -50, -20), new(-100, 50, -20), 10, "by hand")],
        });
        var expected = 300.0 * 80 * 40 - 10 * 0.58 * 2 * 50 - Math.PI / 4 * 100 * 80;
        Assert.Equal(expected, cut.Volume, 2);
    }

    public static TheoryData<string> Parts => ["body", "neck", "fretboard"];

    /// <summary>The coarse sum against one of 1,500 columns by 1,500 rows: within 0.35 %, and its centre within 0.7 mm.</summary>
    [Theory, MemberData(nameof(Parts))]
    public void Coarse_columns_weigh_what_fine_ones_do(string name)
    {
        foreach (var scale in (double[])[609.6, 635, 863.6])
        {
            var part = Designer.Design(InstrumentFile.Read(FormattableString.Invariant($"units = \"mm\"\nname = \"a\"\nscale = {scale}\n"), "a").Good).Part(name);
            var (coarse, fine) = (PartVolume.Of(part), PartVolume.Of(part, 1500, 1500));
            Assert.InRange(coarse.Volume / fine.Volume, 0.9965, 1.0035);
            Assert.InRange(Math.Max(Math.Max(Math.Abs(coarse.Centre.X - fine.Centre.X), Math.Abs(coarse.Centre.Y - fine.Centre.Y)), Math.Abs(coarse.Centre.Z - fine.Centre.Z)), 0, 0.7);
        }
    }
}
