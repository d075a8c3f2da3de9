using Solidbody.Instrument;

namespace Solidbody.App.Terminal.Tables;

/// <summary>The neck as a beam.</summary>
internal static class NeckTables
{
    public static TextTable? Bend(Design design, FigureWords words)
    {
        if (design.Figures.Bend is not { } bend) return null;
        var table = new TextTable("Neck", words.LengthUnitName, "N");
        table.Add("relief, rod slack, at once", words.Length(bend.Relief), "");
        table.Add("relief, rod slack, after years", words.Length(bend.ReliefLater), "");
        table.Add("relief asked for", words.Length(bend.Wanted), "");
        table.Add("rod's pull for that", "", FigureWords.Newtons(bend.Rod.Pull));
        table.Add("rod bears", "", FigureWords.Newtons(bend.Rod.Capacity));
        table.Add("least wood under the rod", words.Length(bend.RodCover), "");
        foreach (var other in bend.Retuned) table.Add($"relief, tuned {other.Name}", words.Length(other.Relief), "");
        return table;
    }

    public static TextTable? Loads(Design design, FigureWords words)
    {
        if (design.Figures.Bend is not { Loads.Length: > 0 } bend) return null;
        var table = new TextTable("Place", "Wood", "N/mm²", "Safety");
        foreach (var l in bend.Loads) table.Add(l.Place, l.Wood, FigureWords.Number(l.Stress, 1), FigureWords.Number(l.Safety, 1));
        return table;
    }
}
