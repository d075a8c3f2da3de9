using System.Globalization;

namespace Solidbody.Packet.Pictures;

/// <summary>A colour, eight bits a channel.</summary>
internal readonly record struct Tint(byte R, byte G, byte B)
{
    /// <summary>From <c>#rrggbb</c>.</summary>
    public static Tint Of(string hex)
    {
        var value = int.Parse(hex.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return new((byte)(value >> 16), (byte)(value >> 8), (byte)value);
    }

    public string Hex => $"#{R:x2}{G:x2}{B:x2}";

    /// <summary>Between two colours, share by share of each channel; t from 0 to 1.</summary>
    public static Tint Between(Tint a, Tint b, double t) => new(Mix(a.R, b.R, t), Mix(a.G, b.G, t), Mix(a.B, b.B, t));

    private static byte Mix(byte a, byte b, double t) => (byte)Math.Round(a + (b - a) * Math.Clamp(t, 0, 1));
}
