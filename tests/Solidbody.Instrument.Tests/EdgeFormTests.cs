using Solidbody.Geometry;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests;

/// <summary>What shaped edges take off a face.</summary>
public class EdgeFormTests
{
    [Fact] // Samples of our own shapes (docs/shapes.md), data/shapes.json: radius 6.35 mm.
    public void A_rounded_edge_takes_off_what_the_table_says()
    {
        var edges = Shape.All.GetProperty("edges");
        foreach (var s in edges.GetProperty("samples").GetProperty("roundover").EnumerateArray())
            Assert.Equal(s.Number("depth"), new EdgeForm.Rounded(edges.Number("roundoverRadius")).TakenAt(s.Number("distance")), 1e-5);
    }

    [Theory] // By hand, tan 45° = 1, tan 60° = √3, tan 30° = 1/√3; what is left of the width, times that.
    [InlineData(5, 45, 0, 5), InlineData(5, 45, 2, 3), InlineData(5, 45, 5, 0), InlineData(5, 45, 9, 0), InlineData(4, 60, 1, 5.196152422706632), InlineData(6, 30, 3, 1.7320508075688772)]
    public void A_chamfer_takes_off_a_straight_bevel(double width, double degrees, double inside, double taken)
    {
        var form = new EdgeForm.Chamfered(width, double.DegreesToRadians(degrees));
        Assert.Equal(taken, form.TakenAt(inside), 12);
        Assert.Equal(form.Height, form.TakenAt(0), 12);
    }

    [Fact]
    public void A_file_says_rounded_chamfered_or_sharp_for_either_face()
    {
        BodyDefinition Read(string edges) => InstrumentFile.Read($"units = \"mm\"\nname = \"any\"\nscale = 635\n[body.edges]\n{edges}\n", "any").Good.Body;

        Assert.Equal((new EdgeForm.Rounded(6), new EdgeForm.Rounded(6)), (Read("").FrontEdge, Read("").BackEdge));
        var body = Read("front_chamfer = 5\nback_chamfer = 3\nback_chamfer_angle = \"30 deg\"");
        Assert.Equal(new EdgeForm.Chamfered(5, Math.PI / 4), body.FrontEdge);
        Assert.Equal(3 * Math.Tan(Math.PI / 6), body.BackEdge!.Height, 9);
        Assert.Null(Read("front_radius = 0").FrontEdge);
        var both = InstrumentFile.Read("units = \"mm\"\nname = \"any\"\nscale = 635\n[body.edges]\nfront_chamfer = 5\nfront_radius = 6\n", "any").Mistakes.Single();
        Assert.Equal((6, "one of the two"), (both.Line, both.Allowed));
    }
}
