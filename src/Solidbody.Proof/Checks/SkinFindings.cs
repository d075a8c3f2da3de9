using System.Globalization;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Programs;

namespace Solidbody.Proof.Checks;

/// <summary>Whether a set-up's skin is one: thin, and standing in the cut wood. A packet that says more must not excuse wood.</summary>
internal static class SkinFindings
{
    /// <summary>Just outside the outline, where the skin must stand, mm.</summary>
    private const double Outside = 0.7;
    /// <summary>Of the outline, what must still hang on it.</summary>
    private const double Standing = 0.5;
    /// <summary>Thinnest wood that counts as standing, mm: less than the thinnest skin a shop may ask for.</summary>
    private const double Least = 0.15;

    /// <summary>The skin that may excuse wood, and what is wrong with it otherwise.</summary>
    public static (Skin? Sound, IReadOnlyList<Finding> Findings) Sort(Part part, IReadOnlyList<SetUp> setUps)
    {
        var listed = setUps.Where(s => s.Skin is not null).ToArray();
        if (listed.Length == 0) return (null, []);
        var (setUp, skin) = (listed[0], listed[0].Skin!);
        var most = ProofLimits.Skin + TakenBelow(part, setUp.Placement.Up).DefaultIfEmpty(0).Max();
        if (listed.Length > 1) return (null, [ProofFindings.TabTooMuch(part.Name, $"{listed.Length} skins", "one skin a part")]);
        return skin.Z1 - skin.Z0 > Math.Min(most, ProofLimits.SkinOverEdge)
            ? (null, [ProofFindings.TabTooMuch($"{setUp.Title}, skin", Show(skin.Z1 - skin.Z0), $"at most {Show(Math.Min(most, ProofLimits.SkinOverEdge))} thick")])
            : (skin, []);
    }

    /// <summary>How far up the side the shaped edges and ledges of the face that lies down reach, mm.</summary>
    private static IEnumerable<double> TakenBelow(Part part, Side up) =>
    [
        .. part.Edges.Where(e => e.From != up).Select(e => e.Form.Height),
        .. part.Ledges.Where(l => l.From != up).Select(l => l.From == Side.Front ? part.Bounds.Z1 - l.Floor : l.Floor - part.Bounds.Z0),
    ];

    /// <summary>A skin of which too little stands.</summary>
    public static IEnumerable<Finding> Missing(Part part, Skin? skin, ColumnField field)
    {
        if (skin is null) yield break;
        var (standing, all) = (0.0, 0.0);
        foreach (var points in part.Outline.Loops.Where(l => l.SignedArea > 0).Select(l => l.Points))
            for (var i = 0; i < points.Length; i++)
            {
                var (a, b) = (points[i], points[(i + 1) % points.Length]);
                var length = a.DistanceTo(b);
                all += length;
                if (Stands(0.5 * (a + b) - Outside * (b - a).Unit.Left, skin, field)) standing += length;
            }
        if (standing < Standing * all) yield return ProofFindings.TabMissing($"{part.Name}, skin", standing, Standing * all);
    }

    private static bool Stands(Point2 p, Skin skin, ColumnField field)
    {
        var grid = field.Grid;
        var (column, row) = (Math.Clamp((int)((p.X - grid.X0) / grid.Cell), 0, grid.Columns - 1), Math.Clamp((int)((p.Y - grid.Y0) / grid.Cell), 0, grid.Rows - 1));
        var wood = Math.Min(field.Top(column, row), skin.Z1) - Math.Max(field.Bottom(column, row), skin.Z0);
        return wood >= Least;
    }

    private static string Show(double mm) => string.Create(CultureInfo.InvariantCulture, $"{mm:0.0#} mm");
}
