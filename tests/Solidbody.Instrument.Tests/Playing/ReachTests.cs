using Solidbody.Geometry;
using Solidbody.Instrument.Playing;

namespace Solidbody.Instrument.Tests.Playing;

public class ReachTests
{
    private static InstrumentDefinition G => Workshop.Guitar;

    /// <summary>A square body, drawn elsewhere: its treble front at a stated x, a slot beside the neck between y 32 and the horn's wall, ending at x 430.</summary>
    private static Loop Square(double front, double wall) =>
        Loop.Of([new(388, -150), new(800, -150), new(800, 150), new(front, 150), new(front, wall), new(430, wall), new(430, 32), new(388, 32)]);
    private static InstrumentDefinition Drawn(double front, double wall) => G with { Body = G.Body with { Drawn = new(new("square.svg", default), Square(front, wall), []) } };

    [Theory, InlineData("REACH-01"), InlineData("REACH-02"), InlineData("REACH-03")]
    public void A_spoilt_figure_is_found(string code) => Fires.OnlyWhenSpoilt(code, code == "REACH-02" ? G : Drawn(388, 60), code switch
    {
        // The horn's wall 34 from the middle lets no finger past: the body begins at its front, before fret 16.
        "REACH-01" => Drawn(370, 34),
        "REACH-02" => G with { Body = G.Body with { Thickness = 58 } },
        _ => Drawn(388, 46),
    });

    /// <summary>A square body with an upright slot beside the neck, its bottom at x 430: frets by the rule L (1 − 2^(−n/12)), L = 635, so frets 20 (434.99), 21, 22 lie behind it; 19 (423.08) is free.
    /// The board is 43 + 13 x / 462.81 wide: 27.44 from the centre line at fret 19. The strip beside it ends at y 32, the horn's wall stands at y 60.</summary>
    [Fact]
    public void A_square_slot_is_measured_as_drawn()
    {
        var body = Designer.Design(G).Parts[0] with
        {
            Outline = new(Square(388, 60)),
        };
        var treble = Reach.Of(G, body, neckBack: null)[1];
        Assert.Equal(3, treble.FretsOverBody);
        Assert.Equal(430, treble.BottomX, 1e-9);
        Assert.Equal(456.81 - 430, treble.BehindBottom, 0.01);
        Assert.Equal(28, treble.Room!.Value, 1e-9);
        // Body 44.45, pocket 16, heel 19.05, board 6.35.
        Assert.Equal(44.45 - 16 + 19.05 + 6.35, treble.Thickness, 1e-9);
        // No slot on the bass side: the body begins at x 388, behind fret 16 (383.00) and before fret 17 (397.15); nothing to be narrow.
        var bass = Reach.Of(G, body, neckBack: null)[0];
        Assert.Equal((6, null), (bass.FretsOverBody, bass.Room));
    }

    /// <summary>A body that begins behind the last fret: the hand passes the neck alone, 22.5 mm with its board at fret 12 and a blend into the heel beyond.</summary>
    [Fact]
    public void Where_the_last_fret_stands_free_only_the_neck_is_passed()
    {
        var design = Designer.Design(G);
        var body = design.Parts[0] with { Outline = new(Shapes.Rectangle(new(650, 0), 360, 300)) };
        Assert.All(Reach.Of(G, body, design.Parts[1].Back), r =>
        {
            Assert.Equal(0, r.FretsOverBody);
            Assert.True(r.BehindBottom < 0);
            Assert.InRange(r.Thickness, 22.5, 19.05 + 6.35);
        });
    }

    [Fact]
    public void A_left_handed_guitar_reaches_as_its_right_handed_sister() =>
        Assert.Equal(Designer.Design(G).Figures.Reach.AsEnumerable(), Designer.Design(G with { Hand = Hand.Left }).Figures.Reach);
}
