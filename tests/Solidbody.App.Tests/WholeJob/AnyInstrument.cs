using System.Globalization;
using CsCheck;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>Instrument files of any size and shape, as a person would write them, and a shop whose router is large enough for all of them.</summary>
internal static class AnyInstrument
{
    private static readonly string[] Profiles = ["C", "D", "U", "V", "asymmetric"];
    private static readonly string[] Families = ["symmetric", "offset", "single", "bass", "travel"];

    /// <summary>The instrument file of a number: the same on every machine.</summary>
    public static string Text(int number) => Any.Generate(new PCG(1, (ulong)number), null, out _);

    private static readonly Gen<string> Any = Gen.Select(
        Gen.Select(Gen.Int[22 * 4, 36 * 4], Gen.Int[4, 8], Gen.Bool, Gen.Int[20, 24]),
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-2, 2], Gen.Double[180, 500], Gen.Double[1, 1.5]),
        Gen.Select(Gen.Double[19.5, 23], Gen.Double[0.5, 3], Gen.Int[0, 4], Gen.Int[0, 4]),
        (size, board, neck) => Written(size, board, neck));

    private static string Written((int Quarters, int Strings, bool Left, int Frets) size, (double Nut, double Bridge, double Radius, double Compound) board, (double First, double More, int Profile, int Family) neck)
    {
        // Spreads follow strings: about 7 mm at the nut and 10.5 mm at the bridge from string to string (common practice, no source), a little more or less.
        var gaps = size.Strings - 1;
        string Mm(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
        var (nut, bridge) = (gaps * 7.1 + board.Nut, gaps * 10.5 + board.Bridge);
        return string.Create(CultureInfo.InvariantCulture, $"""
            units = "mm"
            name = "any {size.Quarters}-{size.Strings}"
            hand = "{(size.Left ? "left" : "right")}"
            strings = {size.Strings}
            scale = "{size.Quarters / 4.0} in"
            frets = {size.Frets}

            [nut]
            width = {Mm(nut + 7.5)}
            string_spread = {Mm(nut)}

            [fretboard]
            radius = {Mm(board.Radius)}
            radius_at_last_fret = {Mm(board.Radius * board.Compound)}

            [neck]
            thickness_at_fret_1 = {Mm(neck.First)}
            thickness_at_fret_12 = {Mm(neck.First + neck.More)}
            profile = "{Profiles[neck.Profile]}"

            [body.bridge]
            string_spread = {Mm(bridge)}

            [body.outline]
            family = "{Families[neck.Family]}"

            """);
    }

    /// <summary>The school's shop with a router of 1200 × 800 mm.</summary>
    public static string LargeShop => Job.ExampleText("school-shop.toml")
        .Replace("x = 600\ny = 600\n", "x = 1200\ny = 800\n", StringComparison.Ordinal)
        .Replace("x = 640\ny = 640\n", "x = 1240\ny = 840\n", StringComparison.Ordinal);
}
