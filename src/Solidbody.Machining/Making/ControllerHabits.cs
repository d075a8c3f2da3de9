using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Shop;

namespace Solidbody.Machining.Making;

/// <summary>The shop's controller as the program writer knows it.</summary>
internal static class ControllerHabits
{
    public static ProgramStyle Of(ShopDefinition shop, Cutter cutter)
    {
        var machine = shop.Machine;
        return new()
        {
            Decimals = machine.Decimals,
            Inches = machine.Inches,
            LineNumbers = machine.LineNumbers,
            Comments = machine.Comments,
            Arcs = machine.Arcs,
            ToolNumber = machine.ToolChanger ? shop.Cutters.IndexOf(cutter) + 1 : null,
            LengthOffsets = machine.LengthOffsets,
            DrillingCycles = machine.DrillingCycles,
            AirWord = machine.AirWord,
            Terse = machine.Terse,
            SpindleDwellSeconds = machine.SpindleWait,
        };
    }
}
