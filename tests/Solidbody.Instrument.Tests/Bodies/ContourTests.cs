using CsCheck;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Tests.Bodies;

/// <summary>Contours against the samples worked out apart from this code (data/shapes.json, edges).</summary>
public class ContourTests
{
    private static readonly ArmContourDefinition Arm = ReadArm();
    private static readonly BellyContourDefinition Belly = ReadBelly();

    private static ArmContourDefinition ReadArm()
    {
        var a = Shape.All.GetProperty("edges").GetProperty("arm");
        return new(a.Number("pointX"), a.Number("pointY"), a.Degrees("directionDeg"), a.Degrees("angleDeg"), a.Number("halfBlend"), a.Number("bendRadius"));
    }

    private static BellyContourDefinition ReadBelly()
    {
        var b = Shape.All.GetProperty("edges").GetProperty("belly");
        return new(b.Number("pointX"), b.Number("pointY"), b.Degrees("directionDeg"), b.Degrees("angleDeg"), b.Number("halfBlend"), b.Number("windowHalf"), b.Number("windowBlend"));
    }

    [Theory, InlineData("arm"), InlineData("belly")]
    public void Depths_agree_with_the_samples(string contour)
    {
        foreach (var s in Shape.All.GetProperty("edges").GetProperty("samples").GetProperty(contour).EnumerateArray())
        {
            var p = new Point2(s.Number("x"), s.Number("y"));
            Assert.Equal(s.Number("depth"), contour == "arm" ? new ArmContour(Arm).Removed(p) : new BellyContour(Belly, 44.45).Removed(p), 5);
        }
    }

    private static readonly Gen<Point2> Anywhere = Gen.Select(Gen.Double[280, 800], Gen.Double[-190, 190], (x, y) => new Point2(x, y));

    [Fact]
    public void Wood_is_taken_inside_the_zone_and_nowhere_else() => Gen.Select(Anywhere, Gen.Bool, Gen.Double[600, 3000]).Sample((p, straight, radius) =>
    {
        var plan = new Box2(280, -190, 800, 190);
        var arm = new ArmContour(Arm with { BendRadius = straight ? 0 : radius });
        var belly = new BellyContour(Belly, 44.45);
        if (Math.Abs(arm.Zone(plan).SignedDistance(p)) > 0.01) Assert.Equal(arm.Zone(plan).Contains(p), arm.Removed(p) > 0);
        if (Math.Abs(belly.Zone(plan).SignedDistance(p)) > 0.01) Assert.Equal(belly.Zone(plan).Contains(p), belly.Removed(p) > 0);
    });

    [Fact]
    public void Beyond_the_bend_the_slope_is_the_angle_given()
    {
        var (arm, n) = (new ArmContour(Arm with { BendRadius = 0 }), Point2.Polar(Arm.Direction));
        Point2 At(double s) => new Point2(Arm.X, Arm.Y) + s * n;

        Assert.Equal(Math.Tan(Arm.Angle), (arm.Removed(At(40)) - arm.Removed(At(30))) / 10, 9);
    }

    public static TheoryData<EdgeForm> Forms => [new EdgeForm.Rounded(6.35), new EdgeForm.Chamfered(5, Math.PI / 4)];

    [Theory, MemberData(nameof(Forms))]
    public void An_edge_follows_its_contour(EdgeForm form)
    {
        var design = Designer.Design(Workshop.Guitar with { Body = Workshop.Guitar.Body with { ArmContour = Arm, BellyContour = Belly, BackEdge = form } });
        var body = design.Part("body") with { Pockets = [], Holes = [] };
        var shape = new PartShape(body);
        var (most, grid) = (0.0, Grid.Over(body.Bounds.Plan, 1.3));
        for (var i = 0; i < grid.Count; i++)
        {
            var p = grid.Centre(i % grid.Columns, i / grid.Columns);
            var inside = -body.Outline.SignedDistance(p, 10);
            if (inside <= 0) continue;
            // The quarter circle x² + y² = r² about a middle r inside and r below the face, and the straight bevel at 45°.
            var into = Math.Max(0, form.Width - inside);
            var taken = form is EdgeForm.Rounded ? form.Width - Math.Sqrt(form.Width * form.Width - into * into) : into;
            Assert.Equal(body.Back.Z(p.X, p.Y) + taken, shape.At(p).Bottom, 9);
            if (into > 0) most = Math.Max(most, body.Back.Z(p.X, p.Y) + Workshop.Guitar.Body.Thickness);
        }
        Assert.True(most > 5, $"the contour is {most} deep at the edge: nothing was tried");
    }
}
