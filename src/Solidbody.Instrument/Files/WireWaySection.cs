using System.Collections.Immutable;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The list <c>[[body.wire_ways]]</c>: from pickup to pickup, on to the controls, and a ground to the bridge.</summary>
static class WireWaySection
{
    const string Controls = "controls", Bridge = "bridge", Springs = "spring cavity", Pocket = "neck pocket";

    /// <summary>Long drills on hand in most shops; common practice, no source.</summary>
    const double Signal = 6, Ground = 3;

    public static ImmutableArray<WireWayDefinition> Read(TableReader body, ImmutableArray<PickupDefinition> pickups, bool hasControls, bool hasTremolo, bool hasPocket)
    {
        ImmutableArray<string> rooms = [.. pickups.Select(p => p.Name).Distinct(), .. hasPocket ? [Pocket] : ImmutableArray<string>.Empty, .. hasControls ? [Controls] : ImmutableArray<string>.Empty, .. hasTremolo ? [Springs] : ImmutableArray<string>.Empty, Bridge];
        return body.Tables("wire_ways", 0, 12, Defaults(pickups, hasControls, hasTremolo, hasPocket), (way, or) =>
        {
            var from = way.Word("from", rooms, or?.From, "the room it starts from");
            var to = way.Word("to", rooms, or?.To, "the room it ends in");
            if (or is null && way.IsSound && from == to) way.Refuse("to", $"the wire way goes from \"{from}\" to itself", "two different rooms", "name the other room");
            return new WireWayDefinition(from, to, way.Length("diameter", 2, 15, or?.Diameter ?? Signal, "of the bore, made by hand"))
            {
                Made = way.Choice("made", [("drilled", WireMaking.Drilled), ("ploughed", WireMaking.Ploughed)], or is { Made: WireMaking.Ploughed } ? "ploughed" : "drilled", "with a long drill, or as a groove before the glue-up: under the top, or in the joint"),
            };
        });
    }

    /// <summary>The table <c>[body.long_drill]</c>; a drill of a foot in a common chuck: common practice, no source.</summary>
    public static LongDrillDefinition ReadDrill(TableReader drill) => new(
        drill.Length("length", 60, 900, 300, "of the drill for wire ways, free of the chuck"),
        drill.Length("chuck", 5, 80, 40, "diameter of the chuck"));

    static ImmutableArray<WireWayDefinition> Defaults(ImmutableArray<PickupDefinition> pickups, bool hasControls, bool hasTremolo, bool hasPocket)
    {
        if (!hasControls) return [];
        // Without a pocket's open mouth no drill lies level; but there is a glue line to plough.
        var ways = pickups.Zip(pickups.Skip(1), (a, b) => new WireWayDefinition(a.Name, b.Name, Signal) { Made = hasPocket ? WireMaking.Drilled : WireMaking.Ploughed }).ToList();
        if (!pickups.IsEmpty) ways.Add(new(pickups[^1].Name, Controls, Signal));
        ways.Add(new(Controls, hasTremolo ? Springs : Bridge, Ground));
        return [.. ways];
    }
}
