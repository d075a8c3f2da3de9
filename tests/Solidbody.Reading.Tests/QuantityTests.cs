using System.Globalization;
using CsCheck;
using Solidbody.Geometry;

namespace Solidbody.Reading.Tests;

public class QuantityTests
{
    static double Read(Quantity quantity, string text)
    {
        Assert.True(quantity.TryRead(text, out var written, out var remedy), remedy);
        return written;
    }

    static string Refused(Quantity quantity, string text)
    {
        Assert.False(quantity.TryRead(text, out var written, out var remedy));
        Assert.Equal(double.NaN, written);
        return remedy;
    }

    /// <summary>1 in = 25.4 mm exactly: international yard and pound agreement, 1959. The products are worked out by hand.</summary>
    [Theory]
    [InlineData("25 in", 635)]
    [InlineData("25.5in", 647.7)]
    [InlineData("1-3/4 in", 44.45)]
    [InlineData("1 3/4\"", 44.45)]
    [InlineData("1-3/4\"", 44.45)]
    [InlineData("3/8\"", 9.525)]
    [InlineData("3/8 in", 9.525)]
    [InlineData("5/8 in", 15.875)]
    [InlineData("1/64 in", 0.396875)]
    [InlineData("1/128 in", 0.1984375)]
    [InlineData("1/3 in", 8.466666666666667)]
    [InlineData("0.023 in", 0.5842)]
    [InlineData("34 in", 863.6)]
    [InlineData("44.5 mm", 44.5)]
    [InlineData("  44.5   mm ", 44.5)]
    [InlineData("-6 mm", -6)]
    [InlineData("-1-1/2 in", -38.1)]
    [InlineData("0 mm", 0)]
    [InlineData("1e1 mm", 10)]
    [InlineData("12", 12)]
    public void A_length_is_the_double_nearest_its_decimal_value(string text, double millimetres) =>
        Assert.Equal(millimetres, Read(Quantity.Length(LengthUnit.Millimetre), text));

    [Theory]
    [InlineData("25", 635)]
    [InlineData("1-3/4", 44.45)]
    [InlineData("1.75", 44.45)]
    [InlineData("44.5 mm", 44.5)]
    public void A_bare_number_takes_the_declared_unit(string text, double millimetres) =>
        Assert.Equal(millimetres, Read(Quantity.Length(LengthUnit.Inch), text));

    /// <summary>Exact by definition: 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s², 0 °C = 32 °F, 100 °C = 212 °F. −40 is the same in both.</summary>
    [Fact]
    public void Other_units_are_the_international_ones()
    {
        Assert.Equal(100, Read(Quantity.Temperature, "212 F"), 12);
        Assert.Equal(0, Read(Quantity.Temperature, "32 F"));
        Assert.Equal(-40, Read(Quantity.Temperature, "-40 F"), 12);
        Assert.Equal(-5.5, Read(Quantity.Temperature, "-5.5 C"));
        Assert.Equal(453.59237, Read(Quantity.Mass, "16 oz"));
        Assert.Equal(453.59237, Read(Quantity.Mass, "1 lb"));
        Assert.Equal(16.018463373960142, Read(Quantity.Density, "1 lb/ft3"), 12);
        Assert.Equal(4.4482216152605, Read(Quantity.Force, "1 lbf"), 12);
        Assert.Equal(6.894757293168361, Read(Quantity.Stress, "1000 psi"), 12);
        Assert.Equal(9500, Read(Quantity.Stress, "9.5 GPa"));
    }

    [Theory]
    [InlineData("44,5 mm", "write a decimal point: `44.5 mm`")]
    [InlineData("2 ft", "give it in mm, in or \"")]
    [InlineData("2 cm", "give it in mm, in or \"")]
    [InlineData("3/8", "a fraction is for inches: write `3/8 in`, or a decimal number")]
    [InlineData("3/8 mm", "a fraction is for inches: write `3/8 in`, or a decimal number")]
    [InlineData("9/8 in", "write a whole number and a proper fraction, such as `1-3/4 in`")]
    [InlineData("1-0/4 in", "write a whole number and a proper fraction, such as `1-3/4 in`")]
    [InlineData("1/0 in", "use a denominator from 2 to 128")]
    [InlineData("1/256 in", "use a denominator from 2 to 128")]
    [InlineData("1e13 mm", "write a number of a sensible size")]
    [InlineData("1e400 mm", "write a number of a sensible size")]
    [InlineData("", "write it as `44.5 mm`, `1-3/4 in`, `0.023 in`")]
    [InlineData("mm", "write it as `44.5 mm`, `1-3/4 in`, `0.023 in`")]
    [InlineData("nan", "write it as `44.5 mm`, `1-3/4 in`, `0.023 in`")]
    [InlineData("inf mm", "write it as `44.5 mm`, `1-3/4 in`, `0.023 in`")]
    [InlineData("1 2 mm", "write it as `44.5 mm`, `1-3/4 in`, `0.023 in`")]
    [InlineData(".5 mm", "write it as `44.5 mm`, `1-3/4 in`, `0.023 in`")]
    [InlineData("١ mm", "write it as `44.5 mm`, `1-3/4 in`, `0.023 in`")]
    [InlineData("0.00000000000000000000000000000000000000001 mm", "write it shorter, such as `44.5 mm`, `1-3/4 in`, `0.023 in`")]
    public void What_is_no_length_is_refused_with_what_to_write(string text, string remedy) =>
        Assert.Equal(remedy, Refused(Quantity.Length(LengthUnit.Millimetre), text));

    [Fact]
    public void A_bare_number_without_a_declared_unit_is_refused() =>
        Assert.Equal("give its unit: `44.5 mm`, `1-3/4 in`, `0.023 in`", Refused(Quantity.Length(null), "12"));

    public static TheoryData<Quantity, string, double, double> Others => new()
    {   // as written; in the written unit; inside: by hand
        { Quantity.Angle, "180 deg", 180, Math.PI },
        { Quantity.Angle, "-14 deg", -14, -14 * Math.PI / 180 },
        { Quantity.Speed, "2400 mm/min", 2400, 40 },
        { Quantity.Speed, "100 in/min", 2540, 2540 / 60.0 },
        { Quantity.Speed, "40 mm/s", 2400, 40 },
        { Quantity.Acceleration, "300 mm/s2", 300, 300 },
        { Quantity.Acceleration, "10 in/s2", 254, 254 },
        { Quantity.Turning, "18000 rpm", 18000, 300 },
        { Quantity.Turning, "18000", 18000, 300 },
        { Quantity.Frequency, "442", 442, 442 },
        { Quantity.Frequency, "440 Hz", 440, 440 },
        { Quantity.UnitMass, "6.8 g/m", 6.8, 0.0068 },
        { Quantity.UnitMass, "0.0068 kg/m", 6.8, 0.0068 },
        // 1 lb = 453.59237 g exactly (1959): 453.59237 g / 25.4 mm = 17857.967322834645 g/m; × 0.00038 by hand.
        { Quantity.UnitMass, "0.00038 lb/in", 6.786027582677165, 0.006786027582677165 },
        { Quantity.Power, "800 W", 800, 800 },
        { Quantity.Power, "1.5 kW", 1500, 1500 },
        { Quantity.CuttingForce, "30 N/mm2", 30, 30 },
    };

    [Theory, MemberData(nameof(Others))]
    public void Other_quantities_read_in_their_units(Quantity quantity, string text, double written, double inside)
    {
        Assert.Equal(written, Read(quantity, text));
        Assert.Equal(inside, quantity.ToInside(Read(quantity, text)), 12);
    }

    [Fact]
    public void Quantities_other_than_lengths_and_spindle_speeds_never_go_without_a_unit() =>
        Assert.All([Quantity.Angle, Quantity.Speed, Quantity.Acceleration, Quantity.Power], q => Assert.StartsWith("give its unit", Refused(q, "14")));

    [Theory]
    [InlineData(44.45, LengthUnit.Inch, "1-3/4 in")]
    [InlineData(9.525, LengthUnit.Inch, "3/8 in")]
    [InlineData(-9.525, LengthUnit.Inch, "-3/8 in")]
    [InlineData(25.4, LengthUnit.Inch, "1 in")]
    [InlineData(0, LengthUnit.Inch, "0 in")]
    [InlineData(0.5842, LengthUnit.Inch, "0.023 in")]
    [InlineData(44.45, LengthUnit.Millimetre, "44.45 mm")]
    [InlineData(-0.0001, LengthUnit.Millimetre, "0 mm")]
    public void A_length_is_shown_as_a_maker_reads_it(double millimetres, LengthUnit unit, string shown) =>
        Assert.Equal(shown, Length.Show(millimetres, unit));

    [Fact] // What is shown on a sixty-fourth reads back to the same double: both are the one nearest n × 25.4 / 64.
    public void Every_rule_mark_reads_back_as_shown() => Gen.Int[0, 64 * 80].Sample(parts =>
    {
        var millimetres = Read(Quantity.Length(null), $"{parts / 64}{(parts % 64 == 0 ? "" : $"-{parts % 64}/64")} in");
        return Read(Quantity.Length(null), Length.Show(millimetres, LengthUnit.Inch)) == millimetres;
    });

    [Fact] // Decimal millimetres up to a metre: the reader and the platform's own correctly rounded parser agree.
    public void Decimal_millimetres_read_as_the_nearest_double() => Gen.Int[-10_000_000, 10_000_000].Sample(n =>
    {
        var text = (n / 10_000m).ToString(CultureInfo.InvariantCulture);
        return Read(Quantity.Length(null), text + " mm") == double.Parse(text, CultureInfo.InvariantCulture);
    });

    [Fact]
    public void Any_text_is_read_or_refused_and_never_throws() => Gen.String[Gen.Char[" 0123456789/-.,+eEinmdegW\"\t²٣"], 0, 50].Sample(text =>
        Quantity.Length(LengthUnit.Inch).TryRead(text, out var value, out var remedy) ? double.IsFinite(value) && remedy == "" : remedy != "");
}
