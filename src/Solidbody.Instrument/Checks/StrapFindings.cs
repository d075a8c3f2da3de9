using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with the strap buttons.</summary>
public static class StrapFindings
{
    public static Finding AtVoid(Wall w, double least) =>
        new("STRAP-01", w.Wood > 0 ? Severity.Warns : Severity.Stops, $"body, {w.Of} at {w.To}, {Say.At(w.At)}", $"{Say.Mm(w.Wood)} of wood", Say.AtLeast(least), Limits.Practice, "move the button along the edge, or take a shorter screw.") { Title = "a strap button's screw comes near a void" };

    public static Finding OffOutline(string button, double away) =>
        new("STRAP-02", Severity.Warns, $"body, {button}", $"the place given lies {Say.Mm(away)} from the outline", Say.AtMost(Limits.StrapOffOutline), Limits.OwnFile, "give a place nearer to the outline: the button stands where the outline is nearest to it.") { Title = "a strap button's place is not on the outline" };
}
