using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[buying]</c>. Common practice, no source.</summary>
static class BuyingSection
{
    public static BuyingDefinition Read(TableReader buying)
    {
        var or = new BuyingDefinition();
        return new BuyingDefinition
        {
            Planing = buying.Length("planing", 0, 30, or.Planing, "rough board over the planed thickness, both faces together"),
            Margin = buying.Length("margin", 0, 100, or.Margin, "board beside and beyond the part, each side and end"),
            Waste = buying.Number("waste", 0, 100, 100 * or.Waste, "bought beyond that for knots, checks and the saw's kerf, per cent") / 100,
        };
    }
}
