namespace Solidbody.Packet;

/// <summary>Names of what lies in a packet's folder, with forward slashes.</summary>
public static class PacketNames
{
    /// <summary>The two source files as they were read, so that the packet can be made again.</summary>
    public const string Instrument = "instrument.toml";
    public const string Shop = "shop.toml";

    public static string Sheet(int order, string setUp) => $"sheets/{order:00}-{setUp}.pdf";
    public const string Intonation = "pictures/intonation.svg";
    public static string Picture(string part) => $"pictures/{part}.svg";
    public static string Deviation(string part, string face) => $"pictures/{part}-{face}-deviation.svg";
}
