using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with a cover plate, its ledge and its screws.</summary>
public static class CoverFindings
{
    public static Finding NotFlush(string cover, double below) =>
        new("COVER-01", Severity.Warns, $"body, {cover}", below < 0 ? $"the plate stands {Say.Mm(-below)} out of the back" : $"the plate lies {Say.Mm(below)} below the back", $"0 to {Say.Mm(Limits.CoverBelow)} below", Limits.Practice, "make the ledge as deep as plate and lining together, and a little.") { Title = "a cover does not lie flush" };

    public static Finding ThinAtScrew(Wall w) =>
        new("COVER-02", w.Wood > 0 ? Severity.Warns : Severity.Stops, $"body, {w.Of} at {w.To}, {Say.At(w.At)}", $"{Say.Mm(w.Wood)} of wood beside the pilot", Say.AtLeast(Limits.AroundCoverScrew), Limits.Practice, "widen the ledge, take a thinner pilot, or another number of screws.") { Title = "little wood around a cover's screw" };

    public static Finding LittleToLieOn(string cover, double width) =>
        new("COVER-03", Severity.Warns, $"body, {cover}", $"{Say.Mm(width)} of ledge under its edge", Say.AtLeast(Limits.CoverBearing), Limits.Practice, "widen the ledge, or lessen the gap.") { Title = "a cover has little to lie on" };

    public static Finding ScrewsFarApart(string cover, double spacing) =>
        new("COVER-04", Severity.Warns, $"body, {cover}", $"{Say.Mm(spacing)} between its screws", Say.AtMost(Limits.CoverScrewSpacing), Limits.Practice, "take more screws.") { Title = "a cover's screws stand far apart" };
}
