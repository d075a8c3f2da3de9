using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;

namespace Solidbody.Machining.Tests.Feeds;

public class CutterBeamTests
{
    private static Cutter Flat(double diameter, double flutes, double shank, double stickOut, string material = "carbide") => new()
    { Name = "any", Kind = CutterKind.Straight, Diameter = diameter, FluteLength = flutes, OverallLength = stickOut + 20, ShankDiameter = shank, Flutes = 2, StickOut = stickOut, Material = material };

    // Source: δ = F·L³/(3·E·I), I = π·D⁴/64 (end-loaded cantilever: Wood Handbook FPL-GTR-190, table 9-1, factor 1/3), worked in double precision.
    // A bar of D throughout: the flutes' core is 0.8 of their diameter, so flutes of D/0.8 and a shank of D are one bar.
    [Theory]
    [InlineData(6, 25, 50, "carbide", 0.00682249)]
    [InlineData(3.175, 15, 20, "carbide", 0.00751773)]
    [InlineData(6.35, 38, 50, "carbide", 0.01909781)]
    [InlineData(3, 20, 10, "carbide", 0.01117796)]
    [InlineData(6, 25, 50, "steel", 0.01949282)]
    public void A_bar_of_one_thickness_bends_as_in_the_tables(double diameter, double length, double force, string material, double bent) =>
        Assert.Equal(bent, force * new CutterBeam(Flat(diameter / CutterBeam.CoreShare, length / 2, diameter, length, material)).Compliance(0), 8);

    // Source: as above with two sections, 3 mm over 10 mm before 6 mm over 15 mm, worked by the unit load in double precision: 0.00267441 mm for 10 N.
    [Fact]
    public void A_stepped_bar_bends_as_worked_by_hand() =>
        Assert.Equal(0.00267441, 10 * new CutterBeam(Flat(3 / CutterBeam.CoreShare, 10, 6, 25)).Compliance(0), 8);

    // Source: 0.8⁻⁴ = 2.44140625.
    [Fact]
    public void Flutes_along_the_whole_stick_out_bend_as_a_bar_of_four_fifths() =>
        Assert.Equal(2.44140625, new CutterBeam(Flat(6, 25, 6, 25)).Compliance(0) / (Math.Pow(25, 3) / (3 * 600_000 * Math.PI * Math.Pow(6, 4) / 64)), 9);

    // Source: σ = 32·M/(π·d³) at the clamp, any handbook.
    [Fact]
    public void Stress_is_the_moment_over_the_section_where_that_is_greatest()
    {
        // 12 mm of 2.4 mm core: 12/(π·2.4³/32) = 8.842; at the collet 22/(π·6.35³/32) = 0.875.
        Assert.Equal(12 * 32 / (Math.PI * Math.Pow(2.4, 3)), new CutterBeam(Flat(3, 12, 6.35, 22)).Stress(0), 9);
        Assert.Equal(9 * 32 / (Math.PI * Math.Pow(2.4, 3)), new CutterBeam(Flat(3, 12, 6.35, 22)).Stress(3), 9);
    }

    [Fact] // Against thin slices of the bite, each pushed by its share.
    public void A_push_spread_over_the_bite_bends_as_its_slices_do() => Gen.Select(Any, Gen.Double[0.05, 1]).Sample((cutter, share) =>
    {
        var (beam, depth) = (new CutterBeam(cutter), share * cutter.FluteLength);
        var sliced = Enumerable.Range(0, 500).Average(i => beam.Compliance((i + 0.5) / 500 * depth));
        return Math.Abs(beam.SpreadCompliance(depth) / sliced - 1) < 1e-4;
    });

    private static readonly Gen<Cutter> Any = Gen.Select(Gen.Double[1, 12], Gen.Double[3, 40], Gen.Double[3, 12], Gen.Double[1, 40]).Select((d, flutes, shank, more) => Flat(d, flutes, shank, flutes + more));
    private static readonly Gen<Cutter> Tapered = Gen.Select(Gen.Double[0.2, 1.5], Gen.Double[2, 15], Gen.Double[10, 30], Gen.Double[1, 30])
        .Select((tip, degrees, flutes, more) => Flat(6, flutes, 6, flutes + more) with { Kind = CutterKind.TaperedBallEnd, TipRadius = tip, Angle = degrees * Math.PI / 180 });

    // Independent of the closed form: the same integrals summed over thin slices, from the cutter's measures.
    [Fact]
    public void A_tapered_cutter_bends_as_its_slices_do() => Gen.Select(Tapered, Gen.Double[0, 8]).Sample((cutter, at) =>
    {
        const int slices = 20000;
        var (bend, stress) = (0.0, 0.0);
        for (var i = 0; i < slices; i++)
        {
            var x = (i + 0.5) / slices * cutter.StickOut;
            if (x <= at) continue;
            var apex = 2 * (cutter.TipRadius * Math.Cos(cutter.Angle) - cutter.TipRadius * (1 - Math.Sin(cutter.Angle)) * Math.Tan(cutter.Angle));
            var d = x > cutter.FluteLength ? cutter.ShankDiameter : 0.8 * Math.Min(cutter.Diameter, apex + 2 * x * Math.Tan(cutter.Angle));
            bend += (x - at) * x / (600_000 * Math.PI * Math.Pow(d, 4) / 64) * cutter.StickOut / slices;
            stress = Math.Max(stress, 32 * (x - at) / (Math.PI * d * d * d));
        }
        var beam = new CutterBeam(cutter);
        return Math.Abs(beam.Compliance(at) / bend - 1) < 2e-3 && Math.Abs(beam.Stress(at) / stress - 1) < 2e-2;
    }, iter: 60);

    [Fact]
    public void It_bends_more_the_further_it_is_set_out_and_the_nearer_to_the_tip_it_is_pushed() => Gen.Select(Any, Gen.Double[0.1, 20], Gen.Double[0, 0.5]).Sample((cutter, more, at) =>
    {
        var (beam, longer) = (new CutterBeam(cutter), new CutterBeam(cutter with { StickOut = cutter.StickOut + more }));
        return longer.Compliance(0) > beam.Compliance(0) && longer.Stress(0) >= beam.Stress(0)
            && beam.Compliance(at * cutter.StickOut) <= beam.Compliance(0) && beam.Stress(at * cutter.StickOut) <= beam.Stress(0);
    });
}
