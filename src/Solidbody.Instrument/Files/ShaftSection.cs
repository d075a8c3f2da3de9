using System.Collections.Immutable;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The lists <c>[[body.controls.shafts]]</c> and <c>[[body.controls.around]]</c>. Common practice, no source.</summary>
static class ShaftSection
{
    /// <summary>Shaft bores, metric bushes; room behind the front for a pot of 24 mm and for a switch.</summary>
    const double PotHole = 8, SwitchHole = 12, PotRoom = 16, ScrewHole = 3;

    /// <summary>Volume and tone; with more pickups than one a switch (a second volume, by a bass's habit), evenly along the cavity.</summary>
    public static ImmutableArray<ShaftDefinition> Defaults(OutlineFamily family, double length, int pickups)
    {
        static ShaftDefinition At(string name, double along, double hole) => new(name, Math.Round(along, 1), 0, hole);
        if (pickups < 2) return [At("volume", -length / 4, PotHole), At("tone", length / 4, PotHole)];
        var first = family.IsBass ? At("blend", -length / 3, PotHole) : At("switch", -length / 3, SwitchHole);
        return [first, At("volume", 0, PotHole), At("tone", length / 3, PotHole)];
    }

    /// <summary>A shaft from the cavity's middle.</summary>
    public static ShaftDefinition Read(TableReader shaft, ShaftDefinition? or) => ReadPart(shaft, new(
        shaft.Text("name", 30, or?.Name, "what sheets call it"),
        shaft.Length("along", -100, 100, or?.Along, "from the cavity's middle along its long side"),
        shaft.Length("across", -60, 60, or?.Across ?? 0, "from the cavity's middle across it, toward the treble side"),
        or?.Diameter ?? PotHole));

    /// <summary>A shaft that stands at a place of its own; along and across are x and y.</summary>
    public static ShaftDefinition ReadPlaced(TableReader shaft, ShaftDefinition? or) => ReadPart(shaft, new(
        shaft.Text("name", 30, or?.Name, "what sheets call it"),
        shaft.Length("x", 300, 1100, or?.Along, "from the nut"),
        shaft.Length("y", -200, 200, or?.Across, "from the centre line toward the treble side"),
        or?.Diameter ?? PotHole));

    static ShaftDefinition ReadPart(TableReader shaft, ShaftDefinition s) => s with
    {
        Diameter = shaft.Length("diameter", 1.5, 30, s.Diameter, "hole through the front; width of a slot"),
        Room = shaft.Length("room", 5, 40, PotRoom, "radius of the room it takes behind the front"),
        Slot = shaft.Length("slot", 0, 60, 0, "length of a blade switch's slot; 0 is a round hole"),
        Turn = shaft.Angle("turn", -180, 180, 0, "of the slot, counter-clockwise from the cavity's long side"),
        ScrewsApart = shaft.Length("screws_apart", 0, 90, 0, "two screws through the front at the slot's ends; 0 is none"),
        ScrewHole = shaft.Length("screw_hole", 1.5, 6, ScrewHole, "hole for those"),
    };
}
