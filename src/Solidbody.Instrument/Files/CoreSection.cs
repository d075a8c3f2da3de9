using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[neck.core]</c>: a through-neck's wood behind the neck, and how the neck lies to the body. Defaults are common practice, no source.</summary>
static class CoreSection
{
    public const string Key = "core";

    /// <summary>The board at its end is a core's least width, mm.</summary>
    const double Narrowest = 30, Widest = 200;

    /// <summary>Longest, widest and thickest board worth stating, mm.</summary>
    const double LongestBoard = 3000, WidestBoard = 500, ThickestBoard = 150;

    /// <returns>Null unless the neck goes through.</returns>
    public static CoreDefinition? Read(TableReader neck, JointKind joint, double heelWidth)
    {
        if (joint != JointKind.Through)
        {
            neck.RefuseIfGiven(Key, "a through-neck: joint = \"through\"", "remove it, or let the neck go through the body");
            return null;
        }
        var core = neck.Table(Key);
        var width = core.Length("width", Narrowest, Widest, Math.Clamp(heelWidth, Narrowest, Widest), "of the body's middle, which is one piece with the neck: level and parallel to the tail; the board's width at its end");
        if (core.IsSound && width < heelWidth)
            core.Refuse("width", $"the core is {core.Show(width)} wide, the neck at its heel {core.Show(heelWidth)}", $"at least {core.Show(heelWidth)}", "widen the core: the board's edges would hang free beside it");
        return new(width) { Board = ReadBoard(core) };
    }

    static BoardDefinition? ReadBoard(TableReader core)
    {
        var (length, width, thickness) = (
            core.Length("board_length", 0, LongestBoard, 0, "of the board on hand for neck and core; 0 is not stated"),
            core.Length("board_width", 0, WidestBoard, 0, "its width"),
            core.Length("board_thickness", 0, ThickestBoard, 0, "its thickness, as planed"));
        double[] given = [length, width, thickness];
        if (given.All(v => v == 0)) return null;
        if (core.IsSound && given.Any(v => v == 0))
            core.Refuse(length > 0 ? "board_length" : width > 0 ? "board_width" : "board_thickness", "only part of the board on hand is stated", "length, width and thickness, or none of them", "give all three");
        return new(length, width, thickness);
    }

    /// <summary>Where another neck has its pocket: how a through-neck lies to the body. Null unless the neck goes through.</summary>
    public static NeckPocketDefinition? Seat(TableReader neck, NeckDefinition made)
    {
        if (made.Joint != JointKind.Through) return null;
        var core = neck.Table(Key);
        var above = core.Length("above", FreeRange.Above.Least, FreeRange.Above.Most, PocketDefaults.GluePlaneAbove, "the neck's glue plane over the body's front, where the heel ends");
        var angle = core.Angle("angle", FreeRange.AngleDegrees.Least, FreeRange.AngleDegrees.Most, 0, "the neck's plane to the body's front; positive leans the head back");
        return new(made.Heel.Length, made.Heel.Thickness * Math.Cos(angle) - above, 0, 0, angle, 0, AngleMaking.Floor);
    }
}
