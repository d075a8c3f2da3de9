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

    [Fact]
    public void An_edge_in_a_contour_takes_only_what_still_stands_there()
    {
        var design = Designer.Design(Workshop.Guitar with { Body = Workshop.Guitar.Body with { ArmContour = Arm, BellyContour = Belly } });
        var body = design.Part("body");
        var (shape, bare) = (new PartShape(body), new PartShape(body with { EdgeRounds = [] }));
        var grid = Grid.Over(body.Bounds.Plan, 4.3);
        for (var i = 0; i < grid.Count; i++)
        {
            var p = grid.Centre(i % grid.Columns, i / grid.Columns);
            var (with, without) = (shape.At(p), bare.At(p));
            if (with.IsEmpty) continue;
            Assert.True(with.Top <= without.Top && with.Top >= without.Top - 6.35 - 1e-9);
            if (without.Top < -6.36) Assert.Equal(without.Top, with.Top);
        }
    }
}
