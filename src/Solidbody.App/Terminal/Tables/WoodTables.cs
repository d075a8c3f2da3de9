using Solidbody.Instrument;
using Solidbody.Instrument.Balance;
using Solidbody.Materials;

namespace Solidbody.App.Terminal.Tables;

/// <summary>What the wood does: moves, weighs, costs.</summary>
internal static class WoodTables
{
    public static TextTable? Movement(Design design, FigureWords words)
    {
        if (design.Figures.Movement is not { } movement) return null;
        var table = new TextTable($"Width, {words.LengthUnitName}", "Wood", "Built", "Driest", "Wettest");
        table.Add("moisture, %", "", FigureWords.Number(movement.Built, 1), FigureWords.Number(movement.Driest, 1), FigureWords.Number(movement.Wettest, 1));
        foreach (var w in movement.Widths) table.Add(w.What, w.Wood, words.Length(w.Width), words.Length(w.Width + w.Dry), words.Length(w.Width + w.Wet));
        if (movement.Pocket is { } pocket) table.Add($"play: {pocket.What}", "", words.Length(pocket.Built), words.Length(pocket.Driest), words.Length(pocket.Wettest));
        foreach (var c in movement.Cover) table.Add($"play: {c.What}", "", words.Length(c.Built), words.Length(c.Driest), words.Length(c.Wettest));
        table.Add("fret ends stand out, a side", "", "", words.Length(movement.FretEnds), "");
        table.Add("scale line, at most", "", "", "", words.Length(movement.ScaleAtMost));
        return table;
    }

    public static TextTable? Mass(Design design, FigureWords words)
    {
        if (design.Figures.Balance is not { } balance) return null;
        var table = new TextTable("Thing", $"Mass, {words.MassUnitName}", $"x, {words.LengthUnitName}", "y", "z");
        foreach (var t in balance.Things.Append(balance.Whole)) table.Add(t.Name, words.Mass(t.Mass), words.Coarse(t.Centre.X), words.Coarse(t.Centre.Y), words.Coarse(t.Centre.Z));
        return table;
    }

    /// <summary>As it is in the first row; below it what a change would make of it.</summary>
    public static TextTable? Balance(Design design, FigureWords words)
    {
        if (design.Figures.Balance is not { Hangs: { } now } balance) return null;
        var table = new TextTable("Change", $"Mass, {words.MassUnitName}", "Rests, °", "Holds, °", "Hand, N");
        void Row(string what, double mass, HangingPose? h) => table.Add(what, words.Mass(mass), FigureWords.Degrees(h?.RestsAt), FigureWords.Degrees(h?.Highest), FigureWords.Newtons(h?.HandForce));
        Row("as it is", balance.Whole.Mass, now);
        foreach (var c in balance.Changes) Row(c.What, c.Mass, c.Hangs);
        table.Add("on the knee, at the nut", "", "", "", FigureWords.Newtons(balance.Sits.HandForce(now.Angle)));
        return table;
    }

    public static TextTable? Bill(Design design, FigureWords words)
    {
        if (design.Figures.WoodBill is not { } bill) return null;
        var table = new TextTable("Part", "Wood", $"Boards, {words.LengthUnitName}", words.IsInches ? "Board ft" : "Litres", "Waste", "Cost");
        string Volume(double mm3) => words.IsInches ? FigureWords.Number(mm3 / Instrument.Buying.WoodBill.BoardFoot, 2) : FigureWords.Litres(mm3);
        foreach (var l in bill.Lines)
            table.Add(l.Part, l.Wood, $"{l.Pieces} of {words.Coarse(l.Length)}×{words.Coarse(l.Width)}×{words.Coarse(l.Thickness)}", Volume(l.Bought), $"{FigureWords.Percent(l.WasteShare)} %", FigureWords.Number(l.Cost, 2));
        foreach (var strip in design.Figures.Bindings)
            table.Add(strip.Name, BindingStrip.Of(strip.Definition.Kind).Name, $"1 of {words.Coarse(strip.Bought)}×{words.Coarse(strip.Definition.Height)}×{words.Coarse(strip.Definition.Thickness)}", "", "", "");
        table.Add("together", "", "", Volume(bill.Bought), $"{FigureWords.Percent(bill.WasteShare)} %", FigureWords.Number(bill.Cost, 2));
        return table;
    }
}
