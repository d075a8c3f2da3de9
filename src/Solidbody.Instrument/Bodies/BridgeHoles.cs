using Solidbody.Geometry;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Bodies;

/// <summary>Screw pilots of the bridge, and the holes that take strings through the body.</summary>
internal static class BridgeHoles
{
    public static IEnumerable<Hole> Of(InstrumentDefinition d)
    {
        var (bridge, place) = (d.Body.Bridge, BridgePlace.Of(d));
        foreach (var ((x, y), i) in bridge.Screws.Select((s, i) => (s, i + 1)))
            yield return new($"bridge screw pilot {i}", Side.Front, place.At(x, y), bridge.ScrewPilot, 0, -bridge.ScrewDepth, -bridge.ScrewDepth - Drilling.Cone(bridge.ScrewPilot));
        if (bridge.StringThroughAt is not { } behind) yield break;

        // Drilled half way from each face: the halves meet with a little overlap, and no drill tears out of a face.
        var (strings, back) = (Strings.Of(d), -d.Body.Thickness);
        var (frontReach, backReach) = (back / 2 - Drilling.Overlap / 2, back / 2 + Drilling.Overlap / 2);
        var hasFerrule = bridge.Ferrule > 0 && bridge.FerruleDepth > 0;
        for (var i = 0; i < strings.Count; i++)
        {
            // Each as far behind its own saddle.
            var at = place.Saddle(strings, i) + new Point2(behind, 0);
            yield return new($"string hole {i + 1}", Side.Front, at, bridge.StringHole, 0, frontReach, frontReach - Drilling.Cone(bridge.StringHole));
            if (hasFerrule) yield return new($"string ferrule {i + 1}", Side.Back, at, bridge.Ferrule, back, back + bridge.FerruleDepth, back + bridge.FerruleDepth);
            yield return new($"string hole {i + 1}, back", Side.Back, at, bridge.StringHole, hasFerrule ? back + bridge.FerruleDepth : back, backReach, backReach + Drilling.Cone(bridge.StringHole));
        }
    }
}
