using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[body.controls]</c>: a cavity from the back under a cover, a rectangle by its own measures or drawn round shafts that stand at places of their own.</summary>
static class ControlsSection
{
    /// <summary>How far the cavity moves out when the body grows wider: a little less than the side itself, which grows rounder too.</summary>
    const double WithSide = 0.4;

    /// <summary>Of the cover: one near each corner.</summary>
    const int Screws = 4;

    /// <summary>Any of these makes the cavity a rectangle; these have a meaning with them only.</summary>
    static readonly string[] OfRectangle = ["length", "width", "centre_x", "centre_y"], WithRectangle = ["angle", "corner_radius"];

    /// <param name="tail">Rearmost point of the body, from the nut, mm.</param>
    /// <param name="wider">How much wider than the family's drawing the body is, mm: the cavity moves out with its side.</param>
    public static ControlsDefinition? Read(TableReader controls, OutlineFamily family, double tail, double wider, int pickups)
    {
        var fitted = controls.Flag("fitted", true, "false leaves the cavity out");
        var length = controls.Length("length", 30, 200, family.ControlsLength, "of the cavity, along its long side");
        var (x, y) = (Math.Round(tail - family.ControlsBeforeTail, 1), Math.Round(family.ControlsY + WithSide * wider, 1));
        var rectangle = new ControlsDefinition(
            controls.Length("centre_x", 300, 1100, x, "of the cavity, from the nut"),
            controls.Length("centre_y", -200, 200, y, "of the cavity, from the centre line toward the treble side"),
            length,
            controls.Length("width", 20, 120, family.ControlsWidth, "across its long side"),
            controls.Angle("angle", -90, 90, family.ControlsAngle, "of its long side, counter-clockwise from the strings' direction seen from the front"),
            controls.Length("corner_radius", 3, 60, 10, "inside corners"),
            controls.Length("floor", 3, 20, 6, "wood left between the cavity and the front"),
            controls.Length("ledge_width", 2, 15, 6, "ledge for the cover, all round"),
            controls.Length("ledge_depth", 1, 6, 2.5, "of the ledge, from the back"),
            controls.Tables("shafts", 0, 8, ShaftSection.Defaults(family, length, pickups), ShaftSection.Read))
        { Cover = CoverSection.Read(controls.Table("cover"), Screws) };
        var placed = controls.Tables<ShaftDefinition>("around", 0, 8, [], ShaftSection.ReadPlaced);
        if (placed.IsEmpty) return fitted ? rectangle : null;
        if (controls.Has("shafts")) controls.Refuse("around", "shafts stand in `body.controls.shafts` and in `body.controls.around`", "one of the two lists", "move all shafts into one list");
        if (OfRectangle.Any(controls.Has)) return fitted ? Within(rectangle, placed) : null;
        if (WithRectangle.FirstOrDefault(controls.Has) is { } idle)
            controls.Refuse(idle, $"`body.controls.{idle}` has no meaning for a cavity drawn round its shafts", "length, width, centre_x or centre_y with it", "remove it, or give the cavity's own measures");
        return fitted ? Around(rectangle, placed) : null;
    }

    /// <summary>The rectangle as measured, its shafts at their own places.</summary>
    static ControlsDefinition Within(ControlsDefinition c, ImmutableArray<ShaftDefinition> placed) => c with
    {
        Shafts = [.. placed.Select(s => (s, Own: (new Point2(s.Along, s.Across) - new Point2(c.CentreX, c.CentreY)).Turned(-c.Angle))).Select(p => p.s with { Along = p.Own.X, Across = p.Own.Y })],
    };

    /// <summary>The cavity as the box round its shafts' rooms.</summary>
    static ControlsDefinition Around(ControlsDefinition c, ImmutableArray<ShaftDefinition> placed)
    {
        var box = placed.Aggregate(Box2.Empty, (b, s) => b.With(new(s.Along - s.Room, s.Across - s.Room)).With(new(s.Along + s.Room, s.Across + s.Room)));
        return Within(c with { CentreX = box.Centre.X, CentreY = box.Centre.Y, Length = box.Width, Width = box.Height, Angle = 0, IsAroundShafts = true }, placed);
    }
}
