using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[body.top]</c>: a cap of another wood. Defaults are common practice, no source.</summary>
static class TopSection
{
    const double QuarterInch = 6.35;

    public static TopDefinition? Read(TableReader top, InstrumentBasis basis)
    {
        var fitted = top.Flag("fitted", false, "true glues a cap of another wood on the front before anything is cut");
        var definition = new TopDefinition(
            top.Word("wood", basis.Woods, "sugar-maple", "wood of the cap"),
            top.Length("thickness", 1, 20, QuarterInch, "of the cap; the body's thickness counts it in"),
            SeasonsSection.ReadGrain(top, "flat", "how its boards are sawn: flat, or quarter, which moves about half as much"),
            top.Count("pieces", 1, 2, 2, "1, or 2 joined on the centre line, as a board opened like a book"));
        return fitted ? definition : null;
    }
}
