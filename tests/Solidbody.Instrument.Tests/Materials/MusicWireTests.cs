using Solidbody.Materials;

namespace Solidbody.Instrument.Tests.Materials;

public class MusicWireTests
{
    /// <summary>ASTM A228/A228M, least and most tensile strength in 1000 psi by diameter in thousandths of an inch, as re-tabulated by a wire merchant (tensile requirements of its page on tinned music wire).
    /// The page prints 255 for the greatest at 0.036 in, plainly 355; that row is beyond the thickest plain string and left out.</summary>
    [Theory]
    [InlineData(4, 439, 485), InlineData(5, 426, 471), InlineData(6, 415, 459), InlineData(7, 407, 449), InlineData(8, 399, 441), InlineData(9, 393, 434), InlineData(10, 387, 428)]
    [InlineData(11, 382, 422), InlineData(12, 377, 417), InlineData(13, 373, 412), InlineData(14, 369, 408), InlineData(15, 365, 404), InlineData(16, 362, 400), InlineData(18, 356, 393)]
    [InlineData(20, 350, 387), InlineData(22, 345, 382), InlineData(24, 341, 377), InlineData(26, 337, 373), InlineData(28, 333, 368), InlineData(30, 330, 365)]
    public void A_row_of_the_table_comes_back(int mils, int least, int most)
    {
        // 1 lbf/in² = 6.894757293e-3 N/mm².
        var strength = MusicWire.StrengthAt(mils * 0.0254)!.Value;
        Assert.Equal(least * 6.894757293, strength.Least, 5);
        Assert.Equal(most * 6.894757293, strength.Most, 5);
    }

    [Fact] // Half way between 362 and 356 thousand psi.
    public void Between_two_rows_it_is_on_the_straight_line() => Assert.Equal(359 * 6.894757293, MusicWire.StrengthAt(0.017 * 25.4)!.Value.Least, 5);

    [Theory, InlineData(0.10), InlineData(0.77), InlineData(0), InlineData(-1), InlineData(double.NaN), InlineData(double.PositiveInfinity)]
    public void Outside_the_table_it_is_unknown(double diameter) => Assert.Null(MusicWire.StrengthAt(diameter));

    /// <summary>The curve through the same standard, S = 201 kpsi·in^0.145 / d^0.145 (Shigley, table 10-4, quoted in a published solution), keeps within 2 % of the least strengths: two roads to one wire.</summary>
    [Fact]
    public void The_published_curve_keeps_within_two_per_cent() =>
        Assert.All(Enumerable.Range(4, 27), mils => Assert.InRange(MusicWire.StrengthAt(mils * 0.0254)!.Value.Least / (201 * Math.Pow(mils / 1000.0, -0.145) * 6.894757293), 0.98, 1.02));

    [Fact]
    public void Thicker_wire_is_weaker_by_the_area() =>
        Assert.All(Enumerable.Range(41, 259), tenths => Assert.True(MusicWire.StrengthAt((tenths - 1) * 0.00254)!.Value.Least > MusicWire.StrengthAt(tenths * 0.00254)!.Value.Least));
}
