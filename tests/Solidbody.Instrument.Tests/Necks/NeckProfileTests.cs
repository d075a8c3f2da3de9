using CsCheck;
using Solidbody.Instrument.Checks;
using Solidbody.Instrument.Files;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Tests.Necks;

/// <summary>Sections of any measures, and one that turns into another along the neck.</summary>
public class NeckProfileTests
{
    private static readonly Gen<NeckProfile> Convex =
        Gen.Select(Gen.Double[1.2, 4], Gen.Double[1, 4], Gen.Double[0.8, 0.985], Gen.Double[-0.2, 0.2]).Select((p, q, c, a) => new NeckProfile(p, q, c, 0.05, a)).Where(p => ProfileChecks.Hollow(p) is null);

    private static NeckBack Turning(NeckProfile first, NeckProfile second) => NeckBackTests.Build("C") with { Profile = first, ProfileAt12 = second, HeadDrop = 2, Bow = 0.4 };

    [Fact]
    public void Slopes_agree_with_central_differences_while_the_section_turns() => Gen.Select(Convex, Convex, Gen.Double[-80, 430], Gen.Double[-0.95, 0.95]).Sample((first, second, x, e) =>
    {
        const double h = 1e-4;
        var back = Turning(first, second);
        var y = e * back.HalfWidth(x);
        var (_, dx, dy) = back.At(x, y);
        return Math.Abs((back.Depth(x + h, y) - back.Depth(x - h, y)) / (2 * h) - dx) < 1e-4
            && Math.Abs((back.Depth(x, y + h) - back.Depth(x, y - h)) / (2 * h) - dy) < 1e-4;
    }, iter: 2000);

    [Fact] // G2: the second derivative along x, too, meets on both sides of frets 1 and 12, where the turning begins and ends.
    public void The_turning_begins_and_ends_without_a_step_in_curvature() => Gen.Select(Convex, Convex, Gen.Double[-0.9, 0.9]).Sample((first, second, e) =>
    {
        var back = Turning(first, second) with { HeelBlendCentre = 20, HeelBlendEdgeExtra = 0 };
        return ((double[])[FretTable.Position(back.Scale, 1), FretTable.Position(back.Scale, 12)]).All(x =>
        {
            var y = e * back.HalfWidth(x);
            double Bend(double at) => (back.At(at + 0.01, y).AlongX - back.At(at - 0.01, y).AlongX) / 0.02;
            return Math.Abs(Bend(x + 0.02) - Bend(x - 0.02)) < 2e-4;
        });
    }, iter: 300);

    [Fact]
    public void Every_section_between_two_convex_ones_is_convex() => Gen.Select(Convex, Convex, Gen.Double[36, 317]).Sample((first, second, x) =>
    {
        var back = Turning(first, second);
        var before = double.PositiveInfinity;
        for (var e = -0.985; e <= 0.985; e += 0.01)
        {
            var slope = back.At(x, e * back.HalfWidth(x)).AlongY;
            if (slope > before + 1e-9) return false;
            before = slope;
        }
        return true;
    }, iter: 200);

    [Fact]
    public void At_frets_1_and_12_it_is_the_stated_section_as_thick_as_stated() => Gen.Select(Convex, Convex).Sample((first, second) =>
    {
        var (back, x1, x12) = (Turning(first, second), FretTable.Position(635, 1), 635 / 2.0);
        return Math.Abs(back.Depth(x1, back.ApexY(x1)) - back.DepthAtFret1) < 1e-9 && Math.Abs(back.Depth(x12, back.ApexY(x12)) - back.DepthAtFret12) < 1e-9;
    }, iter: 100);

    [Fact] // Symmetric families are convex for every p and q from 1 (docs/shapes.md).
    public void An_apex_in_the_middle_is_always_convex() => Gen.Select(Gen.Double[1, 4], Gen.Double[1, 4], Gen.Double[0.8, 0.99], Gen.Double[0.02, 0.3]).Sample((p, q, c, eps) =>
        ProfileChecks.Hollow(new(p, q, c, eps, 0)) is null, iter: 500);

    [Fact]
    public void A_file_may_say_both_sections_and_their_measures()
    {
        const string head = "units = \"mm\"\nname = \"x\"\nscale = 635\n[neck]\n";
        var plain = InstrumentFile.Read(head, "x").Good.Neck;
        Assert.True(plain is { Section: null, SectionAt12: null, Profile: "C" });
        var turning = InstrumentFile.Read(head + "profile_at_fret_12 = \"D\"\n[neck.section_at_fret_12]\napex = -0.1\n", "x").Good.Neck;
        Assert.Equal(NeckProfile.Named("D")! with { }, new NeckProfile(turning.SectionAt12!.P, turning.SectionAt12.Q, turning.SectionAt12.C, turning.SectionAt12.Epsilon, 0));
        Assert.Equal(-0.1, turning.SectionAt12.Apex);
        var fuller = InstrumentFile.Read(head + "[neck.section]\nshoulders = 2.6\n", "x").Good.Neck;
        Assert.True(fuller is { Section.Q: 2.6, Section.P: 2.0, SectionAt12: null });
    }
}
