using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Checks;

internal static class BodyChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part body) => [.. ControlChecks.Of(d.Body, body), .. CavityChecks.Of(d.Body), .. TremoloChecks.Of(d.Body), .. ContourChecks.Of(d, body), .. TopChecks.Of(d.Body, body), .. Bridge(d, body), .. Pickups(d), .. Joint(d.Body, body), .. Edges(d.Body, body)];

    private static IEnumerable<Finding> Bridge(InstrumentDefinition d, Part body)
    {
        var b = d.Body.Bridge;
        if (BridgePlace.Of(d).Plate(b).Loops[0].Points.Min(p => -body.Outline.SignedDistance(p)) is var wall && !(wall >= Limits.ToEdge)) yield return BodyFindings.BridgeOffBody(wall);
        if (d.Body.Thickness - b.ScrewDepth - Drilling.Cone(b.ScrewPilot) is var left && !(left >= Limits.BeyondScrew)) yield return BodyFindings.BridgeScrewTooLong(left);
        if (b.StringThroughAt is not null && b.Ferrule > 0 && !(b.FerruleDepth <= d.Body.Thickness / 2)) yield return BodyFindings.FerruleTooDeep(b.FerruleDepth, d.Body.Thickness / 2);
    }

    private static IEnumerable<Finding> Pickups(InstrumentDefinition d)
    {
        var (strings, bridge) = (Strings.Of(d), BridgePlace.Of(d));
        foreach (var p in d.Body.Pickups)
        {
            if (p.AlongY / 2 - StringsOverPickup.Widest(p, strings) is var inside && !(inside >= Limits.StringInPickup)) yield return BodyFindings.PickupBesideStrings(p.Name, inside);
            if (d.Body.Thickness - p.Depth is var floor && !(floor >= Limits.UnderPickup)) yield return BodyFindings.ThinUnderPickup(p.Name, floor);
            var overlap = PickupRooms.Cavity(p).Loops[0].Points.Max(q => bridge.Own(q).X) - d.Body.Bridge.PlateFrom;
            if (overlap > 0) yield return BodyFindings.PickupUnderBridge(p.Name, overlap);
        }
    }

    private static IEnumerable<Finding> Joint(BodyDefinition definition, Part body) => definition.Pieces < 2 ? [] :
        body.Holes.Where(h => (h.Name.StartsWith("neck screw", StringComparison.Ordinal) || h.Name.StartsWith("bridge screw", StringComparison.Ordinal)) && Math.Abs(h.Centre.Y) < h.Diameter / 2 + Limits.ScrewToJoint)
            .Select(h => BodyFindings.ScrewOnJoint(h.Name, Math.Abs(h.Centre.Y)));

    private static IEnumerable<Finding> Edges(BodyDefinition definition, Part body)
    {
        if (definition.FrontEdge is { } front && !body.Edges.Any(e => e.From == Side.Front)) yield return BodyFindings.NoFrontPath(front.Width);
        if (EdgeLand.Least(definition, body) is var (left, at) && !(left >= Limits.UnderControls)) yield return BodyFindings.EdgesMeet(left, at);
    }
}
