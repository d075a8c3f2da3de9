using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Playing;
using Solidbody.Materials;

namespace Solidbody.Instrument.Tests.Necks;

/// <summary>Neck and body joined: screws that bite and hold, a tenon in its mortise.</summary>
public class JointTests
{
    // Wood Handbook FPL-GTR-190, chapter 8, from memory; worked for a number 8 screw, 25 mm of thread: sugar maple 4474.3 N, red alder 1895.0 N.
    [Theory]
    [InlineData(0.63, 4474.3)]
    [InlineData(0.41, 1895.0)]
    public void A_number_8_screw_pulls_out_at_the_handbooks_force(double gravity, double newtons)
    {
        Assert.Equal(4.1656, WoodScrews.Diameter(8), 1e-9);
        Assert.Equal(newtons, WoodScrews.UltimateWithdrawal(gravity, WoodScrews.Diameter(8), 25), 0.1);
    }

    private static InstrumentDefinition Screws(Func<ScrewPattern, ScrewPattern> change, string wood = "sugar-maple") => Workshop.Guitar with
    {
        Neck = Workshop.Guitar.Neck with { Wood = wood, Heel = Workshop.Guitar.Neck.Heel with { Screws = change(Workshop.Guitar.Neck.Heel.Screws with { Length = 38 }) } },
    };

    [Fact]
    // By hand: ferrules 3 mm deep, 44.45 − 16 mm of wood under the pocket: a screw of 38 mm bites 38 + 3 − 28.45 = 12.55 mm, its tip 6.5 mm from the glue plane.
    // Rows 12 and 62 mm from the heel's end; 700 N act 19.05 + 6.35 + fret + 2.5 mm over the heel's back: F = T h 62 / (2 · (12² + 62²)).
    public void Bite_and_pull_are_as_by_hand()
    {
        var d = Screws(s => s);
        var hold = NeckScrewHold.Of(d, 700)!;
        Assert.Equal(12.55, hold.Thread, 1e-9);
        Assert.Equal(6.5, hold.Tip, 1e-9);
        Assert.Equal(700 * (19.05 + 6.35 + d.Fretboard.FretHeight + 2.5) * 62 / (2 * (144 + 3844)), hold.Most!.Value, 1e-9);
        Assert.Equal(108.25 * 0.63 * 0.63 * 4.1656 * 12.55, hold.Ultimate!.Value, 1e-6);
        Assert.Null(NeckScrewHold.Of(Screws(s => s, "ebony"), 700)!.Ultimate);
    }

    private static readonly InstrumentDefinition Sound = Tuned(Screws(s => s));

    private static InstrumentDefinition Tuned(InstrumentDefinition d) => d with
    {
        Tuning = new(440, [new(new(40), 1.17, 7.2e-3, 0.5), new(new(45), 0.91, 4.3e-3, 0.45), new(new(50), 0.66, 2.3e-3, 0.4), new(new(55), 0.43), new(new(59), 0.33), new(new(64), 0.25)]),
    };

    private static InstrumentDefinition Set(double? tenon = null, double depth = 16, double clearance = 0.1) => Workshop.Guitar with
    {
        Neck = Workshop.Guitar.Neck with { Joint = JointKind.Set, Heel = Workshop.Guitar.Neck.Heel with { TenonWidth = tenon } },
        Body = Workshop.Guitar.Body with { Pocket = Workshop.Guitar.Body.Pocket with { Depth = depth, Clearance = clearance } },
    };

    private static readonly NeckPlateDefinition Plate = new(60, 50, 2);

    [Theory]
    [InlineData("SCREW-04")]
    [InlineData("SCREW-05")]
    [InlineData("SCREW-06")]
    [InlineData("SCREW-07")]
    [InlineData("SCREW-08")]
    [InlineData("TENON-01")]
    [InlineData("TENON-02")]
    [InlineData("TENON-03")]
    [InlineData("TENON-04")]
    public void A_spoilt_joint_is_found(string code) => Fires.OnlyWhenSpoilt(code, code.StartsWith("TENON", StringComparison.Ordinal) ? Set(38, 19.05) : Sound, code switch
    {
        "SCREW-04" => Tuned(Screws(s => s with { Length = 44 })),
        "SCREW-05" => Tuned(Screws(s => s with { Length = 33 })),
        "SCREW-06" => Tuned(Screws(s => s with { Length = 30, Diameter = 3, AlongX = 25 })),
        "SCREW-07" => Screws(s => s with { Recess = 0, Plate = Plate with { Length = 90 } }),
        "SCREW-08" => Screws(s => s with { PilotDepth = 10 }),
        "TENON-01" => Set(38, 16),
        "TENON-02" => Set(48, 19.05),
        "TENON-03" => Set(25, 6),
        _ => Set(38, 19.05, 0.3),
    });

    [Fact]
    public void A_tenon_lies_in_its_mortise_with_the_stated_room_all_round()
    {
        var design = Designer.Design(Set(38, 19.05));
        var (neck, body) = (design.Part("neck"), design.Part("body"));
        var (mortise, joint) = (body.Pockets.Single(p => p.Name == RoomNames.NeckPocket).Region, NeckJoint.Of(Set(38, 19.05)));
        Assert.DoesNotContain(neck.Holes, h => h.From == Side.Back);
        Assert.DoesNotContain(body.Holes, h => h.Name.StartsWith("neck screw", StringComparison.Ordinal));
        // Beyond the shoulder line the neck's outline keeps the clearance from the body's wood; nowhere do the two overlap.
        var inside = neck.Outline.Loops[0].Points.Where(p => p.X > joint.ShoulderX + 0.2).ToArray();
        Assert.All(inside, p => Assert.InRange(-mortise.SignedDistance(p), 0.1 - 0.02, 0.1 + 0.02));
        var tenon = inside.Where(p => p.X > joint.ShoulderX + Tenon.Hollow).ToArray();
        Assert.Equal(38, tenon.Max(p => p.Y) - tenon.Min(p => p.Y), 1e-9);
        Assert.Equal(75 * (38 + 2 * 19.05), design.Figures.TenonGlue!.Value, 1e-6);
    }

    [Fact]
    public void A_heel_as_wide_as_the_board_is_glued_as_it_is()
    {
        var design = Designer.Design(Set());
        Assert.Equal(Designer.Design(Workshop.Guitar).Part("neck").Outline.Area, design.Part("neck").Outline.Area, 1e-9);
        Assert.Null(design.Figures.NeckScrews);
    }

    [Fact]
    // A mortise of 38.2 mm round a tenon of 38 mm moves by its own width; glued, it has no play to lose, and no screws to weigh.
    public void A_tenon_is_neither_screwed_nor_loose()
    {
        var design = Designer.Design(Set(38, 19.05));
        Assert.Equal(38, design.Figures.Movement!.Widths.Single(w => w.What == "neck at the heel").Width, 1e-9);
        Assert.Null(design.Figures.Movement.Pocket);
        Assert.DoesNotContain(design.Findings, f => f.Code is "MOVE-01" or "MOVE-02");
        Assert.DoesNotContain(design.Figures.Balance!.Things, t => t.Name == "neck screws");
        Assert.Contains(Designer.Design(Workshop.Guitar).Figures.Balance!.Things, t => t.Name == "neck screws");
    }
}
