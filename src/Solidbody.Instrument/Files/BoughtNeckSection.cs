using System.Collections.Immutable;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[bought_neck]</c>: measures of a neck that exists. What it says takes the place of <c>[neck]</c>, <c>[headstock]</c> and <c>[fretboard]</c>.</summary>
static class BoughtNeckSection
{
    public const string Key = "bought_neck";

    static readonly ImmutableArray<string> Replaced = ["neck", "headstock", "fretboard"];

    /// <summary>What the file says of the neck beside its outline: board and heel thickness, playing face, screws.</summary>
    public sealed record Reading(BoughtNeck Neck, double HeelThickness, double BoardThickness, double Overhang, double Radius, double FretHeight, ScrewPattern Screws);

    /// <returns>Null when there is no such table.</returns>
    public static Reading? Read(TableReader file, InstrumentBasis basis, NutDefinition nut)
    {
        if (!file.Has(Key)) return null;
        foreach (var key in Replaced) file.RefuseIfGiven(key, "a neck to be made, or a bought one", $"remove it, or [{Key}]");
        var t = file.Table(Key);
        var heelEnd = t.Length("nut_to_heel_end", 300, 800, null, "from the nut's fretboard-side face to the heel's end, along the middle");
        var (length, width) = (t.Length("heel_length", 40, 130, null, "of the heel that lies in the pocket"), t.Length("heel_width", 35, 130, null, "at the heel's end"));
        var board = t.Length("board_thickness", 0, 12, 6.35, "fretboard on the middle; 0 where the neck is one piece");
        var whole = t.Length("heel_thickness", 15, 40, null, "of the heel, with the fretboard");
        var neck = new BoughtNeck(heelEnd,
            t.Length("nut_to_fret_12", 250, 475, basis.Scale / 2, "to the crown of fret 12: half the neck's own scale; measure it, the bridge stands by it"),
            t.Length("last_fret_to_heel_end", -60, 80, null, "from the last fret's crown to the heel's end; negative where the heel ends before the fret"),
            width,
            t.Length("heel_width_at_front", 30, 130, Math.Round(width - (width - nut.Width) * length / heelEnd, 2), "where the heel leaves the body"),
            length,
            t.Length("corner_radius", 0, 40, 3, "plan radius of the heel's two end corners; 0 is sharp"));
        if (t.IsSound && !(whole - board >= LeastHeel))
            t.Refuse("heel_thickness", $"the heel of {t.Show(whole)} has {t.Show(whole - board)} of wood under its fretboard", $"at least {t.Show(LeastHeel)}", "measure it with the fretboard");
        return new(neck, whole - board, board,
            t.Length("board_overhang", 0, 60, 0, "fretboard beyond the heel's end, over the body"),
            t.Length("radius", 150, 1500, 304.8, "of the playing face"),
            t.Length("fret_height", 0.6, 1.8, 1.1, "of a fret's crown above the board"),
            NeckSection.ReadScrews(t.Table("screws"), width));
    }

    /// <summary>Wood that takes a screw, mm; common practice, no source.</summary>
    const double LeastHeel = 10;

    /// <summary>The board as measured: heel's end and width come out as they are.</summary>
    public static FretboardDefinition Board(FretboardDefinition usual, StringFan strings, Reading r)
    {
        var end = r.Neck.NutToHeelEnd + r.Overhang;
        var board = usual with
        {
            Thickness = r.BoardThickness,
            RadiusAtNut = r.Radius,
            RadiusAtLastFret = r.Radius,
            FretHeight = r.FretHeight,
            End = BoardEndKind.Square,
            Overhang = r.Overhang,
            BeyondLastFret = 0,
            WidthAtEnd = strings.Nut.Width + (r.Neck.HeelWidth - strings.Nut.Width) * end / r.Neck.NutToHeelEnd,
        };
        return board with { BeyondLastFret = end - strings.Layout(board).BoardEnd.Middle };
    }

    public static HeelDefinition Heel(HeelDefinition usual, Reading r) =>
        usual with { Thickness = r.HeelThickness, CornerRadius = r.Neck.HeelCorner, Length = r.Neck.HeelLength, Screws = r.Screws };

    /// <summary>The pocket by the heel: the glue plane stands as high above the body as on a neck of our own.</summary>
    public static PocketDefaults Pocket(Reading r) => new(r.Neck.HeelLength, Math.Clamp(r.HeelThickness - PocketDefaults.GluePlaneAbove, FreeRange.Depth.Least, FreeRange.Depth.Most), r.Neck.HeelCorner);
}
