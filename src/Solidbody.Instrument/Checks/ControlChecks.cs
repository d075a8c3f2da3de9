using Solidbody.Findings;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Checks;

internal static class ControlChecks
{
    public static IEnumerable<Finding> Of(BodyDefinition definition, Part body) => [.. Cavity(definition, body), .. Jack(definition, body)];

    private static IEnumerable<Finding> Cavity(BodyDefinition definition, Part body)
    {
        if (definition.Controls is not { } c) yield break;
        if (!(c.Floor >= Limits.UnderControls)) yield return BodyFindings.ThinFront(c.Floor);
        if (!(c.Floor <= Limits.FrontForBush)) yield return ControlFindings.FrontTooThick(c.Floor);
        if (definition.Thickness - c.Floor - c.LedgeDepth is var left && !(left >= Limits.UnderControls)) yield return BodyFindings.CoverIntoAir(left);
        var (cavity, plan) = (body.Pockets.First(p => p.Name == RoomNames.Controls).Region, new ControlsPlan(c));
        var shafts = plan.Shafts.ToList();
        foreach (var (s, at) in shafts)
        {
            var (a, b) = plan.Opening(s, at);
            var inside = Math.Min(-cavity.SignedDistance(a), -cavity.SignedDistance(b));
            if (!(inside >= s.Diameter / 2 + 1)) yield return BodyFindings.ShaftOutside(s.Name, at);
            else if (-cavity.SignedDistance(at) is var toWall && !(toWall >= s.Room - Geometry.Tolerances.Flattening)) yield return ControlFindings.NoRoom(s.Name, at, toWall, s.Room);
        }
        for (var i = 0; i < shafts.Count; i++)
            for (var j = i + 1; j < shafts.Count; j++)
                if (shafts[i].At.DistanceTo(shafts[j].At) is var apart && shafts[i].Shaft.Room + shafts[j].Shaft.Room is var least && !(apart >= least))
                    yield return ControlFindings.TooNear(shafts[i].Shaft.Name, shafts[j].Shaft.Name, apart, least);
    }

    private static IEnumerable<Finding> Jack(BodyDefinition definition, Part body)
    {
        if (definition.Jack is not { Plate: { } plate } jack) yield break;
        // The plate's middle lies half way between front and back.
        if (JackBore.Edge(jack, body.Outline) is { } edge && EdgeLand.AboutMiddle(definition, body, edge) is var side && !(plate.Width <= side)) yield return ControlFindings.PlateTooWide(plate.Width, side);
        if (JackBore.Bow(jack, plate, body.Outline) is var bow && !(bow <= plate.LedgeDepth)) yield return ControlFindings.SideBows(bow, plate.LedgeDepth);
    }
}
