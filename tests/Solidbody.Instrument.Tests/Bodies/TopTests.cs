using CsCheck;
using Solidbody.Geometry;
using Solidbody.Instrument.Balance;
using Solidbody.Instrument.Files;
using Solidbody.Instrument.Seasons;
using Solidbody.Materials;

namespace Solidbody.Instrument.Tests.Bodies;

/// <summary>A cap of another wood on the body.</summary>
public class TopTests
{
    private static readonly InstrumentDefinition Plain = Workshop.Strung;
    private static readonly InstrumentDefinition Capped = With(new("sugar-maple", 6.35, Grain.Flat, 2));

    private static readonly InstrumentDefinition Thin = With(Capped.Body.Top! with { Thickness = 4 });

    private static InstrumentDefinition With(TopDefinition top) => Plain with { Body = Plain.Body with { Top = top } };

    [Fact]
    public void It_is_read_and_absent_unless_fitted()
    {
        InstrumentDefinition Read(string more) => InstrumentFile.Read("units = \"mm\"\nname = \"a\"\nscale = 635\n" + more, "a.toml").Good;
        Assert.Null(Read("").Body.Top);
        Assert.Null(Read("[body.top]\nthickness = 5\n").Body.Top);
        Assert.Equal(new TopDefinition("black-walnut", 5, Grain.Quarter, 1), Read("[body.top]\nfitted = true\nwood = \"black-walnut\"\nthickness = 5\ngrain = \"quarter\"\npieces = 1\n").Body.Top);
    }

    [Fact]
    public void The_parts_are_the_same_body()
    {
        var (plain, capped) = (Designer.Design(Plain).Part("body"), Designer.Design(Capped).Part("body"));
        Assert.Equal(PartVolume.Of(plain), PartVolume.Of(capped));
    }

    /// <summary>A box of 300 × 80 × 40 mm with a room 10 deep: by hand the 12 mm above the plane hold 300·80·12 − 100·40·10, centred 6 mm below the front but for the room's share.</summary>
    [Fact]
    public void A_box_is_split_at_its_glue_plane()
    {
        var box = new Part
        {
            Name = "body",
            Wood = "red-alder",
            Outline = new(Shapes.Rectangle(new(0, 0), 300, 80, 0, 0)),
            Front = new LevelHeight(0),
            Back = new LevelHeight(-40),
            FrontFinish = FaceFinish.AsPlaned,
            BackFinish = FaceFinish.AsPlaned,
            Bounds = new(-150, -40, -40, 150, 40, 0),
            Pockets = [new("room", Side.Front, new(Shapes.Rectangle(new(0, 0), 100, 40, 0, 0)), new LevelHeight(-10))],
        };
        var (below, above) = PartVolume.Split(box, -12);
        Assert.Equal(300.0 * 80 * 28, below.Volume, 300.0 * 80 * 28 * 1e-9);
        Assert.Equal(-26, below.Centre.Z, 9);
        Assert.Equal(300.0 * 80 * 12 - 100 * 40 * 10, above.Volume, 300.0 * 80 * 12 * 5e-3);
        Assert.Equal((300.0 * 80 * 12 * -6 - 100 * 40 * 10 * -5.0) / (300.0 * 80 * 12 - 100 * 40 * 10), above.Centre.Z, 0.02);
    }

    [Fact]
    public void The_woods_together_are_the_body() => Gen.Double[1, 20].Sample(thickness =>
    {
        var body = Designer.Design(Plain).Part("body");
        var ((below, above), whole) = (PartVolume.Split(body, -thickness), PartVolume.Of(body));
        Assert.Equal(whole.Volume, below.Volume + above.Volume, whole.Volume * 1e-9);
        Assert.Equal(whole.Centre.Z * whole.Volume, below.Centre.Z * below.Volume + above.Centre.Z * above.Volume, whole.Volume * 1e-6);
    }, iter: 10);

    [Fact]
    public void It_weighs_by_its_own_wood()
    {
        var (plain, capped) = (Designer.Design(Plain).Figures.Balance!, Designer.Design(Capped).Figures.Balance!);
        double Density(string wood) => Woods.Find(wood)!.DensityAt(Plain.Seasons.Built.Moisture)!.Value * 1e-9;
        var top = capped.Things.Single(t => t.Name == PartWood.Top);
        Assert.Equal(plain.Whole.Mass + top.Mass * (1 - Density("red-alder") / Density("sugar-maple")), capped.Whole.Mass, 1e-9);
        Assert.InRange(top.Centre.Z, -6.35, 0);
        // Another wood below leaves the top as it is.
        var ash = capped.Changes.First(c => c.What.StartsWith("body of", StringComparison.Ordinal));
        Assert.NotEqual(capped.Whole.Mass, ash.Mass);
    }

    /// <summary>By hand: two boards of (L + 40)(W/2 + 40) each; 38.1 + 6 mm thick below, 6.35 + 6 mm above; a fifth more for waste.</summary>
    [Fact]
    public void It_is_bought_as_boards_of_its_own()
    {
        var design = Designer.Design(Capped);
        var (box, lines) = (design.Part("body").Bounds, design.Figures.WoodBill!.Lines);
        Assert.Equal(["body", PartWood.Top, "neck", "fretboard"], lines.Select(l => l.Part));
        Assert.Equal(2 * (box.Length + 40) * (box.Width / 2 + 40) * (38.1 + 6) * 1.2, lines[0].Bought, 1e-3);
        Assert.Equal(2 * (box.Length + 40) * (box.Width / 2 + 40) * (6.35 + 6) * 1.2, lines[1].Bought, 1e-3);
        Assert.Equal("sugar-maple", lines[1].Wood);
    }

    /// <summary>Timoshenko's own special case: two layers alike in thickness and stiffness bend to 3/2 ε/h.</summary>
    [Fact]
    public void Two_like_layers_bend_to_three_halves_of_the_strain() => Assert.Equal(1.5 * 0.004 / 10, TopCup.Curvature(0.004, 5, 5, 1), 1e-15);

    /// <summary>The balance of forces and moments over the section, solved apart: ∫E(e + κz − strain) dz = 0 and ∫E(e + κz − strain) z dz = 0.</summary>
    [Fact]
    public void The_bend_leaves_neither_force_nor_moment() => Gen.Select(Gen.Double[0.5, 20], Gen.Double[0.5, 60], Gen.Double[0.2, 5]).Sample((first, second, n) =>
    {
        // z from the glue up; the first layer lies above.
        double[] a = [n * first + second, (n * first * first - second * second) / 2, (n * first * first * first + second * second * second) / 3];
        var (force, moment) = (n * 0.01 * first, n * 0.01 * first * first / 2);
        var curvature = (a[0] * moment - a[1] * force) / (a[0] * a[2] - a[1] * a[1]);
        Assert.Equal(curvature, TopCup.Curvature(0.01, first, second, n), 1e-12);
    });

    [Fact]
    public void The_cup_is_the_difference_of_two_woods()
    {
        Assert.Null(Designer.Design(Plain).Figures.Movement!.Top);
        Assert.Equal(0, Designer.Design(With(new("red-alder", 6.35, Grain.Flat, 2))).Figures.Movement!.Top!.Most!.Value, 12);
        // Maple grows more than alder: wet air bulges the front, dry air hollows it.
        var cup = Designer.Design(Capped).Figures.Movement!.Top!;
        Assert.True(cup.Wet > 0 && cup.Dry < 0);
        Assert.Null(Designer.Design(With(new("wenge", 6.35, Grain.Flat, 2))).Figures.Movement!.Top!.Most);
    }

    [Fact]
    public void A_groove_under_the_top_needs_no_joint()
    {
        var ploughed = Capped with { Body = Capped.Body with { Pieces = 1, WireWays = [new("neck pickup", "bridge pickup", 4) { Made = WireMaking.Ploughed }] } };
        var bore = Designer.Design(ploughed).Part("body").HandBores.Single(b => b.ForWires && b.Name.StartsWith("wire", StringComparison.Ordinal));
        Assert.Equal(GlueUp.Top, bore.Before);
        Assert.Equal((-8.35, -8.35), (bore.A.Z, bore.B.Z));
        Assert.Contains(Designer.Design(ploughed with { Body = ploughed.Body with { Top = null } }).Findings, f => f.Code.StartsWith("WIRE", StringComparison.Ordinal));
    }

    [Fact] // The cavity's floor lies 6 mm below the front: under a cap of 5.35 mm it leaves 0.65 mm of alder, under one of 4 mm 2 mm, under one of 12 mm none.
    public void A_floor_in_the_glue_line_is_found() => Assert.Contains("0.65 mm", Fires.OnlyWhenSpoilt("TOP-01", Thin, With(Thin.Body.Top! with { Thickness = 5.35 })).Figure, StringComparison.Ordinal);
    [Fact] public void A_room_that_leaves_the_top_alone_is_noted() => Fires.OnlyWhenSpoilt("TOP-02", Thin, With(Thin.Body.Top! with { Thickness = 12 }));
    [Fact]
    public void A_contour_through_the_top_is_found()
    {
        var contour = new ArmContourDefinition(655, -98, double.DegreesToRadians(-66), double.DegreesToRadians(14), 18, 900);
        var thick = Capped with { Body = Capped.Body with { ArmContour = contour, Top = Capped.Body.Top! with { Thickness = 20 } } };
        Fires.OnlyWhenSpoilt("TOP-03", thick, thick with { Body = thick.Body with { Top = Capped.Body.Top } });
    }
    [Fact] public void A_glue_line_in_the_rounded_edge_is_noted() => Fires.OnlyWhenSpoilt("TOP-04", Capped, With(Capped.Body.Top! with { Thickness = 6 }));
    [Fact] public void Screws_in_the_top_alone_are_found() => Fires.OnlyWhenSpoilt("TOP-05", Capped, Capped with { Body = Capped.Body with { Bridge = Capped.Body.Bridge with { ScrewDepth = 11 } } });
    [Fact] public void A_top_that_cups_is_found() => Fires.OnlyWhenSpoilt("MOVE-05", Capped, Capped with { Seasons = new() { Driest = new(21, 0.1), Wettest = new(24, 0.9) } });
}
