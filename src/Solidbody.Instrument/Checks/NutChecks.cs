using Solidbody.Findings;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Checks;

internal static class NutChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d)
    {
        var (layout, strings) = (FretLayout.Of(d), Strings.Of(d));
        var known = d.Tuning is { } tuning && tuning.Strings.Length == d.Strings;
        if (d.Nut.Spacing == NutSpacing.Gaps && !known) yield return NutFindings.NoGauges();

        foreach (var (side, name, i) in ((int, string, int)[])[(-1, "bass", 0), (1, "treble", d.Strings - 1)])
        {
            // The nut stands on the board's end: behind a zero fret the strings have run on to it.
            var x = strings.Nut(i).X - strings.SetBack;
            var wood = layout.HalfWidth(x) - side * strings.Y(i, x) - (known ? d.Tuning!.Strings[i].Gauge / 2 : 0);
            if (!(wood >= Limits.NutOutside)) yield return NutFindings.ThinOutside(name, wood);
        }
        var (lower, gap) = NutSlots.Closest(strings, d.Tuning);
        var (least, measured) = known ? (Limits.BetweenStrings, "between them") : (Limits.BetweenStringCentres, "from middle to middle");
        if (!(gap >= least)) yield return NutFindings.SlotsClose(lower + 1, gap, least, measured);
    }
}
