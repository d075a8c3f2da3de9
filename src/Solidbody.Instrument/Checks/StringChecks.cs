using Solidbody.Findings;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Checks;

/// <summary>Whether bridge and pickups suit the strings that cross them.</summary>
internal static class StringChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d) => [.. Bridge(d), .. Poles(d)];

    private static IEnumerable<Finding> Bridge(InstrumentDefinition d)
    {
        var (strings, bridge, place) = (Strings.Of(d), d.Body.Bridge, BridgePlace.Of(d));
        var saddles = Enumerable.Range(0, strings.Count).Select(i => place.Own(place.Saddle(strings, i))).ToArray();
        // On a fan the saddles of a bridge that follows stand further apart along it than across the body.
        var spread = saddles[^1].Y - saddles[0].Y;
        if (!(spread >= (bridge.LeastSpread ?? 0) && spread <= (bridge.MostSpread ?? double.PositiveInfinity))) yield return StringFindings.SpreadOutOfBridge(spread, bridge.LeastSpread, bridge.MostSpread);
        var worst = Enumerable.Range(0, strings.Count).MaxBy(i => Math.Max(saddles[i].X - bridge.SaddleTravelTo, bridge.SaddleTravelFrom - saddles[i].X));
        if (saddles[worst].X is var at && !(at >= bridge.SaddleTravelFrom && at <= bridge.SaddleTravelTo)) yield return StringFindings.SaddleOffBridge(worst + 1, at, bridge.SaddleTravelFrom, bridge.SaddleTravelTo);
    }

    private static IEnumerable<Finding> Poles(InstrumentDefinition d)
    {
        var strings = Strings.Of(d);
        foreach (var pickup in d.Body.Pickups)
        {
            if (pickup.PoleSpread is not { } poles || strings.Count < 2) continue;
            var off = StringsOverPickup.Crossings(pickup, strings).Select((v, i) => Math.Abs(v - poles * ((double)i / (strings.Count - 1) - 0.5))).ToArray();
            var worst = Enumerable.Range(0, off.Length).MaxBy(i => off[i]);
            if (!(off[worst] <= Limits.StringToPole)) yield return StringFindings.OffThePole(pickup.Name, worst + 1, off[worst]);
        }
    }
}
