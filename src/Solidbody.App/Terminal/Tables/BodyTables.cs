using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Instrument.Bodies;

namespace Solidbody.App.Terminal.Tables;

/// <summary>The body: wood between its voids, and the hand at its cutaways.</summary>
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

    public static TextTable? Core(Design design, FigureWords words)
    {
        if (design.Figures.Core is not { } core) return null;
        var table = new TextTable("Piece", $"Blank, {words.LengthUnitName}", words.AreaUnitName);
        string Sides(Box3 b) => $"{words.Coarse(b.Length)}×{words.Coarse(b.Width)}×{words.Coarse(b.Thickness)}";
        table.Add("neck and core", Sides(core.Blank), "");
        foreach (var (name, wing) in ((string, WingFigures)[])[("bass wing", core.Bass), ("treble wing", core.Treble)]) table.Add(name, Sides(wing.Blank), words.Area(wing.Glue));
        return table;
    }

    /// <summary>Frets over the body, the last of them behind the cutaway's bottom, wood to pass there, room to the horn.</summary>
    public static TextTable? Reach(Design design, FigureWords words)
    {
        if (design.Figures.Reach is not { Length: > 0 } sides) return null;
        var table = new TextTable("Side", "Frets on", $"Behind, {words.LengthUnitName}", "Heel", "Room");
        foreach (var r in sides)
            table.Add(r.Name, FigureWords.Number(r.FretsOverBody, 0), words.Length(r.BehindBottom), words.Length(r.Thickness), r.Room is { } room ? words.Length(room) : "open");
        return table;
    }
}
