using CsCheck;
using Solidbody.Geometry;
using Solidbody.Instrument.Beams;
using Solidbody.Instrument.Files;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Playing;
using Solidbody.Instrument.Tests.Files;
using Solidbody.Materials;

namespace Solidbody.Instrument.Tests.Playing;

public class NeckBendTests
{
    private static InstrumentDefinition G => Workshop.Strung;
    private static InstrumentDefinition Neck(Func<NeckDefinition, NeckDefinition> change) => G with { Neck = change(G.Neck) };
    private static InstrumentDefinition Rod(Func<RodDefinition, RodDefinition> change) => Neck(n => n with { Rod = change(n.Rod) });
    private static InstrumentDefinition Barred(double modulus) => Neck(n => n with { Bars = new(2, 3, 8, 0, 10.5, 15, 400, modulus) });
    private static NeckBend Bend(InstrumentDefinition d) => Designer.Design(d).Figures.Bend!;

    /// <summary>Sugar maple and Indian rosewood, N/mm²: Wood Handbook FPL-GTR-190, tables 5-3 (as re-tabulated) and 5-5 (from memory).</summary>
    private const double Maple = 12_600, Rosewood = 12_300;

    /// <summary>The other road: the cut parts themselves, column by column across, quite apart from the closed forms of the sections.</summary>
    [Theory, InlineData(false), InlineData(true)]
    public void A_slice_is_what_a_saw_would_show(bool barred)
    {
        var d = barred ? Barred(150_000) : G;
        var design = Designer.Design(d);
        var (neck, board) = (new PartShape(design.Part("neck")), new PartShape(design.Part("fretboard")));
        foreach (var slice in design.Figures.Bend!.Slices.Where(s => s.X is > 20 and < 380))
        {
            // Frets are further than 2 mm from these, or the slot is in the way of the whole board.
            if (Enumerable.Range(1, d.Frets).Any(n => Math.Abs(FretTable.Position(d.Scale, n) - slice.X) < 2) || d.Fretboard.Dots.Frets.Any(n => Math.Abs(Middle(d, n) - slice.X) < 4)) continue;
            var (wood, whole, cut) = (default(AreaMoments), default(AreaMoments), default(AreaMoments));
            const int columns = 4000;
            const double width = 60.0 / columns;
            for (var k = 0; k < columns; k++)
            {
                var at = new Point2(slice.X, -30 + (k + 0.5) * width);
                if (neck.At(at) is { IsEmpty: false } n) wood += AreaMoments.Rectangle(width, n.Bottom, n.Top);
                if (board.At(at) is not { IsEmpty: false } b) continue;
                whole += AreaMoments.Rectangle(width, b.Bottom, b.Top);
                cut += AreaMoments.Rectangle(width, b.Bottom, b.Top - d.Fretboard.SlotDepth);
            }
            var bars = new Member(150_000, barred ? AreaMoments.Rectangle(6, -8, 0) : default);
            var full = CompositeSection.Of(new(Maple, wood), bars, new(Rosewood, whole));
            var slot = CompositeSection.Of(new(Maple, wood), bars, new(Rosewood, cut));
            Assert.Equal(1, slice.Slack.AxialStiffness / full.AxialStiffness, 1e-3);
            Assert.Equal(full.Axis, slice.Slack.Axis, 2e-2);
            Assert.Equal(1, slice.AtSlot.BendingStiffness / slot.BendingStiffness, 2e-3);
            // One slot depth and the slot's own width of each gap between frets is as stiff as at a slot.
            var share = (d.Fretboard.SlotWidth + d.Fretboard.SlotDepth) / ((d.Scale - slice.X) * Math.Log(2) / 12);
            Assert.Equal(1, slice.Slack.BendingStiffness * ((1 - share) / full.BendingStiffness + share / slot.BendingStiffness), 2e-3);
        }
    }

    private static double Middle(InstrumentDefinition d, int fret) => (FretTable.Position(d.Scale, fret - 1) + FretTable.Position(d.Scale, fret)) / 2;

    /// <summary>At the nut each string stands over the axis by board, fret, slot of the nut and half its own gauge, less the board's crown: by hand from the definition.</summary>
    [Fact]
    public void The_moment_at_the_nut_is_each_pull_times_its_height()
    {
        var (bend, strings) = (Bend(G), StringTension.All(G));
        var expected = strings.Select((s, i) =>
        {
            var y = 35.5 * (i / 5.0 - 0.5);
            return s.Pull.Tension * (6.35 + 1.1 + 0.4 - (254 - Math.Sqrt(254 * 254 - y * y)) + s.String.Gauge / 2 - bend.Slices[0].Slack.Axis);
        }).Sum();
        Assert.Equal(expected, bend.Moment[0], 1e-6);
    }

    /// <summary>On a fan each string begins at its own end of the slanting nut.</summary>
    [Fact]
    public void On_a_fan_each_string_rises_from_its_own_nut()
    {
        var d = InstrumentFile.Read(Repository.ReadExample("school-fan-seven.toml"), "fan").Good;
        var (bend, strings, lays, lines) = (Bend(d), StringTension.All(d), StringLay.Of(d), Strings.Of(d));
        var neckRise = 4 * d.Action.Relief;
        var expected = strings.Select((s, i) => s.Pull.Tension * (d.Fretboard.Thickness + d.Fretboard.FretHeight + lays[i].Nut - (lays[i].Saddle - lays[i].Nut) / lays[i].Length * lines.Nut(i).X + s.String.Gauge / 2 - neckRise - bend.Slices[0].Slack.Axis)).Sum();
        Assert.True(lines.Nut(0).X < -1 && lines.Nut(6).X > 1);
        Assert.Equal(expected, bend.Moment[0], 1e-6);
    }

    /// <summary>A neck is no stiffer than its stiffest slice and no softer than its softest: an even one's hollow is M f²/8EI (Roark, cantilever with an end moment, from memory).</summary>
    [Fact]
    public void The_relief_lies_between_those_of_two_even_necks()
    {
        var bend = Bend(G);
        var free = bend.Slices[^1].X;
        Assert.InRange(bend.Relief, bend.Moment.Min() * free * free / 8 / bend.Slices.Max(s => s.Slack.BendingStiffness), bend.Moment.Max() * free * free / 8 / bend.Slices.Min(s => s.Slack.BendingStiffness));
    }

    [Fact]
    public void Twice_the_pull_bends_twice() => Gen.Double[0.5, 3].Sample(by =>
    {
        var heavier = G with { Tuning = Workshop.SixStrings with { Strings = [.. Workshop.SixStrings.Strings.Select(s => s with { UnitMass = by * (s.UnitMass ?? StringPull.SolidMass(s.Gauge, StringPull.SteelDensity)) })] } };
        return Math.Abs(Bend(heavier).Relief / Bend(G).Relief - by) < 1e-9;
    }, iter: 10);

    [Fact]
    public void Another_tuning_bends_by_its_pull()
    {
        var bend = Bend(G);
        for (var shift = -2; shift <= 2; shift++)
        {
            var ratio = Math.Pow(2, shift / 6.0);
            Assert.Equal(bend.Relief * ratio, bend.Retuned[shift + 2].Relief, 9);
            // With the rod left as it is the whole change comes through, but for what the rod itself stiffens.
            if (shift != 0) Assert.InRange(bend.Retuned[shift + 2].Change / (bend.Relief * (ratio - 1)), 0.7, 1);
        }
    }

    /// <summary>Strings and rod together, summed slice by slice: the neck comes to rest at the hollow asked for.</summary>
    [Theory, InlineData(RodKind.DoubleAction), InlineData(RodKind.SingleAction)]
    public void With_the_rods_pull_the_neck_has_the_relief_asked_for(RodKind kind)
    {
        var bend = Bend(Rod(r => r with { Kind = kind }));
        // Two bars of 4.8 mm in 10 mm lie 5.2 mm apart; one lies with its middle 7.6 mm below the glue plane.
        double Counter(NeckSlice s) => kind == RodKind.DoubleAction ? bend.Rod.Pull * 5.2 : bend.Rod.Pull * (s.Slack.Axis + 7.6);
        var (slope, lift, step) = (0.0, 0.0, bend.Slices[1].X - bend.Slices[0].X);
        var lifts = new double[bend.Slices.Length];
        for (var k = bend.Slices.Length - 2; k >= 0; k--)
        {
            var curvature = ((bend.Moment[k] - Counter(bend.Slices[k])) / bend.Slices[k].Slack.BendingStiffness + (bend.Moment[k + 1] - Counter(bend.Slices[k + 1])) / bend.Slices[k + 1].Slack.BendingStiffness) / 2;
            lift += slope * step + curvature * step * step / 2;
            slope += curvature * step;
            lifts[k] = lift;
        }
        Assert.Equal(0.2, lifts[0] / 2 - lifts[20], 1e-3);
        Assert.Equal(0.2, bend.Wanted);
    }

    /// <summary>Wood kept bent at 0.2 mm resists in years with 1/1.6 of what it did (k_def 0.6, EN 1995-1-1, from memory): that part goes over to the rod.</summary>
    [Fact]
    public void In_years_the_rod_takes_over_what_the_wood_gives_up()
    {
        var bend = Bend(G);
        Assert.Equal(bend.Relief * 1.6, bend.ReliefLater, 12);
        Assert.Equal((bend.Relief - 0.2 / 1.6) / (bend.Relief - 0.2), bend.Rod.PullLater / bend.Rod.Pull, 9);
    }

    [Fact]
    public void What_stiffens_a_neck_lessens_its_relief()
    {
        var plain = Bend(G).Relief;
        var (carbon, steel) = (Bend(Barred(NeckIron.Carbon)).Relief, Bend(Barred(NeckIron.Steel)).Relief);
        Assert.True(plain > carbon && carbon > steel);
        Assert.True(Bend(Neck(n => n with { ThicknessAtFret1 = 22, ThicknessAtFret12 = 24 })).Relief < plain);
        Assert.True(Bend(Neck(n => n with { Wood = "mahogany" })).Relief > plain);
        Assert.All(Bend(G).Slices, s => Assert.True(s.Tight.BendingStiffness > s.Slack.BendingStiffness && s.Slack.BendingStiffness > s.AtSlot.BendingStiffness));
    }

    [Fact] // σ = E (M c / EI − N / EA), c from the axis down to the back.
    public void The_backs_stress_is_bending_less_push()
    {
        var (bend, push) = (Bend(G), StringTension.All(G).Sum(s => s.Pull.Tension));
        var worst = bend.Slices.Select((s, k) => Maple * (bend.Moment[k] * (s.Back + s.AtSlot.Axis) / s.AtSlot.BendingStiffness - push / s.AtSlot.AxialStiffness)).Max();
        Assert.Equal(worst, bend.Loads[0].Stress, 1e-2);
        Assert.Equal(109 / worst, bend.Loads[0].Safety!.Value, 1e-1);
    }

    /// <summary>A headstock that leans back in one piece with the shaft is weaker behind the nut by its grain.</summary>
    [Fact]
    public void Grain_that_runs_out_counts_behind_the_nut()
    {
        var leaning = Designer.Design(G with { Headstock = G.Headstock with { Angle = double.DegreesToRadians(13), Drop = 0 } });
        Assert.Equal(109 * leaning.Figures.HeadGrain!.Strength, leaning.Figures.Bend!.Loads[2].Strength!.Value.Value, 9);
    }

    [Fact]
    public void Without_strings_or_stiffness_nothing_is_made_up()
    {
        Assert.Null(Designer.Design(G with { Tuning = null }).Figures.Bend);
        Assert.Null(Designer.Design(G with { Fretboard = G.Fretboard with { Wood = "ebony" } }).Figures.Bend);
    }
}
