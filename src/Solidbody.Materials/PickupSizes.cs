using System.Collections.Immutable;

namespace Solidbody.Materials;

/// <summary>A cavity for a common size of pickup, mm.</summary>
/// <param name="Key">As the instrument file names it.</param>
/// <param name="Strings">How many it is given for.</param>
/// <param name="Along">Cavity along the strings.</param>
/// <param name="Across">Cavity across, for <paramref name="Strings"/>.</param>
/// <param name="PerString">So much longer across for each string more.</param>
/// <param name="Depth">From the front.</param>
/// <param name="CornerRadius">Inside corners.</param>
/// <param name="LegsOver">How much further the two legs together reach across; 0 when it has none.</param>
/// <param name="LegAlong">Of each leg along the strings.</param>
/// <param name="LegDepth">From the front.</param>
/// <param name="ScrewsInside">Mounting screws, so far inside the cavity's two ends; 0 when it hangs in a ring.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record PickupSize(string Key, int Strings, double Along, double Across, double PerString, double Depth, double CornerRadius,
    double LegsOver, double LegAlong, double LegDepth, double ScrewsInside, string Source)
{
    public double AcrossFor(int strings) => Across + PerString * (strings - Strings);
}

/// <summary>The table of pickup cavities by common size. A maker measures the pickup in hand: the file's own measures go before these.</summary>
public static class PickupSizes
{
    private const string Practice = "common practice, no source", Remembered = "common practice, from memory";

    public static ImmutableArray<PickupSize> All { get; } =
    [
        // One coil under a round-ended cover; its two screws stand in the cavity.
        new("single", 6, 21, 88, 10.5, 18, 10, 0, 0, 0, 6, Practice),
        // Two coils side by side, hung from a ring by two legs.
        new("double", 6, 40, 71, 10.5, 18, 3.5, 14, 14, 24, 0, Practice),
        // A bass's one long coil.
        new("bass-single", 4, 20, 96, 19, 20, 4, 0, 0, 0, 5, Remembered),
        // A bass's two coils under one block.
        new("bass-double", 4, 33, 96, 19, 20, 5, 0, 0, 0, 0, Remembered),
    ];

    public static PickupSize? Find(string key) => All.FirstOrDefault(s => s.Key == key);
}
