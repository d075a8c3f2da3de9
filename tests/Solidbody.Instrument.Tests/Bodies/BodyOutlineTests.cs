using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Tests.Bodies;

/// <summary>Every figure comes from the tables of our own outline family (docs/shapes.md, data/shapes.json), worked out apart from this code.</summary>
public class BodyOutlineTests
{
    public static TheoryData<string> Families => ["symmetric", "offset", "single", "bass", "travel"];

    private static NeckJoint Joint(string family)
    {
        var p = Shape.Body(family).GetProperty("parameters");
        return new(p.Number("scaleLength"), FretTable.Position(p.Number("scaleLength"), p.Number("frets")) + p.Number("heelBeyondLastFret"), p.Number("pocketLength"), p.Number("pocketWidth"));
    }

    private static BodyOutline Build(string family)
    {
        var (outline, findings) = BodyOutline.Build(Shape.Outline(family), Joint(family));
        Assert.Empty(findings);
        return outline!;
    }

    [Theory, MemberData(nameof(Families))]
    public void Control_points_agree_to_four_decimals(string family)
    {
        var expected = Shape.Body(family).Points("controlPoints");
        var got = Build(family).Curve.Controls;
        Assert.Equal(expected.Length, got.Length);
        for (var i = 0; i < got.Length; i++) Assert.True(got[i].DistanceTo(expected[i]) < 1e-4, $"{Shape.Body(family).GetProperty("controlPointNames")[i]}: {got[i]}, not {expected[i]}");
    }

    [Theory, MemberData(nameof(Families))]
    public void Area_perimeter_and_bounds_agree(string family)
    {
        var check = Shape.Body(family).GetProperty("check");
        var loop = Loop.Of(Build(family).Curve.Flatten(1e-5));
        Assert.Equal(check.Number("area"), loop.SignedArea, 0.2);       // positive: counter-clockwise
        Assert.Equal(check.Number("perimeter"), loop.Perimeter, 0.02);
        Assert.Equal(check.Number("xMin"), loop.Bounds.X0, 0.006);
        Assert.Equal(check.Number("xMax"), loop.Bounds.X1, 0.006);
        Assert.Equal(check.Number("yMin"), loop.Bounds.Y0, 0.006);
        Assert.Equal(check.Number("yMax"), loop.Bounds.Y1, 0.006);
    }

    [Theory, MemberData(nameof(Families))]
    public void Least_radii_and_inflections_agree(string family)
    {
        var check = Shape.Body(family).GetProperty("check");
        var curve = Build(family).Curve;
        var bends = Enumerable.Range(0, curve.Spans).SelectMany(s => Enumerable.Range(0, 200).Select(i => curve.Curvature(s, i / 200.0))).ToArray();
        Assert.Equal(check.Number("leastInsideRadius"), -1 / bends.Min(), 0.02);
        Assert.Equal(check.Number("leastOutsideRadius"), 1 / bends.Max(), 0.02);
        var signs = bends.Where(k => Math.Abs(k) > 2e-4).Select(Math.Sign).ToArray();
        var changes = Enumerable.Range(0, signs.Length).Count(i => signs[i] != signs[(i + 1) % signs.Length]);
        Assert.Equal((int)check.Number("inflections"), changes);
    }

    [Theory, MemberData(nameof(Families))]
    public void Stations_and_angles_agree(string family)
    {
        var outline = Build(family);
        Assert.Equal(Shape.Body(family).Number("shoulderX"), Joint(family).ShoulderX, 1e-4);
        Assert.Equal(Shape.Body(family).Number("tailRadius"), outline.TailRadius, 1e-3);
        foreach (var side in (OutlineSide[])[outline.Treble, outline.Bass])
        {
            var s = Shape.Body(family).GetProperty("stations").GetProperty(side.Name);
            Assert.True(side.LowerBout.DistanceTo(s.GetProperty("lowerBout").Point()) < 1e-4);
            Assert.True(side.Waist.DistanceTo(s.GetProperty("waist").Point()) < 1e-4);
            Assert.True(side.UpperBout.DistanceTo(s.GetProperty("upperBout").Point()) < 1e-4);
            Assert.Equal(s.Number("lowerBoutRadius"), side.LowerBoutRadius, 1e-3);
            Assert.Equal(s.Number("waistRadius"), side.WaistRadius, 1e-3);
            Assert.Equal(s.Number("upperBoutRadius"), side.UpperBoutRadius, 1e-3);
            if (side.Horn is not { } horn) continue;
            Assert.True(horn.Tip.DistanceTo(s.GetProperty("hornTip").Point()) < 1e-4);
            Assert.True(horn.CutawayBottom.DistanceTo(s.GetProperty("cutawayBottom").Point()) < 1e-4);
            Assert.Equal(s.Number("outerFlankDeg"), double.RadiansToDegrees(horn.OuterFlankAngle), 1e-4);
            Assert.Equal(s.Number("innerFlankDeg"), double.RadiansToDegrees(horn.InnerFlankAngle), 1e-4);
            Assert.Equal(s.Number("innerFlankLength"), horn.InnerFlankLength, 1e-4);
            Assert.Equal(s.Number("neckFlankLength"), horn.NeckFlankLength, 1e-4);
            Assert.Equal(s.Number("cornerRadiusUsed"), horn.CornerRadius, 1e-4);
        }
    }

    [Theory, MemberData(nameof(Families))]
    public void Clearances_to_the_edge_agree(string family)
    {
        var body = Shape.Body(family);
        var (check, hardware) = (body.GetProperty("check").GetProperty("clearanceToEdge"), body.GetProperty("hardwareUsedForChecks"));
        var plan = new Region(Loop.Of(Build(family).Curve.Flatten(1e-4)));
        double Clear(Point2 centre, double length, double width, double turn, double corner = 0) =>
            Shapes.Rectangle(centre, length, width, corner, turn).Points.Min(p => -plan.SignedDistance(p));
        var n = 0;
        foreach (var p in hardware.GetProperty("pickupCavities").EnumerateArray())
            Assert.Equal(check.Number($"pickup cavity {++n}"), Clear(new(p.Number("centreX"), 0), p.Number("alongX"), p.Number("alongY"), 0), 0.02);
        var b = hardware.GetProperty("bridgePlate");
        Assert.Equal(check.Number("bridge"), Clear(new((b.Number("x0") + b.Number("x1")) / 2, 0), b.Number("x1") - b.Number("x0"), 2 * b.Number("halfWidth"), 0), 0.02);
        // The control cavity of the table has round ends.
        var c = hardware.GetProperty("controlCavity");
        Assert.Equal(check.Number("control cavity"), Clear(new(c.Number("centreX"), c.Number("centreY")), c.Number("length"), c.Number("width"), c.Degrees("angleDeg"), c.Number("width") / 2), 0.02);
    }

    [Theory, MemberData(nameof(Families))]
    public void Wall_beside_the_pocket_agrees(string family)
    {
        var (outline, joint, half) = (Build(family).Curve.Flatten(1e-4), Joint(family), Shape.Body(family).GetProperty("parameters").Number("pocketWidth") / 2);
        // The mouth's corners are round: the table's wall begins behind them, at 0.8 of the wanted corner radius, found there to a twentieth of a millimetre.
        foreach (var (side, sign) in ((string, int)[])[("treble", 1), ("bass", -1)])
        {
            const double corner = 7, found = 0.05, rounded = 0.02;
            double WallFrom(double x) => outline.Where(p => p.X >= x && p.X <= joint.HeelEnd && sign * p.Y > half).Min(p => sign * p.Y) - half;
            var behind = joint.ShoulderX + 0.8 * corner;
            Assert.InRange(Shape.Body(family).GetProperty("check").GetProperty("pocketSideWall").Number(side), WallFrom(behind - found) - rounded, WallFrom(behind + found) + rounded);
        }
    }

    [Fact]
    public void A_rule_that_is_broken_names_its_measure()
    {
        var (outline, findings) = BodyOutline.Build(Shape.Outline("offset") with { WaistWidth = 325 }, Joint("offset"));
        Assert.Null(outline);
        Assert.Contains(findings, f => f.Code == "OUTLINE-01" && f.Figure.Contains("waist inside the lower bout", StringComparison.Ordinal) && f.Remedy.Contains("narrow the waist", StringComparison.Ordinal));
    }
}
