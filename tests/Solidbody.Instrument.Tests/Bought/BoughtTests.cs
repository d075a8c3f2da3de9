using Solidbody.Findings;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Files;
using Solidbody.Instrument.Tests.Files;

namespace Solidbody.Instrument.Tests.Bought;

/// <summary>A neck that exists, and a body that exists: what is made for them follows their measures.</summary>
public class BoughtTests
{
    private static readonly string Neck = Repository.ReadExample("school-bought-neck.toml"), Body = Repository.ReadExample("school-bought-body.toml");

    private static InstrumentDefinition Read(string text, params (string From, string To)[] changes)
    {
        foreach (var (from, to) in changes)
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }
        var read = InstrumentFile.Read(text, "a.toml");
        Assert.True(read.IsGood, string.Join("\n", read.Mistakes));
        return read.Good;
    }

    [Fact]
    public void The_body_alone_is_made_for_a_bought_neck_as_it_was_measured()
    {
        var d = Read(Neck);
        var body = Assert.Single(Designer.Design(d).Parts);
        Assert.Equal("body", body.Name);
        var joint = NeckJoint.Of(d);
        // By hand from the file: heel's end at 458; pocket end 0.1 beyond; 76 long; the sides taper from 42.5 at the nut: 56.2 - 13.7 * 76 / 458 = 53.93 in front.
        Assert.Equal((458.0, 382.0), (Math.Round(joint.HeelEnd, 9), Math.Round(joint.ShoulderX, 9)));
        Assert.Equal(56.2 / 2 + 0.1, BodyMaker.PocketHalfWidth(d, 458), 0.001);
        Assert.Equal(53.93 / 2 + 0.1, BodyMaker.PocketHalfWidth(d, 382), 0.001);
        Assert.Equal(25.4 - 6.35 - 3.175, d.Body.Pocket.Depth, 1e-9);
        Assert.Equal(5.1, joint.PocketCorner, 1e-9);
        // The bridge stands by the scale from the nut: 647.7 - 458 behind the heel's end.
        Assert.All(body.Holes.Where(h => h.Name.StartsWith("string hole", StringComparison.Ordinal)), h => Assert.Equal(647.7 + 16, h.Centre.X, 1e-9));
    }

    [Fact]
    public void Neck_and_fretboard_alone_are_made_for_a_bought_body()
    {
        var d = Read(Body);
        Assert.Equal(["neck", "fretboard"], Designer.Design(d).Parts.Select(p => p.Name));
        var joint = NeckJoint.Of(d);
        // The heel ends where the body's bridge wants it: 635 - 172 - 0.1; it is as wide as the pocket less the clearance on both sides.
        Assert.Equal(462.9, joint.HeelEnd, 1e-9);
        Assert.Equal(56 - 2 * 0.1, joint.HeelWidth, 1e-6);
        Assert.Equal(75, joint.PocketLength);
        Assert.True(joint.HeelCorner >= 6.5 - 0.1, "the heel's corners are at least as round as the pocket's");
    }

    [Fact]
    public void A_heel_with_sides_of_its_own_has_a_pocket_with_them()
    {
        var d = Read(Neck, ("heel_width = 56.2", "heel_width = 56.2\nheel_width_at_front = 56.2"));
        Assert.Equal(BodyMaker.PocketHalfWidth(d, 458), BodyMaker.PocketHalfWidth(d, 382), 1e-9);
        Assert.Equal(56.2 + 0.2, Designer.Design(d).Part("body").Measures.Single(m => m.Name == "neck pocket width between the screws").Expected, 1e-9);
    }

    [Theory]
    [InlineData("BOUGHT-01", "last_fret_to_heel_end = -8", "last_fret_to_heel_end = -6")]
    [InlineData("BOUGHT-01", "frets = 22", "frets = 21")]
    [InlineData("BOUGHT-02", "nut_to_fret_12 = 323.85", "nut_to_fret_12 = 323.5")]
    [InlineData("BOUGHT-03", "corner_radius = 5", "corner_radius = 1")]
    public void Measures_of_a_neck_that_cannot_be_are_told(string code, string from, string to) => Fires.OnlyWhenSpoilt(code, Read(Neck), Read(Neck, (from, to)));

    [Theory]
    [InlineData("BOUGHT-04", "pocket_to_scale_line = 172", "pocket_to_scale_line = 210")]
    [InlineData("BOUGHT-04", "pocket_to_scale_line = 172", "pocket_to_scale_line = 140")]
    [InlineData("BOUGHT-05", "pocket_width_at_mouth = 53.9", "pocket_width_at_mouth = 53")]
    [InlineData("BOUGHT-06", "pocket_width_at_mouth = 53.9", "pocket_width_at_mouth = 55")]
    [InlineData("POCKET-01", "pocket_depth = 15.9", "pocket_depth = 20")]
    public void A_neck_that_does_not_go_into_the_body_is_told(string code, string from, string to) => Fires.OnlyWhenSpoilt(code, Read(Body), Read(Body, (from, to)));

    [Fact]
    public void A_neck_that_says_its_own_measures_is_held_against_the_body()
    {
        var wide = Designer.Design(Read(Body, ("wood = \"indian-rosewood\"", "wood = \"indian-rosewood\"\nwidth_at_end = 60\nbeyond_last_fret = 12")));
        Assert.Contains(wide.Findings, f => f is { Code: "BOUGHT-05", Severity: Severity.Stops });
        // 456.809 + 12 + 0.1 + 172 = 640.909: the scale of 635 ends 5.91 in front of the bridge, and 6.09 beyond the last fret would put it right.
        var off = wide.Findings.Single(f => f.Code == "BOUGHT-04");
        Assert.Contains("5.91 mm in front of", off.Figure, StringComparison.Ordinal);
        Assert.Contains("6.09 mm", off.Remedy, StringComparison.Ordinal);
    }

    // 0.414 (6.5 - 3) - 1.414 * 0.1 = 1.308 by hand: a pocket's corner of 6.5 against a heel's of 3.
    [Fact]
    public void Wood_left_in_the_corners_is_the_figure_worked_out_by_hand() => Assert.Contains("1.31 mm",
        Designer.Design(Read(Neck, ("corner_radius = 5", "corner_radius = 3"), ("[body]", "[body.pocket]\ncorner_radius = 6.5\n[body]"))).Findings.Single(f => f.Code == "BOUGHT-03").Figure, StringComparison.Ordinal);

    [Theory, InlineData("[neck]\nwood = \"wenge\"", "`neck` has no meaning"), InlineData("[fretboard]\nradius = 300", "`fretboard` has no meaning"), InlineData("[headstock]\ndrop = 3", "`headstock` has no meaning"), InlineData("[bought_body]\npocket_width = 56", "both bought")]
    public void What_a_bought_neck_replaces_is_refused_beside_it(string table, string says) =>
        Assert.Contains(InstrumentFile.Read(Neck + "\n" + table, "a").Mistakes, m => m.Wrong.Contains(says, StringComparison.Ordinal));

    [Fact]
    public void A_missing_or_impossible_measure_is_a_mistake_with_its_place()
    {
        Assert.Contains(InstrumentFile.Read(Neck.Replace("nut_to_heel_end = 458", "", StringComparison.Ordinal), "a").Mistakes, m => m.Wrong.Contains("nut_to_heel_end", StringComparison.Ordinal));
        Assert.Contains(InstrumentFile.Read(Neck.Replace("heel_thickness = 25.4", "heel_thickness = 15", StringComparison.Ordinal), "a").Mistakes, m => m.Wrong.Contains("under its fretboard", StringComparison.Ordinal));
        Assert.Contains(InstrumentFile.Read(Body + "\n[body]\nthickness = 40", "a").Mistakes, m => m.Wrong.Contains("`body` has no meaning", StringComparison.Ordinal));
    }

    [Theory, InlineData(true), InlineData(false)]
    public void A_left_handed_one_is_mirrored(bool neck)
    {
        var text = neck ? Neck : Body;
        var (right, left) = (Designer.Design(Read(text)), Designer.Design(Read(text, ("strings = 6", "strings = 6\nhand = \"left\""))));
        Assert.All(right.Parts.Zip(left.Parts), p => Assert.Equal(p.First.Bounds.Y1, -p.Second.Bounds.Y0, 1e-9));
    }
}
