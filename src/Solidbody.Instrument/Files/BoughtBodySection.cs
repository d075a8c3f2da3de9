using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[bought_body]</c>: measures of a body that exists. What it says takes the place of <c>[body]</c>.</summary>
static class BoughtBodySection
{
    public const string Key = "bought_body";

    /// <summary>What the file says of the body.</summary>
    public sealed record Reading(BoughtBody Body, string Wood, double Thickness, NeckPocketDefinition Pocket);

    /// <returns>Null when there is no such table.</returns>
    public static Reading? Read(TableReader file, InstrumentBasis basis)
    {
        if (!file.Has(Key)) return null;
        file.RefuseIfGiven("body", "a body to be made, or a bought one", $"remove it, or [{Key}]");
        if (file.Has(BoughtNeckSection.Key)) file.Refuse(Key, "neck and body are both bought", "one of them", "remove the one that is to be made");
        var t = file.Table(Key);
        return new(
            new BoughtBody(
                t.Length("pocket_width", 35, 130, null, "neck pocket at its end wall"),
                t.Length("pocket_width_at_mouth", 30, 130, null, "where the heel leaves the body"),
                t.Length("pocket_to_scale_line", 80, 400, null, "from the pocket's end wall to the line the saddles stand on before compensation")),
            t.Word("wood", basis.Woods, null, "wood of the body: the pocket's fit moves with it"),
            t.Length("thickness", 25, 70, 44.45, "front to back"),
            new NeckPocketDefinition(
                t.Length("pocket_length", 40, 130, null, "from where the heel leaves the body to the end wall, less the clearance"),
                t.Length("pocket_depth", 5, 35, null, "from the body's front"),
                t.Length("clearance", 0, 0.5, 0.1, "wanted between heel and wall, each side and at the end"),
                t.Length("pocket_corner_radius", 0, 40, null, "inside corners")));
    }

    /// <summary>The board's end and width so that the heel fills the pocket and the scale ends at the bridge, where the file does not say its own.</summary>
    public static FretboardDefinition Board(TableReader table, FretboardDefinition board, StringFan strings, Reading r)
    {
        var heelEnd = strings.Basis.Scale - r.Body.PocketToScaleLine - r.Pocket.Clearance;
        if (!table.Has("width_at_end") && !table.Has("edge_at_last_fret"))
            board = board with { WidthAtEnd = strings.Nut.Width + (r.Body.PocketWidth - 2 * r.Pocket.Clearance - strings.Nut.Width) * (heelEnd + board.Overhang) / heelEnd };
        if (table.Has("beyond_last_fret")) return board;
        var beyond = board.BeyondLastFret + heelEnd - strings.Layout(board).HeelEnd;
        // Outside what a board can be, its usual end stands, and the check says what is off.
        return beyond is >= FretboardSection.LeastBeyond and <= FretboardSection.MostBeyond ? board with { BeyondLastFret = beyond } : board;
    }

    /// <summary>The body as far as it is known; it has nothing of its own to be made.</summary>
    public static BodyDefinition Body(BodyDefinition usual, Reading r, BridgeDefinition bridge) => usual with
    {
        Wood = r.Wood,
        Thickness = r.Thickness,
        Top = null,
        Binding = null,
        Pocket = r.Pocket,
        Bridge = bridge,
        Pickups = [],
        Controls = null,
        Jack = null,
        WireWays = [],
        StrapButtons = [],
    };
}
