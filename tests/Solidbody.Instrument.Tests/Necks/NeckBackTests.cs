using CsCheck;
using Solidbody.Geometry;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Tests.Necks;

/// <summary>Figures of our own neck sections: docs/shapes.md, data/shapes.json.</summary>
public class NeckBackTests
{
    public static TheoryData<string> Profiles => ["C", "D", "U", "V", "asymmetric"];

    internal static NeckBack Build(string profile)
    {
        var p = Shape.Neck.GetProperty("parameters");
        var board = p.Number("boardThickness");
        return new()
        {
            Profile = NeckProfile.Named(profile)!,
            Scale = p.Number("scaleLength"),
            HalfWidthNut = p.Number("halfWidthNut"),
            HalfWidthGain = p.Number("halfWidthGainPerMm"),
            DepthAtFret1 = p.Number("thicknessFret1") - board,
            DepthAtFret12 = p.Number("thicknessFret12") - board,
            Bow = p.Number("bow"),
            Lip = p.Number("lip"),
            HeelX = p.Number("heelX"),
            HeelDepth = p.Number("heelDepth"),
            HeelBlendCentre = p.Number("heelBlendCentre"),
            HeelBlendEdgeExtra = p.Number("heelBlendEdgeExtra"),
            HeadThickness = p.Number("headstockThickness"),
            HeadAngle = p.Degrees("headAngleDeg"),
            Head = new(p.Number("headBlendStartCentre"), p.Number("headBlendStartEdge"), p.Number("headBlendEndCentre"), p.Number("headBlendEndEdge"), p.Number("voluteAt"), p.Number("voluteHalfLength")),
            VoluteHeight = p.Number("voluteHeight"),
        };
    }

    [Theory, MemberData(nameof(Profiles))]
    public void Depth_and_slopes_agree_at_every_sample(string profile)
    {
        var back = Build(profile);
        foreach (var s in Shape.Neck.GetProperty("profiles").GetProperty(profile).GetProperty("samples").EnumerateArray())
        {
            var (depth, dx, dy) = back.At(s.Number("x"), s.Number("y"));
            Assert.Equal(s.Number("depth"), depth, 1e-5);
            Assert.Equal(s.Number("dx"), dx, 2e-6);
            Assert.Equal(s.Number("dy"), dy, 2e-6);
        }
    }

    [Theory, MemberData(nameof(Profiles))]
    public void Sections_have_their_area_edge_angles_and_wood_under_the_rod(string profile)
    {
        var back = Build(profile);
        foreach (var (key, fret) in ((string, int)[])[("fret1", 1), ("fret12", 12)])
        {
            var s = Shape.Neck.GetProperty("profiles").GetProperty(profile).GetProperty("sections").GetProperty(key);
            var x = FretTable.Position(back.Scale, fret);
            var b = back.HalfWidth(x);
            Assert.Equal(s.Number("halfWidth"), b, 1e-4);
            Assert.Equal(s.Number("apexY"), back.ApexY(x), 0.006);
            Assert.Equal(s.Number("depth"), back.Depth(x, back.ApexY(x)), 0.006);
            const int n = 20_000;
            Assert.Equal(s.Number("area"), Enumerable.Range(0, n).Sum(i => back.Depth(x, -b + (i + 0.5) * 2 * b / n)) * 2 * b / n, 0.02);
            Assert.Equal(s.Number("edgeAngleDegBass"), double.RadiansToDegrees(Math.Atan(back.At(x, -b * (1 - 1e-9)).AlongY)), 0.02);
            Assert.Equal(s.Number("edgeAngleDegTreble"), double.RadiansToDegrees(Math.Atan(-back.At(x, b * (1 - 1e-9)).AlongY)), 0.02);
            Assert.Equal(s.Number("woodUnderRod"), Math.Min(back.Depth(x, 3), back.Depth(x, -3)) - 10, 0.006);
        }
    }

    [Theory, MemberData(nameof(Profiles))]
    public void Girth_agrees(string profile)
    {
        // The wood a hand goes round: the section's curve and both upright lips.
        var back = Build(profile);
        foreach (var (key, fret) in ((string, int)[])[("fret1", 1), ("fret12", 12)])
        {
            var x = FretTable.Position(back.Scale, fret);
            const int n = 4_000;
            // Places crowd toward the edges, where the section stands steep.
            Point2 At(int i)
            {
                var y = -back.HalfWidth(x) * Math.Cos(Math.PI * i / n);
                return new(y, back.Depth(x, y));
            }
            var curve = Enumerable.Range(0, n).Sum(i => At(i).DistanceTo(At(i + 1)));
            Assert.Equal(Shape.Neck.GetProperty("profiles").GetProperty(profile).GetProperty("sections").GetProperty(key).Number("girth"), curve + 2 * back.Lip, 0.02);
        }
    }

    [Theory, MemberData(nameof(Profiles))]
    public void Tightest_hollow_and_least_wood_under_the_rod_agree(string profile)
    {
        var (back, expected) = (Build(profile), Shape.Neck.GetProperty("profiles").GetProperty(profile));
        Assert.Equal(expected.Number("leastInsideRadius"), NeckHollows.Tightest(back, -110).Radius, 0.05);
        // Channel 6 mm wide and 10 mm deep, from 8 mm behind the nut to the heel.
        var wood = Enumerable.Range(0, 2 * 377 + 1).Select(i => 8 + i / 2.0).Min(x => Math.Min(back.Depth(x, 3), back.Depth(x, -3)) - 10);
        Assert.Equal(expected.Number("woodUnderRodLeast"), wood, 0.006);
    }

    [Theory, MemberData(nameof(Profiles))]
    public void The_search_from_coarse_to_fine_misses_no_hollow(string profile) =>
        // Scalar twin: every millimetre, 33 places across, no refinement; it can only find less.
        Gen.Select(Gen.Double[0, 2.5], Gen.Double[0, 6], Gen.Double[24, 60]).Sample((volute, drop, blend) =>
        {
            var back = Build(profile) with { VoluteHeight = volute, HeadDrop = drop, HeadAngle = 0, HeelBlendCentre = blend };
            var dense = double.PositiveInfinity;
            for (var x = -60.0; x < back.HeelX; x++)
                for (var i = 0; i <= 32; i++) dense = Math.Min(dense, 1 / Math.Max(1e-9, NeckHollows.At(back, new(x, 0.985 * (i / 16.0 - 1) * back.HalfWidth(x)))));
            return NeckHollows.Tightest(back, -60).Radius <= dense * 1.002;
        }, iter: 4);

    [Theory, MemberData(nameof(Profiles))]
    public void Slopes_agree_with_central_differences_of_depth(string profile)
    {
        var back = Build(profile) with { Bow = 0.6, HeadDrop = 3 };
        const double h = 1e-4;
        Gen.Double[-100, 440].Select(Gen.Double[-0.97, 0.97]).Sample((x, e) =>
        {
            var y = e * back.HalfWidth(x);
            var (_, dx, dy) = back.At(x, y);
            return Math.Abs((back.Depth(x + h, y) - back.Depth(x - h, y)) / (2 * h) - dx) < 1e-5
                && Math.Abs((back.Depth(x, y + h) - back.Depth(x, y - h)) / (2 * h) - dy) < 1e-5;
        });
    }

    [Theory, MemberData(nameof(Profiles))]
    public void No_ridge_or_crease_where_shaft_heel_and_headstock_join(string profile)
    {
        // Slopes change by no more than the surface's curvature allows from step to step, every step looked at: a crease would jump.
        var back = Build(profile);
        for (var e = -0.95; e <= 0.951; e += 0.1)
            for (var x = -60.0; x < 440; x += 0.02)
            {
                var (y, next) = (e * back.HalfWidth(x), e * back.HalfWidth(x + 0.02));
                var (a, b) = (back.At(x, y), back.At(x + 0.02, next));
                if (Math.Abs(a.AlongX - b.AlongX) > 0.008 || Math.Abs(a.AlongY - b.AlongY) > 0.008) Assert.Fail($"crease at x {x}, y {y}: {a} to {b}");
            }
    }
}
