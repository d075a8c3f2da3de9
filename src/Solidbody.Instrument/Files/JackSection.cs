using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[body.jack]</c>: the bore that reaches the control cavity from the side, and its plate. Common practice, no source.</summary>
static class JackSection
{
    /// <summary>Cavity wall to the body's side, about; only for where the bore starts by default.</summary>
    const double WallToSide = 24;

    public static JackDefinition? Read(TableReader jack, ControlsDefinition? controls, double boardEnd)
    {
        // Square to the cavity's long side, aimed at its middle.
        var inward = (controls?.Angle ?? 0) - Math.PI / 2;
        var x = controls is null ? boardEnd + 200 : controls.CentreX - Math.Cos(inward) * (controls.Width / 2 + WallToSide);
        var fitted = jack.Flag("fitted", controls is not null, "false leaves the bore out");
        var definition = new JackDefinition(
            jack.Length("x", 300, 1100, Math.Round(x, 1), "where the bore meets the outline on the treble side, from the nut"),
            jack.Angle("angle", -180, 180, double.RadiansToDegrees(inward), "its direction inward, counter-clockwise from the strings' direction seen from the front"),
            jack.Length("diameter", 8, 30, 22, "of the bore, made by hand"));
        var plate = ReadPlate(jack.Table("plate"));
        return fitted ? definition with { Plate = plate } : null;
    }

    static JackPlateDefinition? ReadPlate(TableReader plate)
    {
        var fitted = plate.Flag("fitted", false, "true for a jack held by a plate let into the body's side");
        var definition = new JackPlateDefinition(
            plate.Length("length", 20, 80, 38, "along the side"),
            plate.Length("width", 15, 50, 25, "front to back"),
            plate.Length("ledge", 0.5, 8, 2, "how deep it is let in, by hand"),
            plate.Length("screws_apart", 10, 70, 30, "its two screws, along the side"),
            plate.Length("pilot", 1, 5, 2, "hole for a screw, by hand"),
            plate.Length("pilot_depth", 5, 40, 15, "from the ledge"));
        return fitted ? definition : null;
    }
}
