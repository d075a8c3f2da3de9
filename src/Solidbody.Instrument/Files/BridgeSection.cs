using System.Collections.Immutable;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[body.bridge]</c>: a flat plate held by screws, strings through the body on a guitar, from its rear on a bass. Common practice, no source.</summary>
static class BridgeSection
{
    /// <summary>Plate from the scale line, plate outside the outer string, and its screws inside its edges, mm.</summary>
    sealed record Plate(double From, double To, double BesideStrings, double ScrewInset, double ScrewsFrom, double ScrewsTo);

    static readonly Plate Guitar = new(-14, 30, 16.75, 6, -9, 25);
    static readonly Plate Bass = new(-20.6, 40.4, 13.5, 6, -14, 34);

    /// <summary>A screw's place as the file gives it.</summary>
    sealed record ScrewPlace(double X, double Y);

    public static BridgeDefinition Read(TableReader bridge, StringFan strings)
    {
        var isBass = strings.Basis.IsBass;
        var plate = isBass ? Bass : Guitar;
        var halfWidth = bridge.Length("plate_half_width", 20, 90, strings.BridgeSpread / 2 + plate.BesideStrings, "plate, centre line to its side");
        var (from, to) = (
            bridge.Length("plate_from", -60, 0, plate.From, "plate's front edge from the scale line"),
            bridge.Length("plate_to", 5, 120, plate.To, "plate's rear edge from the scale line"));
        var y = halfWidth - plate.ScrewInset;
        ImmutableArray<ScrewPlace> corners = [new(plate.ScrewsFrom, -y), new(plate.ScrewsFrom, y), new(plate.ScrewsTo, -y), new(plate.ScrewsTo, y)];
        var screws = bridge.Tables("screws", 2, 12, corners, (screw, or) => new ScrewPlace(
            screw.Length("x", -60, 120, or?.X, "from the scale line, toward the tail"),
            screw.Length("y", -90, 90, or?.Y, "from the centre line, toward the treble side")));
        var through = bridge.Flag("string_through", !isBass, "whether the strings pass through the body");
        var throughAt = bridge.Length("string_through_at", 5, 100, 16, "string holes behind the scale line");
        return new BridgeDefinition
        {
            StringSpread = strings.BridgeSpread,
            Screws = [.. screws.Select(s => (s.X, s.Y))],
            ScrewPilot = bridge.Length("screw_pilot", 1, 5, 2.5, "pilot hole of a screw"),
            ScrewDepth = bridge.Length("screw_depth", 5, 35, 15, "from the body's front"),
            StringThroughAt = through ? throughAt : null,
            StringHole = bridge.Length("string_hole", 2, 6, 3, "hole for a string, through the body"),
            Ferrule = bridge.Length("ferrule", 4, 16, 8, "ferrule's seat in the back, diameter"),
            FerruleDepth = bridge.Length("ferrule_depth", 3, 30, 10, "of that seat"),
            PlateFrom = from,
            PlateTo = to,
            PlateHalfWidth = halfWidth,
        };
    }
}
