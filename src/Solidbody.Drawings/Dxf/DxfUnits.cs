using System.Collections.Frozen;
using System.Globalization;

namespace Solidbody.Drawings.Dxf;

/// <summary>What one unit of a DXF is.</summary>
internal static class DxfUnits
{
    /// <summary>Header variable and its codes, mm. Source: the DXF reference's table of $INSUNITS, from memory.</summary>
    private const string Variable = "$INSUNITS", OldVariable = "$MEASUREMENT";

    private static readonly FrozenDictionary<int, (string Word, double Millimetres)> Codes = new Dictionary<int, (string, double)>
    {
        [1] = ("inches", Geometry.Length.MillimetresPerInch),
        [2] = ("feet", 12 * Geometry.Length.MillimetresPerInch),
        [4] = ("millimetres", 1),
        [5] = ("centimetres", 10),
        [6] = ("metres", 1000),
        [8] = ("microinches", 1e-6 * Geometry.Length.MillimetresPerInch),
        [9] = ("thousandths of an inch", 1e-3 * Geometry.Length.MillimetresPerInch),
        [10] = ("yards", 36 * Geometry.Length.MillimetresPerInch),
        [13] = ("micrometres", 1e-3),
        [14] = ("decimetres", 100),
    }.ToFrozenDictionary();

    /// <returns>mm in one unit of the drawing; never a guess.</returns>
    public static double Of(DxfGroups groups, DrawingWish wish, ReadingLog log)
    {
        var at = Find(groups, Variable);
        var code = at is { } i && int.TryParse(groups.Value(i), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var read) ? read : 0;
        if (code == 0)
            return wish.Unit ?? throw log.Stop(at is { } j ? groups.At(j) : new(1, 1), $"the drawing does not say its unit{Hint(groups)}", $"a header with {Variable}, or the person's word", "say `unit` in the instrument file: \"mm\", \"cm\" or \"in\"; measure something you know to be sure");
        if (!Codes.TryGetValue(code, out var unit))
            throw log.Stop(groups.At(at!.Value), $"{Variable} is {code}", $"one of {string.Join(", ", Codes.Keys.Order())}", "draw in millimetres or inches");
        if (wish.Unit is { } given && Math.Abs(given / unit.Millimetres - 1) > 1e-9)
            throw log.Stop(groups.At(at!.Value), $"the instrument file says that one unit of the drawing is {given.ToString(CultureInfo.InvariantCulture)} mm, the drawing that it is in {unit.Word}", "one of the two", "take `unit` out of the instrument file, or correct the drawing's header");
        return unit.Millimetres;
    }

    private static string Hint(DxfGroups groups) => Find(groups, OldVariable) is not { } i ? ""
        : groups.Value(i).SequenceEqual("1") ? " (only that it is metric)" : " (only that it is in inches or feet)";

    /// <summary>The group with a header variable's value.</summary>
    private static int? Find(DxfGroups groups, string variable)
    {
        for (var i = 0; i + 1 < groups.Count; i++)
        {
            if (groups.Is(i, 9, variable)) return i + 1;
            if (groups.Is(i, 0, "ENDSEC")) return null;
        }
        return null;
    }
}
