using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>Figures of a wood that nobody gave.</summary>
public static class WoodFindings
{
    private const string Source = "the wood table, made from the Wood Handbook FPL-GTR-190 (2010), has no such row", Limit = "its own figure, or the table's";

    public static Finding NoWeight(string wood, string parts) =>
        new("WOOD-01", Severity.Notes, parts, $"{wood} without gravity or density", Limit, Source,
            "weigh and measure a board and give `density` in [[woods]]; until then mass and balance are not worked out.")
        { Title = "a wood's weight is not known" };

    public static Finding NoMovement(string wood, string parts) =>
        new("WOOD-02", Severity.Notes, parts, $"{wood} without shrinkage", Limit, Source,
            "give `shrinkage_radial` and `shrinkage_tangential` in [[woods]]; until then its movement with the seasons is not worked out.")
        { Title = "how a wood moves is not known" };

    public static Finding NoStrength(string wood, string parts, string missing) =>
        new("WOOD-03", Severity.Notes, parts, $"{wood} without {missing}", Limit, Source,
            "give `stiffness` and `bending_strength` in [[woods]]; until then the neck's bending and its safety are not worked out.")
        { Title = "a wood's stiffness or strength is not known" };
}
