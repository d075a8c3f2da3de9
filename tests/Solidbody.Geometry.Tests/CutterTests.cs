
namespace Solidbody.Geometry.Tests;

public class CutterTests
{
    private static Cutter Make(CutterKind kind, double diameter, double angle = 0, double tip = 0, double edge = 0) => new()
    {
        Name = "test",
        Kind = kind,
        Diameter = diameter,
        FluteLength = 20,
        OverallLength = 50,
        ShankDiameter = 6,
        Flutes = 2,
        StickOut = 30,
        Angle = angle,
        TipRadius = tip,
        EdgeRadius = edge,
    };

    /// <summary>Every kind at distances from its axis; heights from the figure's own right triangle, closed form.</summary>
    public static TheoryData<CutterKind, double, double, double, double, double, double, string> Heights => new()
    {   // kind, diameter, angle, tip radius, edge radius, r, height, where from
        { CutterKind.UpSpiral, 6, 0, 0, 0, 2.9, 0, "flat end" },
        { CutterKind.BallEnd, 6, 0, 0, 0, 0, 0, "circle: lowest point" },
        { CutterKind.BallEnd, 10, 0, 0, 0, 3, 1, "circle: 5 − √(25 − 9)" },
        { CutterKind.BallEnd, 10, 0, 0, 0, 5, 5, "circle: equator" },
        { CutterKind.Drill, 10, 118 * Math.PI / 180, 0, 0, 5, 3.0043030952, "cone: 5 / tan 59°" },
        { CutterKind.Roundover, 16, 0, 2, 6, 1, 0, "flat tip" },
        { CutterKind.Roundover, 16, 0, 2, 6, 2, 0, "foot of the hollow: upright tangent" },
        { CutterKind.Roundover, 16, 0, 2, 6, 8, 6, "top of the hollow: level tangent" },
        { CutterKind.Roundover, 16, 0, 2, 6, 4.4, 4.8, "hollow: √(36 − 3.6²)" },
        { CutterKind.TaperedBallEnd, 6, 5 * Math.PI / 180, 1, 0, 0.6, 0.2, "ball: 1 − √(1 − 0.36)" },
    };

    [Theory, MemberData(nameof(Heights))]
    public void Height_follows_the_figure(CutterKind kind, double diameter, double angle, double tip, double edge, double r, double height, string source) =>
        Assert.True(Math.Abs(height - Make(kind, diameter, angle, tip, edge).Height(r)) < 1e-9, source);

    [Theory]
    [InlineData(CutterKind.UpSpiral, 0, 0)]
    [InlineData(CutterKind.BallEnd, 0, 0)]
    [InlineData(CutterKind.TaperedBallEnd, 0.2, 1)]
    [InlineData(CutterKind.Drill, 2, 0)]
    public void A_grooves_edge_lies_where_the_cutter_has_the_grooves_height(CutterKind kind, double angle, double tip)
    {
        var cutter = Make(kind, 6, angle, tip);
        foreach (var depth in (double[])[0.05, 0.15, 0.7, 0.9, 2.5])
        {
            var half = cutter.WidthAt(depth) / 2;
            Assert.True(cutter.Height(half - 1e-6) <= depth);
            Assert.True(cutter.Height(half + 1e-6) >= depth);
        }
    }

    [Fact]
    public void The_cone_of_a_tapered_ball_end_leaves_the_ball_without_a_corner()
    {
        var cutter = Make(CutterKind.TaperedBallEnd, 6, 5 * Math.PI / 180, 1);
        var touch = Math.Cos(cutter.Angle);
        var before = (cutter.Height(touch) - cutter.Height(touch - 1e-6)) / 1e-6;
        var after = (cutter.Height(touch + 1e-6) - cutter.Height(touch)) / 1e-6;
        Assert.Equal(before, after, 0.01);
    }

    [Theory]
    [InlineData(CutterKind.BallEnd)]
    [InlineData(CutterKind.Drill)]
    [InlineData(CutterKind.TaperedBallEnd)]
    [InlineData(CutterKind.Roundover)]
    public void Height_never_falls_away_from_the_axis_and_ends_at_the_rim(CutterKind kind)
    {
        var cutter = Make(kind, 16, kind == CutterKind.Drill ? 2 : 0.2, 2, 6);
        for (var r = 0.0; r < 7.99; r += 0.01) Assert.True(cutter.Height(r + 0.01) >= cutter.Height(r));
        Assert.Equal(double.PositiveInfinity, cutter.Height(8.001));
    }
}
