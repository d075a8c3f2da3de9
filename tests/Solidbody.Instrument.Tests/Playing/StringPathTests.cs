using Solidbody.Findings;
using Solidbody.Instrument.Playing;

namespace Solidbody.Instrument.Tests.Playing;

/// <summary>The strings' way over nut and saddle, against sums done by hand.</summary>
public class StringPathTests
{
    private static InstrumentDefinition G => Workshop.Guitar;
    private static InstrumentDefinition Head(Func<HeadstockDefinition, HeadstockDefinition> change) => G with { Headstock = change(G.Headstock) };
    private static InstrumentDefinition Bridge(Func<BridgeDefinition, BridgeDefinition> change) => G with { Body = G.Body with { Bridge = change(G.Body.Bridge) } };
    private static StringPath First(InstrumentDefinition d) => StringPath.Of(d, StringLay.Of(d))[0];
    private static double Degrees(double angle) => double.RadiansToDegrees(angle);

    /// <summary>Flat board, straight neck: heights are the file's own.</summary>
    private static InstrumentDefinition Plain => Head(h => h with { Drop = 4, PostHeight = 7, FirstPost = 34 }) with
    {
        Action = new() { Relief = 0, At12Bass = 2.0, NutHeight = 0.4 },
        Fretboard = G.Fretboard with { RadiusAtNut = 1e6, RadiusAtLastFret = 1e6 },
    };

    /// <remarks>By hand: board 6.35 + fret 1.1 + nut 0.4 + drop 4 − post 7 = 4.85 down on 34 along (and 0.455 across: 34.003): 8.1176°.
    /// The speaking length rises 3.2 (saddle 3.6, nut 0.4) on 635: 0.2887°. Together 8.4063°.</remarks>
    [Fact]
    public void The_bend_over_the_nut_is_the_fall_to_the_post() => Assert.Equal(8.4063, Degrees(First(Plain).NutBreak), 0.002);

    /// <remarks>By hand: saddle 14.1 over the body, held 2.5 over it and 16 behind: 11.6 on 16 is 35.9424°; 0.2887° of rise more.</remarks>
    [Fact]
    public void The_bend_over_the_saddle_is_the_fall_to_where_it_is_held() => Assert.Equal(36.2311, Degrees(First(Plain).SaddleBreak), 0.002);

    /// <remarks>By hand, headstock leaning 13° from 5.5 behind the nut (nut 5, shelf 0.5), first post 34 along the face, string 7 off it: 28.5 on the slope.
    /// Down: 28.5·sin − 7·cos = 6.41110 − 6.82059 = −0.40949, so 7.85 − 0.40949 = 7.44051. Along: 5.5 + 28.5·cos + 7·sin = 34.8442, and 0.46 across. 12.0535°, and 0.2887°.</remarks>
    [Fact]
    public void A_leaning_headstock_bends_the_strings_without_trees()
    {
        var leaning = Plain with { Headstock = Plain.Headstock with { Drop = 0, Angle = double.DegreesToRadians(13) } };
        Assert.Equal(12.342, Degrees(First(leaning).NutBreak), 0.005);
        Assert.All(StringPath.Of(leaning, StringLay.Of(leaning)), p => Assert.Null(p.Tree));
        Assert.DoesNotContain(Designer.Design(leaning).Findings, f => f.Code is "PATH-01" or "PATH-02" or "PATH-03");
    }

    [Fact] // A leaning neck brings the string down on the saddle by so much more, besides raising the saddle.
    public void A_leaning_neck_bends_the_string_more_over_the_saddle()
    {
        var leaning = Plain with { Body = Plain.Body with { Pocket = Plain.Body.Pocket with { Angle = double.DegreesToRadians(2), AngleBy = AngleMaking.Floor } } };
        // Saddle 20.0910 (the sum in StringHeightTests): (20.0910 − 2.5)/16 is 47.7119°; 2° and 0.2887° more.
        Assert.Equal(50.0006, Degrees(First(leaning).SaddleBreak), 0.005);
    }

    [Fact] // Statics: two pulls T at an angle φ add up to 2 T sin(φ/2). At a right angle √2 T; straight on, nothing.
    public void A_bent_string_presses_with_twice_its_pull_times_the_half_angles_sine()
    {
        Assert.Equal(100 * Math.Sqrt(2), StringPath.Pressed(100, Math.PI / 2, 0)!.Value, 1e-9);
        Assert.Equal(100, StringPath.Pressed(100, 0, Math.PI / 3)!.Value, 1e-9);
        Assert.Equal(0, StringPath.Pressed(100, 0, 0)!.Value, 1e-9);
        Assert.Null(StringPath.Pressed(null, 0.1, 0));
    }

    [Fact] // By hand: three turns of 1.1684 mm take 3.5052 mm of the 7 mm of post; one string's thickness more is 2.3264 mm over the face.
    public void Windings_lower_the_string_at_its_post()
    {
        var strung = Plain with { Tuning = Workshop.SixStrings, Headstock = Plain.Headstock with { Windings = 3 } };
        Assert.Equal(2.3264, First(strung).WindingsLeft, 1e-4);
        // 11.85 − 3.4948 = 8.3552 down on 34.003: 13.8053°, and 0.2887°.
        Assert.Equal(14.0940, Degrees(First(strung).NutBreak), 0.002);
    }

    [Fact]
    public void Splay_is_the_turn_at_the_nut() => Assert.All(StringPath.Of(Head(h => h with { Splay = double.DegreesToRadians(3) }), StringLay.Of(G)), p => Assert.Equal(-3, Degrees(p.NutTurn), 0.05));

    [Fact]
    public void A_tree_stands_where_it_gives_its_string_six_degrees()
    {
        var d = Plain;
        var last = StringPath.Of(d, StringLay.Of(d))[5];
        Assert.True(last.PostBreak < StringPath.LeastAtNut);
        Assert.Equal(6, Degrees(last.NutBreak), 1e-6);
        // 11.85 − 4 = 7.85 down; treble: saddle 2.8, rise 0.2165°: 7.85 / tan(6° − 0.2165°) = 77.51 from the nut.
        Assert.Equal(77.51, last.Tree!.Value.DistanceTo(new(0, G.Nut.StringSpread / 2)), 0.02);
    }

    public static TheoryData<string> Codes => [.. Spoilt.Keys];

    private static readonly Dictionary<string, (InstrumentDefinition Sound, InstrumentDefinition Spoilt)> Spoilt = new()
    {
        ["PATH-01"] = (Head(h => h with { Drop = 12, PostHeight = 3 }), G),
        ["PATH-02"] = (G, Head(h => h with { Trees = false })),
        ["PATH-03"] = (G, Head(h => h with { Drop = 12, PostHeight = 3, FirstPost = 34 })),
        ["PATH-04"] = (G, Head(h => h with { Splay = double.DegreesToRadians(6), FirstPost = 50 })),
        ["PATH-05"] = (G, Bridge(b => b with { HeldAt = 100, HeldHeight = 8 })),
        ["PATH-06"] = (G, Bridge(b => b with { HeldAt = 6 })),
        ["PATH-07"] = (Workshop.Strung, Workshop.Strung with { Headstock = G.Headstock with { Windings = 6 } }),
    };

    [Theory, MemberData(nameof(Codes))]
    public void A_spoilt_figure_is_found(string code) => Fires.OnlyWhenSpoilt(code, Spoilt[code].Sound, Spoilt[code].Spoilt);

    [Fact]
    public void Trees_are_a_note_and_give_every_place() => Assert.Equal(Severity.Notes, Designer.Design(G).Findings.Single(f => f.Code == "PATH-01").Severity);
}
