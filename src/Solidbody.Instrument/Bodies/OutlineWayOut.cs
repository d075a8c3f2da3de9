using System.Collections.Immutable;
using System.Globalization;

namespace Solidbody.Instrument.Bodies;

/// <summary>A range of one measure that mends a broken rule and breaks none that holds, the other measures kept; with a second measure set first where one alone is not enough.</summary>
/// <param name="Measure">Its key.</param>
/// <param name="Low">mm, or a part of the length.</param>
/// <param name="High">The same.</param>
internal sealed record OutlineWay(OutlineMeasure Measure, double Low, double High)
{
    public (OutlineMeasure Measure, double Value)? First { get; init; }

    public string Say() => (First is { } f ? $"`{f.Measure.Key}` {Number(f.Value, f.Measure, Math.Round)} together with " : "") + $"`{Measure.Key}` {Number(Low, Measure, Math.Ceiling)} to {Number(High, Measure, Math.Floor)}{(Measure.IsLength ? " mm" : "")}";

    /// <summary>A thousandth, which is a hair of a body's length; rounded into the range.</summary>
    private static string Number(double v, OutlineMeasure m, Func<double, double> round) => (round(v * 1000) / 1000).ToString("0.###", CultureInfo.InvariantCulture);
}

/// <summary>Finds what to change for a rule that is broken. Bounded and deterministic: rules that are linear in a measure cut its range in closed form; in what is left
/// the others are asked at <see cref="Samples"/> even places, and the ends of the stretch that holds are halved <see cref="Halvings"/> times.</summary>
internal static class OutlineWayOut
{
    private const int Samples = 25, Halvings = 24, Firsts = 5;
    /// <summary>Narrower than this nobody can write it down and trust it, in the measure's own unit.</summary>
    private const double Narrowest = 0.004;
    /// <summary>How many ways are offered.</summary>
    private const int Offered = 2;

    /// <param name="o">The outline with the broken rule.</param>
    /// <param name="rule">Its index.</param>
    /// <param name="rules">Of any outline of the same two kinds of shoulder, always in one order.</param>
    public static ImmutableArray<OutlineWay> Of(OutlineDefinition o, int rule, Func<OutlineDefinition, ImmutableArray<OutlineRule>> rules)
    {
        var now = rules(o);
        bool Matters(OutlineMeasure m) => !rules(m.With(o, m.Least))[rule].Margin.Equals(rules(m.With(o, m.Most))[rule].Margin);
        var measures = OutlineMeasure.All.Where(Matters).ToArray();
        ImmutableArray<OutlineWay> single = [.. measures.Select(m => Range(o, m, rule, now, rules)).OfType<OutlineWay>().Take(Offered)];
        if (!single.IsEmpty) return single;
        foreach (var first in measures)
            for (var i = 0; i < Firsts; i++)
            {
                var value = Math.Round(first.Least + (i + 0.5) / Firsts * (first.Most - first.Least), 3);
                foreach (var m in measures.Where(m => m != first))
                    if (Range(first.With(o, value), m, rule, now, rules) is { } way) return [way with { First = (first, value) }];
            }
        return [];
    }

    private static OutlineWay? Range(OutlineDefinition o, OutlineMeasure m, int rule, ImmutableArray<OutlineRule> now, Func<OutlineDefinition, ImmutableArray<OutlineRule>> rules)
    {
        bool Counts(int i) => i == rule || now[i].Holds;
        var (low, high) = (m.Least, m.Most);
        if (m.IsStation)
        {
            var (atLow, atHigh) = (rules(m.With(o, m.Least)), rules(m.With(o, m.Most)));
            for (var i = 0; i < now.Length; i++)
            {
                if (!now[i].IsLinear || !Counts(i)) continue;
                var (a, b) = (atLow[i].Margin, atHigh[i].Margin);
                if (a < 0 && b < 0) return null;
                var zero = m.Least + a / (a - b) * (m.Most - m.Least);
                if (a < 0) low = Math.Max(low, zero); else if (b < 0) high = Math.Min(high, zero);
            }
        }
        if (!(high - low >= Narrowest)) return null;
        bool Sound(double v)
        {
            var then = rules(m.With(o, v));
            for (var i = 0; i < then.Length; i++) if (Counts(i) && !(m.IsStation && then[i].IsLinear) && !then[i].Holds) return false;
            return true;
        }
        double Sample(int i) => low + (high - low) * i / (Samples - 1);
        var from = Enumerable.Range(0, Samples).FirstOrDefault(i => Sound(Sample(i)), -1);
        if (from < 0) return null;
        var to = from;
        while (to + 1 < Samples && Sound(Sample(to + 1))) to++;
        double End(double sound, double broken)
        {
            for (var i = 0; i < Halvings; i++)
            {
                var middle = (sound + broken) / 2;
                if (Sound(middle)) sound = middle; else broken = middle;
            }
            return sound;
        }
        var (least, most) = (from == 0 ? low : End(Sample(from), Sample(from - 1)), to == Samples - 1 ? high : End(Sample(to), Sample(to + 1)));
        return most - least >= Narrowest ? new(m, least, most) : null;
    }
}
