using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Solidbody.Geometry;

namespace Solidbody.Reading;

/// <summary>A kind of measured value as people write it: which units it takes, how it reads, how it is shown.
/// A value read is in the kind's own written unit (mm, deg, mm/min, mm/s2, rpm, W, Hz, g/m, C, g, kg/m3, N/mm2, N); <see cref="ToInside"/> takes it to the unit used inside.</summary>
public sealed partial class Quantity
{
    /// <summary>What it is called: <c>length</c>.</summary>
    public string Noun { get; }
    /// <summary>The unit values and bounds are stated in.</summary>
    public string WrittenUnit => _units[0].Word;
    /// <summary>Example forms, for a person who wrote something else.</summary>
    public string Forms { get; }

    readonly ImmutableArray<(string Word, decimal Factor)> _units;
    readonly decimal? _bareFactor;
    readonly (double Times, double Over) _inside;
    readonly LengthUnit _shown;

    /// <summary>What a unit reads where the written unit reads nothing: 32 F.</summary>
    (string Unit, decimal At) Freezing { get; init; }

    Quantity(string noun, string forms, (double, double) inside, decimal? bareFactor, LengthUnit shown, params ImmutableArray<(string, decimal)> units) =>
        (Noun, Forms, _inside, _bareFactor, _shown, _units) = (noun, forms, inside, bareFactor, shown, units);

    /// <summary>International yard and pound agreement, 1959: exact. Millimetres; grams.</summary>
    const decimal Inch = 25.4m, Pound = 453.59237m;
    /// <summary>Newtons: the pound at standard gravity, 9.80665 m/s², exact by definition.</summary>
    const decimal PoundForce = Pound / 1000 * 9.80665m;

    /// <summary>A length; a number without a unit takes the file's declared one.</summary>
    /// <param name="declared">The file's <c>units</c>; null when it declares none.</param>
    public static Quantity Length(LengthUnit? declared) => new("length", "`44.5 mm`, `1-3/4 in`, `0.023 in`", (1, 1),
        declared switch { LengthUnit.Millimetre => 1, LengthUnit.Inch => Inch, _ => null }, declared ?? LengthUnit.Millimetre,
        ("mm", 1), ("in", Inch), ("\"", Inch));

    public static Quantity Angle { get; } = new("angle", "`14 deg`", (Math.PI, 180), null, default, ("deg", 1));
    public static Quantity Speed { get; } = new("speed", "`2400 mm/min`, `100 in/min`", (1, 60), null, default, ("mm/min", 1), ("in/min", Inch), ("mm/s", 60), ("in/s", 60 * Inch));
    public static Quantity Acceleration { get; } = new("acceleration", "`300 mm/s2`, `12 in/s2`", (1, 1), null, default, ("mm/s2", 1), ("in/s2", Inch));
    /// <summary>A bare number is turns a minute: spindles are marked in nothing else.</summary>
    public static Quantity Turning { get; } = new("spindle speed", "`18000 rpm` or `18000`", (1, 60), 1, default, ("rpm", 1));
    public static Quantity Power { get; } = new("power", "`800 W`, `1.5 kW`", (1, 1), null, default, ("W", 1), ("kW", 1000));
    public static Quantity CuttingForce { get; } = new("cutting force", "`30 N/mm2`", (1, 1), null, default, ("N/mm2", 1));
    /// <summary>A bare number is hertz: a pitch is told in nothing else.</summary>
    public static Quantity Frequency { get; } = new("frequency", "`440` or `440 Hz`", (1, 1), 1, default, ("Hz", 1));
    /// <summary>Mass of a string's length.</summary>
    public static Quantity UnitMass { get; } = new("unit mass", "`6.8 g/m`, `0.0068 kg/m`, `0.00038 lb/in`", (1, 1000), null, default, ("g/m", 1), ("kg/m", 1000), ("lb/in", Pound * 1000 / Inch));
    public static Quantity Temperature { get; } = new("temperature", "`20 C`, `68 F`", (1, 1), null, default, ("C", 1), ("F", 5m / 9)) { Freezing = ("F", 32) };
    public static Quantity Mass { get; } = new("mass", "`35 g`, `0.3 kg`, `1.2 oz`, `0.6 lb`", (1, 1000), null, default, ("g", 1), ("kg", 1000), ("oz", Pound / 16), ("lb", Pound));
    public static Quantity Density { get; } = new("density", "`560 kg/m3`, `0.56 g/cm3`, `35 lb/ft3`", (1, 1), null, default, ("kg/m3", 1), ("g/cm3", 1000), ("lb/ft3", Pound * 1_000_000 / (12 * 12 * 12 * Inch * Inch * Inch)));
    public static Quantity Stress { get; } = new("stress", "`9500 N/mm2`, `9.5 GPa`, `1380000 psi`", (1, 1), null, default, ("N/mm2", 1), ("MPa", 1), ("GPa", 1000), ("psi", PoundForce / (Inch * Inch)));
    public static Quantity Force { get; } = new("force", "`2600 N`, `590 lbf`", (1, 1), null, default, ("N", 1), ("lbf", PoundForce));
    /// <summary>A number without a unit, such as a ratio.</summary>
    public static Quantity Number { get; } = new("number", "`0.285`", (1, 1), 1, default, ("", 1));

    /// <summary>From the written unit to the one used inside: radians, mm/s, turns a second, kg/m, kg; lengths, accelerations, power and frequencies are the same.</summary>
    public double ToInside(double written) => written * _inside.Times / _inside.Over;

    /// <summary>Reads a value with or without its unit.</summary>
    /// <param name="written">In the written unit, correctly rounded from the decimal value: <c>1-3/4 in</c> is the double nearest 44.45.</param>
    /// <param name="remedy">When it cannot be read: what to write instead.</param>
    public bool TryRead(string text, out double written, out string remedy)
    {
        written = double.NaN;
        if (text.Length > LongestText) return No($"write it shorter, such as {Forms}", out remedy);
        if (text.Contains(',', StringComparison.Ordinal)) return No($"write a decimal point: `{text.Trim().Replace(',', '.')}`", out remedy);
        var match = Form().Match(text);
        if (!match.Success) return No($"write it as {Forms}", out remedy);

        var unit = match.Groups["unit"].Value;
        var known = _units.FirstOrDefault(u => u.Word == unit);
        decimal factor;
        if (unit == "")
        {
            if (_bareFactor is not { } bare) return No($"give its unit: {Forms}", out remedy);
            factor = bare;
        }
        else if (known.Word is null)
            return No(_units[0].Word == "" ? "give the number alone, without a unit" : $"give it in {Listing.Or(_units.Select(u => u.Word))}", out remedy);
        else factor = known.Factor;

        if (match.Groups["over"].Success)
        {
            if (factor != Inch || Noun != "length") return No("a fraction is for inches: write `3/8 in`, or a decimal number", out remedy);
            var (over, under) = (int.Parse(match.Groups["over"].Value, CultureInfo.InvariantCulture), int.Parse(match.Groups["under"].Value, CultureInfo.InvariantCulture));
            if (under is < 2 or > FinestDenominator) return No($"use a denominator from 2 to {FinestDenominator}", out remedy);
            if (over == 0 || over >= under) return No("write a whole number and a proper fraction, such as `1-3/4 in`", out remedy);
            var whole = match.Groups["whole"].Success ? int.Parse(match.Groups["whole"].Value, CultureInfo.InvariantCulture) : 0;
            return Yes(Signed(match, whole * under + over) * factor / under, out written, out remedy);
        }
        if (!decimal.TryParse(match.Groups["number"].Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || Math.Abs(number) > Largest)
            return No("write a number of a sensible size", out remedy);
        return Yes((Signed(match, number) - (unit == Freezing.Unit ? Freezing.At : 0)) * factor, out written, out remedy);
    }

    /// <summary>A value in the written unit, for a reader; a length in the file's unit.</summary>
    public string Show(double written) => Noun == "length"
        ? Geometry.Length.Show(written, _shown)
        : $"{written.ToString("0.######", CultureInfo.InvariantCulture)} {WrittenUnit}".TrimEnd();

    /// <summary>A value as it would be written in the file: millimetres in full, inches to 0.0001 in.</summary>
    public string ShowAsToml(double written)
    {
        var isLength = Noun == "length";
        if (Noun is "number" or "spindle speed" or "frequency" || (isLength && _shown == LengthUnit.Millimetre)) return written.ToString("0.######", CultureInfo.InvariantCulture);
        var text = Show(written);
        return isLength && !text.Contains('/', StringComparison.Ordinal) ? text.Split(' ')[0] : $"\"{text}\"";
    }

    /// <summary>Longer than any sensible value; keeps hostile text cheap.</summary>
    const int LongestText = 40;
    /// <summary>Finest fraction of an inch anyone marks; common practice, no source.</summary>
    const int FinestDenominator = 128;
    /// <summary>Far above any measure here, far below what overflows.</summary>
    const decimal Largest = 1e12m;

    static bool No(string why, out string remedy)
    {
        remedy = why;
        return false;
    }

    static decimal Signed(Match match, decimal magnitude) => match.Groups["sign"].Value == "-" ? -magnitude : magnitude;

    static bool Yes(decimal value, out double written, out string remedy)
    {
        // Through text: parsing a decimal's digits rounds correctly, the cast need not.
        written = double.Parse(value.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        remedy = "";
        return true;
    }

    [GeneratedRegex(@"^\s*(?<sign>[-+]?)(?:(?:(?<whole>[0-9]{1,5})(?:-|\s+))?(?<over>[0-9]{1,3})/(?<under>[0-9]{1,3})|(?<number>[0-9]+(?:\.[0-9]+)?(?:[eE][-+]?[0-9]{1,3})?))\s*(?<unit>[^\s0-9].*?)?\s*$", RegexOptions.ExplicitCapture)]
    private static partial Regex Form();
}
