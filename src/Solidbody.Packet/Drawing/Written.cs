using System.Globalization;

namespace Solidbody.Packet.Drawing;

/// <summary>How figures are written on paper and in pictures: the one place that turns numbers into words.</summary>
internal static class Written
{
    private const string ThinSpace = "\u2009";
    private const string Minus = "\u2212";

    /// <summary>Millimetres with the given decimals, a true minus sign, thousands set apart by a thin space: <c>1 014.5</c>.</summary>
    public static string Millimetres(double mm, int decimals = 1)
    {
        var text = Math.Abs(mm).ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).Replace(",", ThinSpace, StringComparison.Ordinal);
        var isZero = text.All(c => c is '0' or '.');
        return mm < 0 && !isZero ? Minus + text : text;
    }

    /// <summary>A size without needless decimals: <c>12</c>, <c>3.2</c>, <c>6.35</c>.</summary>
    public static string Size(double mm) =>
        (mm < 0 ? Minus : "") + Math.Abs(mm).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A signed deviation: <c>+0.14</c>, <c>−0.03</c>, <c>0.00</c>.</summary>
    public static string Signed(double mm, int decimals = 2)
    {
        var text = Millimetres(mm, decimals);
        return mm > 0 && text.Any(c => c is >= '1' and <= '9') ? "+" + text : text;
    }

    /// <summary>A whole number, thousands set apart: <c>18 000</c>.</summary>
    public static string Whole(double value) => Millimetres(value, 0);

    /// <summary>Turns a minute from turns a second.</summary>
    public static string TurnsPerMinute(double turnsPerSecond) => Whole(turnsPerSecond * 60);

    /// <summary>Millimetres a minute from mm/s.</summary>
    public static string PerMinute(double millimetresPerSecond) => Whole(millimetresPerSecond * 60);

    /// <summary>Minutes, rounded up so that no run is announced as shorter than it is; never 0 for a run that takes time.</summary>
    public static string Minutes(double seconds) => Whole(Math.Ceiling(seconds / 60 - 1e-9));

    /// <summary>Degrees from radians, to a tenth, without a needless nought.</summary>
    public static string Degrees(double radians) => (radians * 180 / Math.PI).ToString("0.#", CultureInfo.InvariantCulture).Replace("-", Minus, StringComparison.Ordinal) + "°";

    /// <summary>Plural by the number: <c>1 tab</c>, <c>6 tabs</c>.</summary>
    public static string Count(int n, string one) => n == 1 ? $"1 {one}" : $"{n.ToString(CultureInfo.InvariantCulture)} {one}s";

    /// <summary>A number for a file, not for a reader: shortest form within a micrometre, point as the decimal mark.</summary>
    public static string Plain(double value) => Math.Round(value, 3).ToString("0.###", CultureInfo.InvariantCulture);
}
