using CsCheck;

namespace Solidbody.Geometry.Tests;

public class TwoPinsTests
{
    /// <summary>Worked by hand from plane geometry: asin(c/L) in radians, and c·a/L where it passes c/2.</summary>
    [Theory]
    [InlineData(0.05, 400, 1.25e-4, 200, 0.0250)]
    [InlineData(0.05, 400, 1.25e-4, 300, 0.0375)]
    [InlineData(0.10, 300, 3.33333e-4, 150, 0.0500)]
    [InlineData(0.02, 500, 4.0e-5, 100, 0.0100)]
    [InlineData(0.05, 150, 3.33333e-4, 250, 0.0833333)]
    [InlineData(0.02 + 0.05, 400, 1.75e-4, 0, 0.035)]   // two interfaces: their plays add up
    public void Turn_and_offset_follow_plane_geometry(double play, double baseline, double turn, double at, double offset)
    {
        Assert.Equal(turn, TwoPins.MostTurn(play, baseline), 5e-10);
        Assert.Equal(offset, TwoPins.MostOffset(play, baseline, at), 5e-8);
    }

    [Fact]
    public void No_way_of_lying_on_the_pins_goes_further() => Gen.Select(Gen.Double[0.01, 0.3], Gen.Double[100, 700], Gen.Double[0, 1], Gen.Double[-1, 1], Gen.Double[-1, 1])
        .Sample((play, baseline, part, first, second) =>
        {
            // Each hole may lie anywhere within half the play of its pin; the point moves on the line through both.
            var (a, b) = (first * play / 2, second * play / 2);
            var at = part * baseline;
            var offset = Math.Abs((a + b) / 2 + (b - a) / baseline * at);
            return offset <= TwoPins.MostOffset(play, baseline, at) + 1e-9;
        });

    [Fact]
    public void A_play_as_long_as_the_baseline_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => TwoPins.MostTurn(10, 10));
}
