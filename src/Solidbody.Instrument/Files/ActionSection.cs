using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[action]</c>: how the strings shall lie over the frets. Defaults are common practice, no source.</summary>
static class ActionSection
{
    sealed record Usual(double Relief, double Bass, double Treble, double Nut);

    static readonly Usual Guitar = new(0.2, 2.0, 1.6, 0.4), Bass = new(0.3, 2.6, 2.2, 0.5);

    public static ActionDefinition Read(TableReader action, InstrumentBasis basis)
    {
        var usual = basis.IsBass ? Bass : Guitar;
        return new ActionDefinition
        {
            At12Bass = action.Length("action_12_bass", 0.5, 6, usual.Bass, "lowest string over fret 12: from the fret's top to its underside"),
            At12Treble = action.Length("action_12_treble", 0.5, 6, usual.Treble, "highest string over fret 12"),
            NutHeight = action.Length("nut_height", 0, 2, usual.Nut, "bottom of the nut's slots above the fret tops, carried on to the nut"),
            Relief = action.Length("relief", 0, 1, usual.Relief, "hollow of the fret tops half way along the free neck, strings at pitch"),
            FallAway = action.Length("fall_away", 0, 1, 0, "last fret dressed below the line of the frets over the body"),
            Free = action.Choice("solve",
                [("saddle", FreeMeasure.Saddle), ("angle", FreeMeasure.Angle), ("depth", FreeMeasure.Depth), ("heel", FreeMeasure.Heel), ("shim", FreeMeasure.Shim), ("bridge", FreeMeasure.Bridge), ("above", FreeMeasure.Above)],
                "saddle", "the measure that follows from the others: saddle heights, or what brings them to the middle of the bridge's range"),
        };
    }

    /// <summary>What is to follow from the other measures cannot be given as well.</summary>
    public static void RefuseTheFreeMeasure(FreeMeasure free, JointKind joint, TableReader action, TableReader neck, TableReader body)
    {
        var goesThrough = joint == JointKind.Through;
        if (!free.IsOf(joint))
        {
            action.Refuse("solve", goesThrough ? "a through-neck has no pocket, and its heel's thickness lifts nothing" : "only a through-neck stands at a height of its own over the body",
                goesThrough ? "saddle, angle, bridge or above" : "saddle, angle, depth, heel, shim or bridge", $"solve for `{(goesThrough ? "above" : "depth")}`");
            return;
        }
        var (seat, bridge) = (goesThrough ? neck.Table(CoreSection.Key) : body.Table("pocket"), body.Table("bridge"));
        var (table, key, name) = free switch
        {
            FreeMeasure.Above => (seat, "above", "neck.core.above"),
            FreeMeasure.Angle => (seat, "angle", goesThrough ? "neck.core.angle" : "body.pocket.angle"),
            FreeMeasure.Depth => (seat, "depth", "body.pocket.depth"),
            FreeMeasure.Shim => (seat, "shim", "body.pocket.shim"),
            FreeMeasure.Heel => (neck.Table("heel"), "thickness", "neck.heel.thickness"),
            FreeMeasure.Bridge => (bridge, "base_height", "body.bridge.base_height"),
            _ => (action, "", ""),
        };
        if (key.Length > 0 && table.Has(key))
            table.Refuse(key, $"`{name}` is given, and `action.solve` says it follows from the others", "one of the two", "remove it here, or solve for another measure");
    }
}
