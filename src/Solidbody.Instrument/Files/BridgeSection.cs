using System.Collections.Immutable;
using Solidbody.Instrument.Fretboards;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[body.bridge]</c>: a flat plate held by screws, strings through the body on a guitar, from its rear on a bass. Common practice, no source.</summary>
static class BridgeSection
{
    /// <summary>Plate from the scale line, plate outside the outer string, and its screws inside its edges, mm.</summary>
    sealed record Plate(double From, double To, double BesideStrings, double ScrewInset, double ScrewsFrom, double ScrewsTo);

    static readonly Plate Guitar = new(-14, 30, 16.75, 6, -9, 25);
    static readonly Plate Bass = new(-20.6, 40.4, 13.5, 6, -14, 34);

    /// <summary>Saddles, mm: range of height, travel from the scale line.</summary>
    sealed record Saddles(double Lowest, double Rise, double TravelFrom, double TravelTo);

    static readonly Saddles GuitarSaddles = new(9, 6, -3, 9), BassSaddles = new(9, 8, -4, 14);

    /// <summary>Where a string bends down behind its saddle when the body, the bridge or a tailpiece holds it, mm: behind the scale line (from the plate's rear edge on a bridge), and above the front.</summary>
    const double AheadOfRear = 3, TailpieceAt = 60, ThroughHeight = 2.5, BridgeHeight = 4, TailpieceHeight = 8;

    /// <summary>A tremolo's screws from the scale line, mm.</summary>
    const double PivotsAt = -13.5;

    /// <summary>A screw's place as the file gives it.</summary>
    sealed record ScrewPlace(double X, double Y);

    /// <summary>How much further back a corner of the usual plate reaches because it turns with a fan, mm.</summary>
    public static double Lean(FretLayout layout) => Math.Abs(layout.ScaleLine.Slope) * (layout.Strings.BridgeSpread / 2 + Guitar.BesideStrings);

    public static BridgeDefinition Read(TableReader bridge, StringFan strings, bool hasTremolo)
    {
        var isBass = strings.Basis.IsBass;
        var plate = isBass ? Bass : Guitar;
        var halfWidth = bridge.Length("plate_half_width", 20, 110, strings.BridgeSpread / 2 + plate.BesideStrings, "plate, centre line to its side");
        var (from, to) = (
            bridge.Length("plate_from", -60, 0, plate.From, "plate's front edge from the scale line"),
            bridge.Length("plate_to", 5, 120, plate.To, "plate's rear edge from the scale line"));
        var y = halfWidth - plate.ScrewInset;
        ImmutableArray<ScrewPlace> corners = [new(plate.ScrewsFrom, -y), new(plate.ScrewsFrom, y), new(plate.ScrewsTo, -y), new(plate.ScrewsTo, y)];
        // A tremolo turns on a row of screws before its opening, one for each string.
        var pitch = strings.BridgeSpread / (strings.Basis.Strings - 1);
        ImmutableArray<ScrewPlace> pivots = [.. Enumerable.Range(0, strings.Basis.Strings).Select(i => new ScrewPlace(PivotsAt, Math.Round(i * pitch - strings.BridgeSpread / 2, 2)))];
        var screws = bridge.Tables("screws", 2, 12, hasTremolo ? pivots : corners, (screw, or) => new ScrewPlace(
            screw.Length("x", -60, 120, or?.X, "from the scale line, toward the tail"),
            screw.Length("y", -110, 110, or?.Y, "from the centre line, toward the treble side")));
        var hold = bridge.Choice("strings_held", [("through-body", StringHold.ThroughBody), ("bridge", StringHold.Bridge), ("tailpiece", StringHold.Tailpiece)],
            isBass || hasTremolo ? "bridge" : "through-body", "what holds the strings' balls");
        var through = bridge.Flag("string_through", hold == StringHold.ThroughBody, "whether the strings pass through the body");
        if (!bridge.Has("strings_held")) hold = through ? StringHold.ThroughBody : StringHold.Bridge;
        else if (bridge.IsSound && through != (hold == StringHold.ThroughBody))
            bridge.Refuse("strings_held", $"the strings are held otherwise than `string_through = {(through ? "true" : "false")}` says", through ? "through-body" : "bridge, tailpiece", "change one of the two");
        var throughAt = bridge.Length("string_through_at", 5, 100, 16, "string holes behind the scale line");
        var saddles = isBass ? BassSaddles : GuitarSaddles;
        var (heldAt, heldHeight) = hold switch
        {
            StringHold.ThroughBody => (throughAt, ThroughHeight),
            StringHold.Bridge => (to - AheadOfRear, BridgeHeight),
            _ => (TailpieceAt, TailpieceHeight),
        };
        var followsFan = bridge.Flag("follows_fan", true, "fanned frets: plate and screws turn with the scale line; false: the plate stands square, the saddles alone follow");
        var least = bridge.Length("spread_least", 0, 160, 0, "narrowest spread its saddles can be set to; 0 is not known");
        var most = bridge.Length("spread_most", 0, 160, 0, "widest spread its saddles can be set to; 0 is not known");
        if (bridge.IsSound && least > 0 && most > 0 && least > most)
            bridge.Refuse("spread_least", $"the narrowest spread, {bridge.Show(least)}, is wider than the widest", $"at most {bridge.Show(most)}", "exchange the two");
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
            BaseHeight = bridge.Length("base_height", FreeRange.Base.Least, FreeRange.Base.Most, 0, "what the bridge stands on, above the body's front"),
            SaddleLowest = bridge.Length("saddle_lowest", 2, 40, saddles.Lowest, "string's underside on the lowest saddle, above what the bridge stands on"),
            SaddleRise = bridge.Length("saddle_rise", 0.5, 30, saddles.Rise, "from the lowest saddle to the highest"),
            SaddleTravelFrom = bridge.Length("saddle_travel_from", -20, 2, saddles.TravelFrom, "foremost place of a saddle, from the scale line toward the tail"),
            SaddleTravelTo = bridge.Length("saddle_travel_to", 3, 40, saddles.TravelTo, "rearmost place of a saddle"),
            Hold = hold,
            HeldAt = bridge.Length("held_at", 3, 200, heldAt, "where a string bends down behind its saddle, from the scale line"),
            HeldHeight = bridge.Length("held_height", -10, 30, heldHeight, "height of that place above the body's front"),
            FollowsFan = followsFan,
            LeastSpread = least > 0 ? least : null,
            MostSpread = most > 0 ? most : null,
        };
    }
}
