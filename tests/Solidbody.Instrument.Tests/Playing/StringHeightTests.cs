using CsCheck;
using Solidbody.Findings;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Playing;

namespace Solidbody.Instrument.Tests.Playing;

/// <summary>The chain from the pocket's floor to the saddles, against sums done by hand and by the laws they obey.</summary>
public class StringHeightTests
{
    private static InstrumentDefinition G => Workshop.Guitar;
    /// <summary>A board so flat that every string lies over the centre line, to 0.001 mm.</summary>
    private static InstrumentDefinition Flat(ActionDefinition action) => G with { Action = action, Fretboard = G.Fretboard with { RadiusAtNut = 1e6, RadiusAtLastFret = 1e6 } };
    private static InstrumentDefinition Leaning(double degrees, AngleMaking by) => Pocket(Flat(new() { Relief = 0 }), p => p with { Angle = double.DegreesToRadians(degrees), AngleBy = by });
    private static InstrumentDefinition Pocket(InstrumentDefinition d, Func<NeckPocketDefinition, NeckPocketDefinition> change) => d with { Body = d.Body with { Pocket = change(d.Body.Pocket) } };
    private static InstrumentDefinition Bridge(InstrumentDefinition d, Func<BridgeDefinition, BridgeDefinition> change) => d with { Body = d.Body with { Bridge = change(d.Body.Bridge) } };
    private static StringHeights Heights(InstrumentDefinition d) => StringHeight.Of(d, StringLay.Of(d)).Heights;

    [Fact] // Straight neck: saddle = 2·(action at 12) − nut, both over the fret tops: 1.6 and 0.4 give 2.8 mm (the straight line through two points).
    public void A_straight_neck_needs_a_saddle_of_twice_the_action_less_the_nut() =>
        Assert.Equal(2.8, StringLay.Of(Flat(new() { Relief = 0, At12Treble = 1.6, NutHeight = 0.4 }))[5].Saddle, 0.001);

    /// <remarks>By hand, band guitar: scale 635, heel 19.05, board 6.35, fret 1.1, pocket 16; nut 0.4; 2.0 at fret 12 bass, 1.6 treble.
    /// Fret tops over the body's front: −16 + 19.05 + 6.35 + 1.1 = 10.5. Saddles over them: 2·2.0 − 0.4 = 3.6 and 2·1.6 − 0.4 = 2.8. Over the front: 14.1 and 13.3.</remarks>
    [Fact]
    public void The_chain_adds_up()
    {
        var heights = Heights(Flat(new() { Relief = 0 }));
        Assert.Equal(14.1, heights.Strings[0].SaddleHeight, 0.001);
        Assert.Equal(13.3, heights.Strings[5].SaddleHeight, 0.001);
        Assert.Equal(2.0, heights.Strings[0].OverFret12, 1e-9);
        Assert.Equal(635, heights.ScaleLine);
        Assert.Equal(3.05, heights.BoardOverBody, 1e-9);
        // Fret 22 at 456.8091: 0.4 + (3.6 − 0.4)·456.8091/635 = 2.7020.
        Assert.Equal(2.7020, heights.Strings[0].OverLastFret, 0.001);
    }

    /// <remarks>By hand, relief 0.2: the free neck is 456.8091 + 6 − 75 = 387.8091 long. Fret tops rise 4·0.2 = 0.8 at the nut, and at fret 12 (317.5)
    /// 0.8·(1 − 317.5/387.8091)² = 0.026295. Saddle over the plane: 2·(0.026295 + 2.0) − (0.8 + 0.4) = 2.85259.
    /// Its hollow half way: chord 0.4, curve 0.8·0.25 = 0.2, so 0.2 deep.</remarks>
    [Fact]
    public void Relief_lowers_the_saddle_that_the_action_needs()
    {
        var d = Flat(new() { Relief = 0.2 });
        Assert.Equal(2.85259, StringLay.Of(d)[0].Saddle, 0.001);
        Assert.Equal(0.2, (NeckLine.Of(d).Height(0) + NeckLine.Of(d).Height(387.8091)) / 2 - NeckLine.Of(d).Height(387.8091 / 2), 1e-6);
    }

    /// <remarks>By hand, leaning 2° on a wedge: sin 0.0348995, cos 0.9993908; from the heel's end 462.8091 to the scale line 172.1909.
    /// −16 + 75·sin 2.617462 + 172.1909·sin 6.009375 + (19.05 + 6.35 + 1.1 + 3.6)·cos 30.081664 = 22.708501.
    /// Scale line: 635 − 172.1909·(1 − cos) 0.104894 − 26.5·sin 0.924837 = 633.970269. A floor that rises lacks the 2.617462.</remarks>
    [Fact]
    public void A_leaning_neck_lifts_the_saddles_and_draws_the_bridge_in()
    {
        var (wedge, floor) = (Heights(Leaning(2, AngleMaking.Wedge)), Heights(Leaning(2, AngleMaking.Floor)));
        Assert.Equal(22.7085, wedge.Strings[0].SaddleHeight, 0.001);
        Assert.Equal(20.0910, floor.Strings[0].SaddleHeight, 0.001);
        Assert.Equal(633.9703, wedge.ScaleLine, 0.0005);
        Assert.Equal(2.6175, wedge.Wedge, 0.0005);
        Assert.Equal(0, floor.Wedge);
    }

    [Fact]
    public void The_bridge_and_its_holes_follow_the_scale_line_of_a_leaning_neck()
    {
        var (level, leaning) = (Body(G), Body(Leaning(2, AngleMaking.Wedge)));
        foreach (var (a, b) in level.Holes.Where(h => h.Name.StartsWith("bridge", StringComparison.Ordinal)).Zip(leaning.Holes.Where(h => h.Name.StartsWith("bridge", StringComparison.Ordinal))))
            Assert.Equal(-1.0297, b.Centre.X - a.Centre.X, 0.0005);
        static Part Body(InstrumentDefinition d) => Designer.Design(d).Part("body");
    }

    [Fact] // 75 mm of heel at 2° is 2.619 mm: the mouth's floor is that much deeper than the heel's end.
    public void A_rising_floor_slopes_as_the_neck_leans()
    {
        var floor = Designer.Design(Leaning(2, AngleMaking.Floor)).Part("body").Pockets.Single(p => p.Name == RoomNames.NeckPocket).Floor;
        Assert.Equal(-16, floor.Z(462.8091, 0), 0.001);
        Assert.Equal(-16 - 2.61906, floor.Z(387.8091, 0), 0.001);
        Assert.Equal(-16, Designer.Design(Leaning(2, AngleMaking.Wedge)).Part("body").Pockets.Single(p => p.Name == RoomNames.NeckPocket).Floor.Z(387.8091, 0));
    }

    [Theory] // By hand: 63 mm between the two places, 63 × tan 2° = 2.2000; 16 mm at the heel's end, 6 × tan 2° = 0.2095 off it.
    [InlineData(2, 16.2095, 18.4095)]
    [InlineData(-1, 15.8953, 14.7956)]
    public void A_sloping_pocket_is_measured_at_both_ends_and_by_its_fall(double degrees, double end, double mouth)
    {
        var body = Designer.Design(Leaning(degrees, AngleMaking.Floor)).Part("body");
        var measures = body.Measures.Where(m => m.Name.StartsWith("neck pocket depth", StringComparison.Ordinal) || m.Caliper is Caliper.Fall).ToList();
        Assert.Equal([mouth, end, Math.Abs(mouth - end)], measures.Select(m => m.Expected), (a, b) => Math.Abs(a - b) < 2e-4);
        Assert.All(measures, m => Assert.Equal(m.Expected, Calipers.Take(new PartShape(body), m.Caliper), 6));
        Assert.DoesNotContain(Designer.Design(Leaning(degrees, AngleMaking.Wedge)).Part("body").Measures, m => m.Caliper is Caliper.Fall);
    }

    [Theory, InlineData(FreeMeasure.Depth), InlineData(FreeMeasure.Angle), InlineData(FreeMeasure.Heel), InlineData(FreeMeasure.Shim), InlineData(FreeMeasure.Bridge)]
    public void Each_free_measure_brings_the_saddles_to_the_middle_of_the_range(FreeMeasure free)
    {
        var solved = 0;
        Gen.Select(Gen.Double[6, 14], Gen.Double[0.5, 4], Gen.Double[14, 22], Gen.Double[180, 600], Gen.Bool).Sample((lowest, action, depth, radius, wedge) =>
        {
            var d = Bridge(Pocket(G, p => p with { Depth = depth, AngleBy = wedge ? AngleMaking.Wedge : AngleMaking.Floor }), b => b with { SaddleLowest = lowest }) with
            {
                Action = new() { At12Bass = action + 0.4, At12Treble = action, Free = free },
                Fretboard = G.Fretboard with { RadiusAtNut = radius, RadiusAtLastFret = 1.2 * radius },
            };
            var (done, findings) = StringHeight.Solve(d);
            if (!findings.IsEmpty) { Assert.Equal(d, done); return; }
            Interlocked.Increment(ref solved);
            var h = Heights(done);
            Assert.Equal((h.LowestSaddle + h.HighestSaddle) / 2, (h.Strings.Min(s => s.SaddleHeight) + h.Strings.Max(s => s.SaddleHeight)) / 2, 1e-9);
        }, iter: 300);
        Assert.True(solved > 30, $"{solved} of 300 solved");
    }

    [Fact]
    public void Out_of_range_each_way_out_says_by_how_much_and_is_right()
    {
        var d = Pocket(G, p => p with { Depth = 12 });
        var remedy = Fires.OnlyWhenSpoilt("HEIGHT-01", G, d).Remedy;
        var chain = new HeightChain(d, StringLay.Of(d));
        Assert.Contains(FormattableString.Invariant($"cut the pocket {chain.TooHigh:0.00} mm deeper, to {12 + chain.TooHigh:0.00} mm"), remedy, StringComparison.Ordinal);
        // Taken at its word the finding is gone.
        Assert.DoesNotContain(Designer.Design(Pocket(d, p => p with { Depth = Math.Round(12 + chain.TooHigh, 2) })).Findings, f => f.Code.StartsWith("HEIGHT", StringComparison.Ordinal));
    }

    [Fact] public void A_measure_that_cannot_be_made_is_refused() => Fires.OnlyWhenSpoilt("HEIGHT-02", G, Bridge(G, b => b with { SaddleLowest = 38 }) with { Action = G.Action with { Free = FreeMeasure.Depth } });

    [Fact] public void Saddles_that_differ_too_much_are_found() => Fires.OnlyWhenSpoilt("HEIGHT-03", G, Bridge(G, b => b with { SaddleRise = 0.5 }));

    [Fact] public void A_nut_cut_too_low_is_found() => Fires.OnlyWhenSpoilt("HEIGHT-04", G, G with { Action = G.Action with { NutHeight = 0, Relief = 0.02 } });

    [Fact] public void Frets_in_the_strings_way_are_found() => Fires.OnlyWhenSpoilt("HEIGHT-05", G, G with { Action = G.Action with { At12Bass = 0.8, At12Treble = 0.8, Relief = 0 } });

    [Fact]
    public void What_was_solved_for_is_told() => Assert.Equal(Severity.Notes, Fires.OnlyWhenSpoilt("HEIGHT-06", G, G with { Action = G.Action with { Free = FreeMeasure.Depth } }).Severity);

    [Fact] // 75 mm at 1°: 1.309 mm.
    public void A_wedge_to_be_made_is_told()
    {
        var leaning = Bridge(Pocket(G, p => p with { Angle = double.DegreesToRadians(1) }), b => b with { SaddleLowest = 14 });
        Assert.Contains("1.31 mm at the heel's end", Fires.OnlyWhenSpoilt("HEIGHT-07", G, leaning).Remedy, StringComparison.Ordinal);
        Assert.DoesNotContain(Designer.Design(Pocket(leaning, p => p with { AngleBy = AngleMaking.Floor })).Findings, f => f.Code == "HEIGHT-07");
    }

    /// <remarks>By hand: straight neck, nut 0.4, saddle 2.8 on 635: pressed at fret 21 (446.2134) the string is 188.7866 long and 2.8 higher at its end;
    /// over fret 22 (456.8091) it has run 10.5957, u = 0.056125, room 0.157151, sin πu = 0.175411, so it may swing 0.8959.</remarks>
    [Fact]
    public void The_swing_that_meets_a_fret_agrees_with_a_sum_by_hand()
    {
        var lay = StringLay.Of(Flat(new() { Relief = 0, At12Treble = 1.6 }))[5];
        var only = lay with { FretX = lay.FretX[20..22], FretTop = [0, 0] };
        Assert.Equal(0.8959, only.Room().Swing, 0.001);
        Assert.Equal((1, 2), (only.Room().Pressed, only.Room().Meets));
    }

    [Fact]
    public void The_default_instrument_lies_within_its_bridge_and_off_its_frets() =>
        Assert.DoesNotContain(Designer.Design(G).Findings, f => f.Code.StartsWith("HEIGHT", StringComparison.Ordinal) && f.Severity != Severity.Notes);
}
