using System.Collections.Immutable;
using Solidbody.Instrument.Fretboards;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The tables below <c>[body]</c>. Defaults are common practice, no source, unless stated.</summary>
static class BodySection
{
    const double GuitarBridgePitch = 10.5, BassBridgePitch = 19;

    /// <summary>Read before the rest: the fretboard's width hangs on it.</summary>
    public static double ReadStringSpread(TableReader body, InstrumentBasis basis) => body.Table("bridge")
        .Length("string_spread", 30, 160, (basis.IsBass ? BassBridgePitch : GuitarBridgePitch) * (basis.Strings - 1), "first to last string at the saddles, centre to centre");

    /// <param name="through">How a through-neck lies to the body; null for one with a pocket.</param>
    public static BodyDefinition Read(TableReader body, StringFan strings, FretLayout layout, double heelWidth, PocketDefaults pocketDefaults, NeckPocketDefinition? through, DrawingDesk drawings)
    {
        var (basis, heelEnd) = (strings.Basis, layout.HeelEnd);
        var wood = body.Word("wood", basis.Woods, "red-alder", "wood of the body");
        var thickness = body.Length("thickness", 30, 60, 44.45, "front to back");
        var pieces = through is null ? body.Count("pieces", 1, 2, 2, "1, or 2 joined on the centre line") : 1;
        var pocket = through ?? ReadPocket(body.Table("pocket"), pocketDefaults);
        if (through is not null) RefuseOfAPocket(body);
        var (family, outline, drawn) = OutlineSection.Read(body.Table("outline"), basis, heelEnd, heelWidth, pocket.Length, BridgeSection.Lean(layout), drawings);
        var tail = drawn?.Loop.Bounds.X1 ?? OutlineSection.TailX(outline, heelEnd, pocket.Length);

        var pickups = body.Tables("pickups", 0, 4, PickupSection.Defaults(family, layout), (pickup, or) => PickupSection.Read(pickup, or, layout));
        RefuseSameNames(body, pickups);
        var binding = BindingSection.Read(body.Table("binding"));
        var tremolo = TremoloSection.Read(body.Table("tremolo"));
        var bridge = BridgeSection.Read(body.Table("bridge"), strings, tremolo is not null);
        var controls = ControlsSection.Read(body.Table("controls"), family, tail, drawn is null ? family.WidthFor(heelWidth) : family.WidthOf(drawn), pickups.Length);
        return new BodyDefinition
        {
            Wood = wood,
            Grain = SeasonsSection.ReadGrain(body, "flat", "how its boards are sawn: flat, or quarter, which moves about half as much"),
            Thickness = thickness,
            Pieces = pieces,
            Top = through is null ? TopSection.Read(body.Table("top"), basis) : null,
            Outline = outline,
            Drawn = drawn,
            Pocket = pocket,
            Pickups = pickups,
            Bridge = bridge,
            Controls = controls,
            Tremolo = tremolo,
            Jack = JackSection.Read(body.Table("jack"), controls, heelEnd),
            WireWays = WireWaySection.Read(body, pickups, controls is not null, tremolo is not null, hasPocket: through is null),
            ArmContour = ContourSection.ReadArm(body.Table("arm_contour")),
            BellyContour = ContourSection.ReadBelly(body.Table("belly_contour")),
            LongDrill = WireWaySection.ReadDrill(body.Table("long_drill")),
            StrapButtons = StrapButtonSection.Read(body, outline, drawn, basis.Scale, heelEnd - pocket.Length, heelWidth),
            Binding = binding,
            FrontEdge = EdgeSection.Read(body.Table("edges"), "front", binding is { Front: true }),
            BackEdge = EdgeSection.Read(body.Table("edges"), "back", binding is { Back: true }),
        };
    }

    /// <summary>Inside corners that common cutters reach, mm.</summary>
    const double LeastCorner = 3, MostCorner = 20;

    static NeckPocketDefinition ReadPocket(TableReader pocket, PocketDefaults or)
    {
        var length = pocket.Length("length", Math.Min(50, or.Length), 130, or.Length, "from the body's shoulder line to the heel's end: the heel's own length");
        var depth = pocket.Length("depth", FreeRange.Depth.Least, FreeRange.Depth.Most, or.Depth, "from the body's front: 5/8 in; of a sloping floor at the heel's end");
        var clearance = pocket.Length("clearance", 0, 0.5, 0.1, "between heel and wall, each side and at the end");
        return new(length, depth, clearance,
            pocket.Length("corner_radius", LeastCorner, MostCorner, or.Corner(clearance, LeastCorner, MostCorner), "inside corners: a cutter of 12 mm reaches in"),
            pocket.Angle("angle", FreeRange.AngleDegrees.Least, FreeRange.AngleDegrees.Most, 0, "the neck's plane to the body's front; positive leans the head back"),
            pocket.Length("shim", FreeRange.Shim.Least, FreeRange.Shim.Most, 0, "even shim under the heel"),
            pocket.Choice("angle_by", [("wedge", AngleMaking.Wedge), ("floor", AngleMaking.Floor)], "wedge", "a wedge on a level floor makes the angle, or the floor itself, which then rises toward the bridge"));
    }

    static void RefuseOfAPocket(TableReader body)
    {
        body.RefuseIfGiven("pocket", "a neck that is screwed or glued into a pocket", "remove it: [neck.core] says how a through-neck lies to the body");
        body.RefuseIfGiven("top", "a body without a core", "remove it: a top over a through-neck's core is not worked out; laminate the wings by hand");
        body.RefuseIfGiven("pieces", "a body without a core", "remove it: a through-neck's body is its core between two wings");
    }

    static void RefuseSameNames(TableReader body, ImmutableArray<PickupDefinition> pickups)
    {
        if (pickups.GroupBy(p => p.Name).FirstOrDefault(g => g.Count() > 1) is { } twice)
            body.Refuse("pickups", $"two pickups are called \"{twice.Key}\"", "each name once", "rename one: wire ways go by these names");
    }
}
