using Solidbody.Findings;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Checks;

internal static class PocketChecks
{
    /// <summary>The wall is judged from this far behind the mouth, mm: the mouth itself is open, its corners rounded (docs/shapes.md).</summary>
    private const double BehindMouth = 6;

    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part body)
    {
        if (d.Neck.Joint == JointKind.Through) yield break;
        var (joint, seat) = (NeckJoint.Of(d), NeckSeat.Of(d));
        if (seat.Z(joint.HeelEnd, d.Neck.Heel.Thickness) is var above && !(above >= 0)) yield return PocketFindings.TooDeep(above);
        // A sloping floor is deepest at one of its ends.
        if (d.Body.Thickness + Math.Min(seat.FloorZ(joint.ShoulderX), seat.FloorZ(joint.HeelEnd)) is var floor && !(floor >= Limits.UnderPocket)) yield return PocketFindings.ThinFloor(floor);
        foreach (var (name, side) in ((string, int)[])[("treble", 1), ("bass", -1)])
        {
            var (at, wall) = (0.0, double.PositiveInfinity);
            for (var x = joint.ShoulderX + BehindMouth; x <= joint.HeelEnd; x += 0.5)
            {
                var half = BodyMaker.PocketHalfWidth(d, x);
                // The nearest edge outside the pocket's wall; none when the wall itself is missing.
                var edge = Segments.CrossingsAtX(body.Outline.Loops[0], x).Select(y => side * y).Where(w => w > half).DefaultIfEmpty(half).Min();
                if (edge - half < wall) (at, wall) = (x, edge - half);
            }
            if (!(wall >= Limits.ToEdge)) yield return PocketFindings.ThinWall(name, at, wall);
        }
    }
}
