using CsCheck;

namespace Solidbody.Instrument.Tests;

public class FretTableTests
{
    // Oracle: python3 -c "print(L*(1-2**(-n/12)))", rows for L = 647.7, 628.65, 635 and 863.6 mm; formula: twelve-tone equal temperament,
    // M. P. Varieschi and C. M. Gower, "Intonation and compensation of fretted string instruments", section II.A, from memory.
    public static TheoryData<int, double, double, double, double> Positions => new()
    {
        { 1, 36.3526, 35.2834, 35.6398, 48.4701 },
        { 5, 162.4733, 157.6946, 159.2875, 216.6310 },
        { 7, 215.4121, 209.0765, 211.1883, 287.2162 },
        { 12, 323.8500, 314.3250, 317.5000, 431.8000 },
        { 17, 405.0866, 393.1723, 397.1438, 540.1155 },
        { 22, 465.9453, 452.2411, 456.8091, 621.2604 },
        { 24, 485.7750, 471.4875, 476.2500, 647.7000 },
    };

    [Theory, MemberData(nameof(Positions))]
    public void Frets_stand_where_the_table_says(int fret, double a, double b, double c, double d)
    {
        Assert.Equal(a, FretTable.Position(647.7, fret), 5e-5);
        Assert.Equal(b, FretTable.Position(628.65, fret), 5e-5);
        Assert.Equal(c, FretTable.Position(635, fret), 5e-5);
        Assert.Equal(d, FretTable.Position(863.6, fret), 5e-5);
    }

    [Fact] // The trade's old divisor: scale length divided by 17.817 gives the first fret.
    public void Gap_to_the_first_fret_is_the_scale_over_the_trade_s_divisor() => Assert.Equal(647.7 / 17.817, FretTable.Gap(647.7, 1), 0.001);

    [Fact]
    public void Twice_the_scale_is_twice_the_distance() =>
        Gen.Double[500, 950].Select(Gen.Int[1, 36]).Sample((scale, n) => FretTable.Position(2 * scale, n) == 2 * FretTable.Position(scale, n));

    [Theory] // ISO 16:1975: A4 = 440 Hz; the rest from f = 440 · 2^((m − 69)/12).
    [InlineData(69, 440.0)]
    [InlineData(40, 82.40688923)]
    [InlineData(45, 110.0)]
    [InlineData(64, 329.62755691)]
    [InlineData(23, 30.86770633)]
    public void Open_strings_sound_as_the_table_says(int note, double hertz) => Assert.Equal(hertz, FretTable.Pitch(note), 1e-8);
}
