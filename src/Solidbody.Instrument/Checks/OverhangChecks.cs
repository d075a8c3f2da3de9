using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Checks;

/// <summary>Whether a board that hangs over the heel's end is clear of body and pickups.</summary>
internal static class OverhangChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part board)
    {
        foreach (var pickup in d.Body.Pickups)
        {
            var room = PickupRooms.Cavity(pickup);
            var gap = Math.Min(Segments.Gap(board.Outline.Loops[0], room), Segments.Gap(room.Loops[0], board.Outline));
            if (!(gap >= Limits.OverhangToPickup)) yield return BoardFindings.OverhangAtPickup(pickup.Name, gap);
        }
        var (end, seat) = (board.Outline.Bounds.X1, NeckSeat.Of(d));
        if (!(end > seat.HeelEnd + Tolerances.Output)) yield break;
        var above = Math.Min(seat.Z(seat.HeelEnd, d.Neck.Heel.Thickness), seat.Z(end, d.Neck.Heel.Thickness));
        if (!(above >= Limits.OverhangAboveBody)) yield return BoardFindings.OverhangOnBody(above);
    }
}
