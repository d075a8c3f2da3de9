using CsCheck;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Playing;

namespace Solidbody.Instrument.Tests.Necks;

/// <summary>A headstock that leans back: its plane, its outline, its scarf joint.</summary>
public class AngledHeadTests
{
    private static InstrumentDefinition Leaning(double degrees, ScarfDefinition? scarf = null, double thickness = 15) => Workshop.Guitar with
    {
        Headstock = Shape.HeadstockDefinition("three and three") with { Drop = 0, Thickness = thickness, Angle = double.DegreesToRadians(degrees), Scarf = scarf },
    };

    private static Part Neck(InstrumentDefinition d) => Designer.Design(d).Part("neck");

    [Fact] // By hand: nut 5 mm and 0.5 mm; 40 mm along a face at 13° from there: 34.5 cos 13° = 33.6158 in plan, 34.5 sin 13° = 7.7608 down.
    public void A_point_of_the_face_lies_where_trigonometry_says()
    {
        var face = HeadFace.Of(Leaning(13));
        Assert.Equal(-(5.5 + 33.6158), face.Plan(new(40, 7)).X, 1e-4);
        Assert.Equal(-7.7608, face.Z(-(5.5 + 33.6158), 7), 1e-4);
        var under = face.Under(new(40, 7), 15);
        Assert.Equal(-(5.5 + 33.6158) + 15 * 0.224951, under.X, 1e-4);
        Assert.Equal(-7.7608 - 15 * 0.974370, under.Z, 1e-4);
        Assert.Equal(0, face.Z(-5.4, 0));
    }

    [Fact]
    public void The_plate_is_as_thick_as_stated_square_to_its_face() => Gen.Double[3, 17].Sample(degrees =>
    {
        var d = Leaning(degrees);
        var (neck, back) = (Neck(d), (NeckBack)Neck(d).Back);
        var (upright, x) = (d.Headstock.Thickness / Math.Cos(d.Headstock.Angle), -80.0);
        return Math.Abs(neck.Front.Z(x, 3) - back.Z(x, 3) - upright) < 1e-9;
    }, iter: 5);

    [Fact]
    public void Its_tuner_holes_are_bored_by_hand_square_through_the_plate()
    {
        var d = Leaning(12);
        var neck = Neck(d);
        Assert.DoesNotContain(neck.Holes, h => h.Name.StartsWith("tuner", StringComparison.Ordinal));
        Assert.Equal(6, neck.HandBores.Length);
        Assert.All(neck.HandBores, b =>
        {
            Assert.Equal(neck.Front.Z(b.A.X, b.A.Y), b.A.Z, 1e-9);
            Assert.Equal(neck.Back.Z(b.B.X, b.B.Y), b.B.Z, 1e-6);
            Assert.Equal(d.Headstock.Thickness, Math.Sqrt(Math.Pow(b.A.X - b.B.X, 2) + Math.Pow(b.A.Z - b.B.Z, 2)), 1e-9);
        });
        // Laid back into its plane the outline is the parallel headstock's own.
        var flat = Neck(d with { Headstock = d.Headstock with { Angle = 0 } });
        Assert.Equal(-flat.Bounds.X0 - 5.5, (-neck.Bounds.X0 - 5.5) / Math.Cos(d.Headstock.Angle), 1e-6);
    }

    [Fact]
    public void A_left_handed_one_is_its_mirror_image()
    {
        var (right, left) = (Neck(Leaning(9)), Neck(Leaning(9) with { Hand = Hand.Left }));
        Assert.Equal(right.Front.Z(-60, 11), left.Front.Z(-60, -11));
        Assert.All(right.HandBores.Zip(left.HandBores), b => Assert.Equal(b.First.A.Y, -b.Second.A.Y));
        Assert.True(left.CarvedZones[0].Region.Contains(new(-60, 11)));
    }

    // By hand, A = 13°: sin 0.224951, cos 0.974370, tan 0.230868; nut 5 and 0.5; heel's end 462.8091; headstock 15, stock 20.
    // Under the board: line 5.5 − 15/0.224951 = −61.1812; sawn slope 20/0.224951 = 88.9083; shaft's piece 462.8091 − 61.1812 + 20/0.230868 = 488.2573.
    // On the face: line 5.5 + 20/0.230868 = 92.1298; glue face in the plate 15/sin A = 66.6812; shaft's piece 462.8091 + 92.1298 = 554.9389.
    [Theory]
    [InlineData(ScarfPlace.UnderBoard, -61.1812, 488.2573)]
    [InlineData(ScarfPlace.OnFace, 92.1298, 554.9389)]
    public void The_scarf_is_laid_out_as_by_hand(ScarfPlace place, double line, double shaft)
    {
        var joint = Designer.Design(Leaning(13, new(place, 20))).Figures.Scarf!;
        Assert.Equal(88.9083, joint.CutLength, 1e-3);
        Assert.Equal(line, joint.LineAt, 1e-3);
        Assert.Equal(shaft, joint.ShaftPiece, 1e-3);
        if (place == ScarfPlace.OnFace) Assert.Equal(66.6812, joint.GlueLength, 1.5);   // counted in steps of 1 mm, from within the tail of the blend
        // Nowhere wider than the neck, and most of the way as wide as the nut.
        Assert.InRange(joint.GlueArea, 0.5 * 43 * joint.GlueLength, 90 * joint.GlueLength);
    }

    [Fact] // Under the board and 15 mm square to the slope lies the face.
    public void The_headstock_on_the_slope_is_as_thick_as_stated()
    {
        var d = Leaning(11, new(ScarfPlace.UnderBoard, 20));
        var joint = Designer.Design(d).Figures.Scarf!;
        Assert.Equal(15, (joint.Depth(90) + HeadFace.Of(d).Z(-90, 0)) * Math.Cos(d.Headstock.Angle), 1e-9);
    }

    [Fact] // Along the grain all of it stays, square to it the ratio itself; 1 in 10 and 1 in 5 near the handbook's 81 and 55 %: Wood Handbook, chapter 5, table of slopes of grain, from memory.
    public void Hankinson_runs_from_along_the_grain_to_across()
    {
        Assert.Equal(1, HeadGrain.Left(0), 1e-12);
        Assert.Equal(0.07, HeadGrain.Left(Math.PI / 2), 1e-12);
        Assert.InRange(HeadGrain.Left(Math.Atan(0.1)), 0.81 - 0.13, 0.81);
        Assert.InRange(HeadGrain.Left(Math.Atan(0.2)), 0.55 - 0.13, 0.55);
    }

    private static readonly InstrumentDefinition Scarfed = Leaning(10, new(ScarfPlace.UnderBoard, 20));

    [Theory]
    [InlineData("HEAD-09")]
    [InlineData("SCARF-01")]
    [InlineData("SCARF-02")]
    [InlineData("SCARF-03")]
    [InlineData("SCARF-04")]
    public void A_spoilt_figure_is_found(string code) => Fires.OnlyWhenSpoilt(code, code == "SCARF-01" ? Workshop.Guitar : Scarfed, code switch
    {
        "HEAD-09" => Leaning(10),
        "SCARF-01" => Scarfed,
        "SCARF-02" => Leaning(17, new(ScarfPlace.OnFace, 20), thickness: 12),
        "SCARF-03" => With(Leaning(17, new(ScarfPlace.OnFace, 12)), r => r with { AccessLength = 40 }),
        _ => With(Leaning(10, new(ScarfPlace.OnFace, 12)), r => r with { Depth = 13 }),
    });

    private static InstrumentDefinition With(InstrumentDefinition d, Func<RodDefinition, RodDefinition> rod) => d with { Neck = d.Neck with { Rod = rod(d.Neck.Rod) } };
}
