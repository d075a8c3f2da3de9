using Solidbody.Instrument;

namespace Solidbody.App.Terminal.Tables;

/// <summary>The body's wood between its voids.</summary>
internal static class BodyTables
{
    /// <summary>More than these nobody reads; the findings name every wall that is too thin, with its place.</summary>
    private const int Shown = 20;

    public static TextTable? Walls(Design design, FigureWords words)
    {
        if (design.Figures.BodyWalls is not { Length: > 0 } walls) return null;
        var table = new TextTable("Between", $"Wood, {words.LengthUnitName}");
        foreach (var w in walls.Take(Shown)) table.Add($"{w.Of}, {w.To}", words.Length(w.Wood));
        return table;
    }
}
