using System.Collections.Immutable;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The list <c>[[body.pickups]]</c>.</summary>
static class PickupSection
{
    public const string Neck = "neck pickup", Bridge = "bridge pickup";

    /// <summary>Cavity along x; across by number of strings; common practice, no source.</summary>
    const double GuitarAlong = 40, BassAlong = 33, GuitarAcrossSix = 72, GuitarAcrossPerString = 10.5, BassAcrossFour = 96, BassAcrossPerString = 19;
    const double Depth = 18, CornerRadius = 3.5;

    /// <summary>Centre of the neck pickup behind the board's end, so that wood stays between neck pocket and cavity.</summary>
    const double GuitarBehindBoard = 31.2;

    /// <summary>Pickups that clear neck pocket and bridge on any scale.</summary>
    public static ImmutableArray<PickupDefinition> Defaults(OutlineFamily family, StringFan strings, double boardEnd)
    {
        var basis = strings.Basis;
        var (along, across) = basis.IsBass
            ? (BassAlong, BassAcrossFour + BassAcrossPerString * (basis.Strings - 4))
            : (GuitarAlong, GuitarAcrossSix + GuitarAcrossPerString * (basis.Strings - 6));
        PickupDefinition At(string name, double x) => new(name, Math.Round(x, 1), along, across, Depth, CornerRadius, 0);

        var bridge = At(Bridge, basis.Scale - family.BridgePickupBeforeScale);
        if (family.Pickups == 1) return [bridge];
        // A bass's pickups stay a set distance apart, but never reach the pocket.
        var neck = basis.IsBass
            ? Math.Max(basis.Scale - family.BridgePickupBeforeScale - family.PickupSpacing, boardEnd + GuitarBehindBoard)
            : boardEnd + GuitarBehindBoard;
        return [At(Neck, neck), bridge];
    }

    public static PickupDefinition Read(TableReader pickup, PickupDefinition? or) => new(
        pickup.Text("name", 30, or?.Name, "what wire ways and sheets call it"),
        pickup.Length("centre", 300, 950, or?.CentreX, "of the cavity, from the nut"),
        pickup.Length("along", 10, 80, or?.AlongX ?? GuitarAlong, "cavity along the strings"),
        pickup.Length("across", 20, 180, or?.AlongY ?? GuitarAcrossSix, "cavity across the strings"),
        pickup.Length("depth", 8, 30, or?.Depth ?? Depth, "from the body's front"),
        pickup.Length("corner_radius", 1.5, 30, or?.CornerRadius ?? CornerRadius, "inside corners: a cutter of 6 mm reaches in"),
        pickup.Angle("turn", -30, 30, double.RadiansToDegrees(or?.Turn ?? 0), "slant, counter-clockwise seen from the front of a right-handed instrument"));
}
