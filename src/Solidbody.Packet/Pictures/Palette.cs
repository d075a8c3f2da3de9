using System.Collections.Immutable;

namespace Solidbody.Packet.Pictures;

/// <summary>The pictures' colours: paper and ink, each part's two tones of wood, and the scale of signed deviations.</summary>
internal static class Palette
{
    public static Tint Sheet { get; } = Tint.Of("#fbfcf9");
    public static Tint Ink { get; } = Tint.Of("#17222a");
    public static Tint SecondInk { get; } = Tint.Of("#42505a");
    /// <summary>Where nothing is compared.</summary>
    public static Tint NotCompared { get; } = Tint.Of("#efe3cb");

    /// <summary>“vik”, from wood left on to cut too deep (F. Crameri, Scientific colour maps, MIT): perceptually uniform, diverging.</summary>
    private static readonly ImmutableArray<Tint> Vik =
    [
        .. new[] { "#001261", "#023a7b", "#116496", "#5496b7", "#a7c9da", "#ece5e0", "#e1b8a0", "#cd8961", "#b75a26", "#852206", "#590008" }.Select(Tint.Of),
    ];

    /// <summary>The colour of a signed deviation.</summary>
    /// <param name="share">Deviation over the scale's end: −1 cut too deep (brown), 0, +1 wood left on (blue); clipped beyond.</param>
    public static Tint Deviation(double share)
    {
        var place = (1 - Math.Clamp(share, -1, 1)) / 2 * (Vik.Length - 1);
        var stop = Math.Min((int)place, Vik.Length - 2);
        return Tint.Between(Vik[stop], Vik[stop + 1], place - stop);
    }

    /// <summary>Dark and light tone of a part's wood.</summary>
    public static (Tint Dark, Tint Light) Wood(string part) => part switch
    {
        "body" => (Tint.Of("#8a7a5c"), Tint.Of("#f7edd8")),
        "neck" => (Tint.Of("#94876a"), Tint.Of("#fdf8ea")),
        _ => (Tint.Of("#5e5040"), Tint.Of("#d8c8b4")),
    };
}
