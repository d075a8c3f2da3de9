using System.Collections.Immutable;
using Solidbody.Instrument.Fretboards;
using Solidbody.Materials;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The list <c>[[body.pickups]]</c>.</summary>
static class PickupSection
{
    public const string Neck = "neck pickup", Bridge = "bridge pickup";

    /// <summary>Cavity along x; across by number of strings; common practice, no source.</summary>
    const double GuitarAlong = 40, BassAlong = 33, GuitarAcrossSix = 72, GuitarAcrossPerString = 10.5, BassAcrossFour = 96, BassAcrossPerString = 19;
    const double Depth = 18, CornerRadius = 3.5;

    /// <summary>Wood between neck pocket and cavity, or from the board's end to it.</summary>
    const double BehindBoard = 11.2;
    /// <summary>Wood between two cavities.</summary>
    const double BetweenPickups = 5;

    /// <summary>Pickups that clear neck pocket and bridge on any scale; on a fan they turn with it.</summary>
    public static ImmutableArray<PickupDefinition> Defaults(OutlineFamily family, FretLayout layout)
    {
        var (strings, isBass) = (layout.Strings, layout.Strings.Scale >= InstrumentBasis.BassScale);
        var (along, across) = isBass
            ? (BassAlong, BassAcrossFour + BassAcrossPerString * (strings.Count - 4))
            : (GuitarAlong, GuitarAcrossSix + GuitarAcrossPerString * (strings.Count - 6));
        PickupDefinition At(string name, double x) => new(name, Math.Round(x, 1), along, across, Depth, CornerRadius, TurnAt(layout, Math.Round(x, 1)));

        // Turned, pickup and plate reach further along the strings, and lie a little askew to each other.
        var (scaleLine, usual) = (layout.ScaleLine, layout.LineAt(strings.Scale - family.BridgePickupBeforeScale));
        var bridge = At(Bridge, strings.Scale - family.BridgePickupBeforeScale / Math.Cos(scaleLine.Turn) - Math.Abs(scaleLine.Slope - usual.Slope) * across / 2);
        if (family.Pickups == 1) return [bridge];
        var least = BehindBoardEnd(layout, along, across);
        // Where a long board leaves no wood between them, the bridge pickup stands alone.
        if (bridge.CentreX - least - along / Math.Cos(scaleLine.Turn) - Math.Abs(scaleLine.Slope - layout.LineAt(least).Slope) * across / 2 < BetweenPickups) return [bridge];
        // A bass body's pickups stay a set distance apart, but never reach the pocket.
        return [At(Neck, family.PickupSpacing > 0 ? Math.Max(bridge.CentreX - family.PickupSpacing, least) : least), bridge];
    }

    /// <summary>Nearest the board's end a pickup's middle may stand, mm.</summary>
    static double BehindBoardEnd(FretLayout layout, double along, double across)
    {
        // A bass's cavity, which is narrower, keeps a guitar's distance.
        var half = Math.Max(along, GuitarAlong) / 2;
        var end = Math.Max(layout.AtEdge(layout.BoardEnd, -1).X, layout.AtEdge(layout.BoardEnd, +1).X) + BehindBoard;
        var turn = Math.Abs(layout.LineAt(end + half).Turn);
        // The turn still grows on the way back: by the reach it asks for, taken at the place it leads to.
        turn = Math.Abs(layout.LineAt(end + half * Math.Cos(turn) + across / 2 * Math.Sin(turn)).Turn);
        return end + half * Math.Cos(turn) + across / 2 * Math.Sin(turn);
    }

    /// <summary>As the frets would lie there, to a tenth of a degree.</summary>
    static double TurnAt(FretLayout layout, double x) => double.DegreesToRadians(Math.Round(double.RadiansToDegrees(layout.LineAt(x).Turn), 1));

    /// <summary>The word for a pickup by its own measures.</summary>
    const string Own = "own";

    public static PickupDefinition Read(TableReader pickup, PickupDefinition? or, FretLayout layout)
    {
        var name = pickup.Text("name", 30, or?.Name, "what wire ways and sheets call it");
        var centre = pickup.Length("centre", 300, 950, or?.CentreX, "of the cavity, from the nut");
        // A common size gives the defaults of all that follows; a measure written goes before it.
        var size = PickupSizes.Find(pickup.Word("size", [Own, .. PickupSizes.All.Select(s => s.Key)], Own, "a common size, or its own measures as below"));
        var across = pickup.Length("across", 20, 220, size?.AcrossFor(layout.Strings.Count) ?? or?.AlongY ?? GuitarAcrossSix, "cavity across the strings");
        var definition = new PickupDefinition(name, centre,
            pickup.Length("along", 10, 80, size?.Along ?? or?.AlongX ?? GuitarAlong, "cavity along the strings"),
            across,
            pickup.Length("depth", 8, 30, size?.Depth ?? or?.Depth ?? Depth, "from the body's front"),
            pickup.Length("corner_radius", 1.5, 30, size?.CornerRadius ?? or?.CornerRadius ?? CornerRadius, "inside corners: a cutter of 6 mm reaches in"),
            pickup.Angle("turn", -45, 45, double.RadiansToDegrees(or?.Turn ?? TurnAt(layout, centre)), "slant, counter-clockwise seen from the front of a right-handed instrument; by default as the frets would lie there"));
        var poles = pickup.Length("pole_spread", 0, 160, 0, "first to last pole, one a string; 0 is not known, or a blade");
        var legs = new PickupLegs(
            pickup.Length("legs_across", 0, 260, size is { LegsOver: > 0 } ? across + size.LegsOver : 0, "over its two legs, across the strings; 0 is none"),
            pickup.Length("legs_along", 5, 60, size is { LegAlong: > 0 } ? size.LegAlong : LegAlong, "of each leg's room, along the strings"),
            pickup.Length("legs_depth", 8, 35, size is { LegDepth: > 0 } ? size.LegDepth : LegDepth, "of the legs' rooms, from the body's front"));
        var screws = new PickupScrews(
            pickup.Length("screws_apart", 0, 230, size is { ScrewsInside: > 0 } ? across - 2 * size.ScrewsInside : 0, "two screws into the wood, across the strings; 0 is none"),
            pickup.Length("screw_pilot", 1, 5, ScrewPilot, "hole for a screw"),
            pickup.Length("screw_depth", 3, 25, ScrewDepth, "from the floor it stands on"));
        return definition with { PoleSpread = poles > 0 ? poles : null, Legs = legs.Across > 0 ? legs : null, Screws = screws.Apart > 0 ? screws : null };
    }

    /// <summary>Rooms for legs, and pilots of mounting screws; common practice, no source.</summary>
    const double LegAlong = 14, LegDepth = 24, ScrewPilot = 2.5, ScrewDepth = 10;
}
