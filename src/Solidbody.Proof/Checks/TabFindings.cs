using System.Globalization;
using Solidbody.Findings;
using Solidbody.Instrument;
using Solidbody.Programs;

namespace Solidbody.Proof.Checks;

/// <summary>Whether a set-up's tabs are tabs: small, on the outline, and standing in the cut wood. A list that says more must not excuse wood.</summary>
internal static class TabFindings
{
    /// <summary>Of a listed tab's plan within the outline's band, what must still stand.</summary>
    private const double Standing = 0.5;

    /// <summary>Of a listed tab's height, what counts as standing: a rounded edge of the face that lies down may have taken most of what was under it.</summary>
    private const double Height = 0.25;

    /// <summary>The tabs that may excuse wood, and what is wrong with the others.</summary>
    public static (IReadOnlyList<(SetUp SetUp, Tab Tab)> Sound, IReadOnlyList<Finding> Findings) Sort(Part part, IReadOnlyList<SetUp> setUps)
    {
        var (sound, findings) = (new List<(SetUp, Tab)>(), new List<Finding>());
        var all = setUps.SelectMany(s => s.Tabs.Select(t => (SetUp: s, Tab: t))).ToArray();
        var (together, most) = (all.Sum(t => t.Tab.Length), ProofLimits.TabsOfOutline * part.Outline.Loops.Sum(l => l.Perimeter));
        if (together > most)
        {
            findings.Add(ProofFindings.TabTooMuch(part.Name, $"{Show(together)} together", $"at most {Show(most)} of the outline"));
            return (sound, findings);
        }
        foreach (var (setUp, tab) in all)
        {
            var off = Math.Abs(part.Outline.SignedDistance(tab.At));
            var height = setUp.Blank.Thickness * ProofLimits.TabOfThickness;
            if (tab.Length > ProofLimits.TabLength) findings.Add(Wrong($"{Show(tab.Length)} long", $"at most {Show(ProofLimits.TabLength)}"));
            else if (tab.Z1 - tab.Z0 > height) findings.Add(Wrong($"{Show(tab.Z1 - tab.Z0)} thick", $"at most {Show(height)}, half of the blank"));
            else if (off > ProofLimits.TabOff) findings.Add(Wrong($"{Show(off)} off the outline", $"at most {Show(ProofLimits.TabOff)}"));
            else sound.Add((setUp, tab));

            Finding Wrong(string figure, string limit) => ProofFindings.TabTooMuch(Place(setUp, tab), figure, limit);
        }
        return (sound, findings);
    }

    /// <summary>Tabs of which too little stands.</summary>
    public static IEnumerable<Finding> Missing(Part part, IEnumerable<(SetUp SetUp, Tab Tab)> tabs, ColumnField field)
    {
        foreach (var (setUp, tab) in tabs)
        {
            var (stands, due) = (StandingLength(part, tab, field), Standing * tab.Length);
            if (stands < due) yield return ProofFindings.TabMissing(Place(setUp, tab), stands, due);
        }
    }

    /// <summary>Plan of the wood, at least a quarter of a tab thick, beside the outline near a tab, by the width of the band looked at: its length, mm.</summary>
    private static double StandingLength(Part part, Tab tab, ColumnField field)
    {
        var grid = field.Grid;
        var reach = tab.Length / 2 + ProofLimits.OutlineBand;
        var (column0, column1) = (Column(tab.At.X - reach), Column(tab.At.X + reach));
        var (row0, row1) = (Row(tab.At.Y - reach), Row(tab.At.Y + reach));
        var cells = 0;
        for (var row = row0; row <= row1; row++)
            for (var column = column0; column <= column1; column++)
            {
                var wood = Math.Min(field.Top(column, row), tab.Z1) - Math.Max(field.Bottom(column, row), tab.Z0);
                if (!(wood >= Height * (tab.Z1 - tab.Z0))) continue;
                var outside = part.Outline.SignedDistance(grid.Centre(column, row), ProofLimits.OutlineBand);
                if (outside > 0 && outside < ProofLimits.OutlineBand) cells++;
            }
        return cells * grid.Cell * grid.Cell / ProofLimits.OutlineBand;

        int Column(double x) => Math.Clamp((int)((x - grid.X0) / grid.Cell), 0, grid.Columns - 1);
        int Row(double y) => Math.Clamp((int)((y - grid.Y0) / grid.Cell), 0, grid.Rows - 1);
    }

    private static string Place(SetUp setUp, Tab tab) => string.Create(CultureInfo.InvariantCulture, $"{setUp.Title}, tab at x {tab.At.X:0.00} y {tab.At.Y:0.00}");
    private static string Show(double mm) => string.Create(CultureInfo.InvariantCulture, $"{mm:0.0#} mm");
}
