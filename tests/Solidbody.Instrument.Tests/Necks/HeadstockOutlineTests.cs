using Solidbody.Geometry;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Tests.Necks;

/// <summary>Figures of our own headstock family: docs/shapes.md, data/shapes.json.</summary>
public class HeadstockOutlineTests
{
    public static TheoryData<string> Families => ["six in line", "three and three", "two and two bass"];

    private static HeadstockOutline Build(string family)
    {
        var p = Shape.Headstock(family).GetProperty("parameters");
        var strings = new Strings(Shape.Headstock(family).GetProperty("slotY").GetArrayLength(), p.Number("scaleLength"), p.Number("nutSpread"), p.Number("bridgeSpread"));
        return HeadstockOutline.Build(Shape.HeadstockDefinition(family), strings, p.Number("nutWidth"), p.Number("halfWidthGainPerMm"));
    }

    [Theory, MemberData(nameof(Families))]
    public void Posts_and_control_points_agree_to_four_decimals(string family)
    {
        var (headstock, expected) = (Build(family), Shape.Headstock(family));
        Assert.All(headstock.Posts.Zip(expected.Points("posts")), pair => Assert.True(pair.First.DistanceTo(pair.Second) < 1e-4, $"{pair}"));
        Assert.Equal(expected.GetProperty("controlPoints").GetArrayLength(), headstock.Curve.Controls.Length);
        Assert.All(headstock.Curve.Controls.Zip(expected.Points("controlPoints")), pair => Assert.True(pair.First.DistanceTo(pair.Second) < 1e-4, $"{pair}"));
    }

    [Theory, MemberData(nameof(Families))]
    public void Area_length_reach_and_radii_agree(string family)
    {
        var (curve, check) = (Build(family).Curve, Shape.Headstock(family).GetProperty("check"));
        var points = curve.Flatten(1e-5);
        Assert.Equal(check.Number("area"), Math.Abs(new Loop(points).SignedArea), 0.05);
        Assert.Equal(check.Number("outlineLength"), points.Zip(points.Skip(1)).Sum(p => p.First.DistanceTo(p.Second)), 0.01);
        Assert.Equal(check.Number("uMax"), points.Max(p => p.X), 0.006);
        Assert.Equal(check.Number("yMin"), points.Min(p => p.Y), 0.006);
        Assert.Equal(check.Number("yMax"), points.Max(p => p.Y), 0.006);
        var bends = Enumerable.Range(0, curve.Spans).SelectMany(s => Enumerable.Range(0, 201).Select(i => curve.Curvature(s, i / 200.0))).ToArray();
        Assert.Equal(check.Number("leastInsideRadius"), -1 / bends.Min(), 0.02);
        Assert.Equal(check.Number("leastOutsideRadius"), 1 / bends.Max(), 0.02);
    }

    [Theory, MemberData(nameof(Families))]
    public void Strings_keep_their_distance_from_foreign_posts(string family)
    {
        var (h, p) = (Shape.HeadstockDefinition(family), Shape.Headstock(family).GetProperty("parameters"));
        var strings = new Strings(Shape.Headstock(family).GetProperty("slotY").GetArrayLength(), p.Number("scaleLength"), p.Number("nutSpread"), p.Number("bridgeSpread"));
        var gap = Solidbody.Instrument.Checks.HeadChecks.StringGaps(h, strings, Build(family).Posts).Min(g => g.Gap);
        Assert.Equal(Shape.Headstock(family).GetProperty("check").Number("leastStringToForeignPost"), gap, 0.02);
    }

    [Theory, MemberData(nameof(Families))]
    public void Posts_keep_their_distance_from_the_edge(string family)
    {
        var headstock = Build(family);
        var points = headstock.Curve.Flatten(1e-4);
        var region = new Region(Loop.Of(points));
        Assert.Equal(Shape.Headstock(family).GetProperty("check").Number("leastEdgeDistance"), headstock.Posts.Min(p => -region.SignedDistance(p)), 0.02);
    }
}
