using Solidbody.Findings;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Checks;

internal static class CavityChecks
{
    public static IEnumerable<Finding> Of(BodyDefinition body)
    {
        foreach (var p in body.Pickups)
        {
            if (p.Legs is { } legs)
            {
                if (!(legs.Across > p.AlongY)) yield return CavityFindings.LegsInside(p.Name, legs.Across, p.AlongY);
                if (body.Thickness - legs.Depth is var under && !(under >= Limits.UnderPickup)) yield return CavityFindings.ThinUnderLegs(p.Name, under);
            }
            if (p.Screws is not { } screws) continue;
            foreach (var side in (int[])[-1, 1])
            {
                var (at, floor) = PickupRooms.Foot(p, screws, side);
                var left = body.Thickness + floor - screws.Depth - Drilling.Cone(screws.Pilot);
                if (!(left >= Limits.BeyondScrew)) { yield return CavityFindings.ScrewTooLong(p.Name, left); break; }
                // To the wall of each of its rooms, from whichever side.
                var wall = PickupRooms.Of(p).Min(room => Math.Abs(room.Region.SignedDistance(at))) - screws.Pilot / 2;
                if (!(wall >= Limits.ScrewToWall)) { yield return CavityFindings.ScrewAtWall(p.Name, at, wall); break; }
            }
        }
    }
}
