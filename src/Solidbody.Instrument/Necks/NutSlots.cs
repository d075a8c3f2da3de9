using System.Collections.Immutable;

namespace Solidbody.Instrument.Necks;

/// <summary>How the strings share the nut's spread.</summary>
internal static class NutSlots
{
    /// <summary>The same gap from string to string, so that thick strings stand no closer to the finger than thin ones.</summary>
    /// <returns>Each string's share of the spread, −½ … ½; empty (equal centres) when the gauges are not all known.</returns>
    public static ImmutableArray<double> EqualGaps(double spread, int count, TuningDefinition? tuning)
    {
        if (tuning is null || tuning.Strings.Length != count || count < 2) return [];
        // From middle to middle: half of each of the two strings, and the gap. The gaps share what the strings leave of the spread.
        double Halves(int i) => (tuning.Strings[i].Gauge + tuning.Strings[i + 1].Gauge) / 2;
        var gap = (spread - Enumerable.Range(0, count - 1).Sum(Halves)) / (count - 1);
        var shares = new double[count];
        var y = shares[0] = -0.5;
        for (var i = 0; i + 1 < count; i++) shares[i + 1] = y += (Halves(i) + gap) / spread;
        return [.. shares];
    }

    /// <summary>Least clear way between two neighbours at the nut, mm, and the lower of the two; from middle to middle when gauges are not known.</summary>
    public static (int Lower, double Gap) Closest(Strings strings, TuningDefinition? tuning)
    {
        double Thick(int i) => tuning is not null && tuning.Strings.Length == strings.Count ? tuning.Strings[i].Gauge : 0;
        return Enumerable.Range(0, strings.Count - 1).Select(i => (i, strings.NutY(i + 1) - strings.NutY(i) - (Thick(i) + Thick(i + 1)) / 2)).MinBy(g => g.Item2);
    }
}
