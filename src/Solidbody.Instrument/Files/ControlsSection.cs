using System.Collections.Immutable;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The tables <c>[body.controls]</c> and <c>[body.jack]</c>: a cavity from the back under a cover, and the bore that reaches it from the side.</summary>
static class ControlsSection
{
    /// <summary>Shaft bores, metric bushes; common practice, no source.</summary>
    const double PotHole = 8, SwitchHole = 12;

    /// <summary>How far the cavity moves out when the body grows wider: a little less than the side itself, which grows rounder too.</summary>
    const double WithSide = 0.4;

    /// <param name="tail">Rearmost point of the body, from the nut, mm.</param>
    /// <param name="wider">How much wider than the family's drawing the body is, mm: the cavity moves out with its side.</param>
    public static ControlsDefinition? Read(TableReader controls, OutlineFamily family, double tail, double wider, int pickups)
    {
        var fitted = controls.Flag("fitted", true, "false leaves the cavity out");
        var length = controls.Length("length", 30, 200, family.ControlsLength, "of the cavity, along its long side");
        var definition = new ControlsDefinition(
            controls.Length("centre_x", 300, 1100, Math.Round(tail - family.ControlsBeforeTail, 1), "of the cavity, from the nut"),
            controls.Length("centre_y", -200, 200, Math.Round(family.ControlsY + WithSide * wider, 1), "of the cavity, from the centre line toward the treble side"),
            length,
            controls.Length("width", 20, 120, family.ControlsWidth, "across its long side"),
            controls.Angle("angle", -90, 90, family.ControlsAngle, "of its long side, counter-clockwise from the strings' direction seen from the front"),
            controls.Length("corner_radius", 3, 60, 10, "inside corners"),
            controls.Length("floor", 3, 20, 6, "wood left between the cavity and the front"),
            controls.Length("ledge_width", 2, 15, 6, "ledge for the cover, all round"),
            controls.Length("ledge_depth", 1, 6, 2.5, "of the ledge, from the back"),
            controls.Tables("shafts", 0, 8, DefaultShafts(family, length, pickups), ReadShaft));
        return fitted ? definition : null;
    }

    /// <summary>Volume and tone; with more pickups than one a switch (a second volume, by a bass's habit), evenly along the cavity.</summary>
    static ImmutableArray<ShaftDefinition> DefaultShafts(OutlineFamily family, double length, int pickups)
    {
        if (pickups < 2) return [new("volume", Math.Round(-length / 4, 1), 0, PotHole), new("tone", Math.Round(length / 4, 1), 0, PotHole)];
        var step = Math.Round(length / 3, 1);
        var first = family.IsBass ? new ShaftDefinition("blend", -step, 0, PotHole) : new ShaftDefinition("switch", -step, 0, SwitchHole);
        return [first, new("volume", 0, 0, PotHole), new("tone", step, 0, PotHole)];
    }

    static ShaftDefinition ReadShaft(TableReader shaft, ShaftDefinition? or) => new(
        shaft.Text("name", 30, or?.Name, "what sheets call it"),
        shaft.Length("along", -100, 100, or?.Along, "from the cavity's middle along its long side"),
        shaft.Length("across", -60, 60, or?.Across ?? 0, "from the cavity's middle across it, toward the treble side"),
        shaft.Length("diameter", 4, 20, or?.Diameter ?? PotHole, "hole through the front"));

    /// <summary>Cavity wall to the body's side, about; only for where the bore starts by default.</summary>
    const double WallToSide = 24;

    public static JackDefinition? ReadJack(TableReader jack, ControlsDefinition? controls, double boardEnd)
    {
        // Square to the cavity's long side, aimed at its middle.
        var inward = (controls?.Angle ?? 0) - Math.PI / 2;
        var x = controls is null ? boardEnd + 200 : controls.CentreX - Math.Cos(inward) * (controls.Width / 2 + WallToSide);
        var fitted = jack.Flag("fitted", controls is not null, "false leaves the bore out");
        var definition = new JackDefinition(
            jack.Length("x", 300, 1100, Math.Round(x, 1), "where the bore meets the outline on the treble side, from the nut"),
            jack.Angle("angle", -180, 180, double.RadiansToDegrees(inward), "its direction inward, counter-clockwise from the strings' direction seen from the front"),
            jack.Length("diameter", 8, 30, 22, "of the bore, made by hand"));
        return fitted ? definition : null;
    }
}
