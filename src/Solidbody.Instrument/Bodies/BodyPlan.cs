using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>The body seen from the front, right-handed: from our own family's measures, or from a drawing.</summary>
/// <param name="Region">Its outline.</param>
/// <param name="TabPlaces">Long grain, easily trimmed: waist and lower bout of both sides.</param>
internal sealed record BodyPlan(Region Region, ImmutableArray<Point2> TabPlaces)
{
    /// <returns>The plan, null when a finding keeps it from being drawn; and the findings.</returns>
    public static (BodyPlan? Plan, ImmutableArray<Finding> Findings) Of(InstrumentDefinition d)
    {
        var joint = NeckJoint.Of(d);
        if (d.Body.Drawn is { } drawn) return (OfDrawing(drawn), DrawingChecks.Of(drawn, joint));
        var (outline, findings) = BodyOutline.Build(d.Body.Outline, joint);
        return (outline is null ? null : OfFamily(outline), findings);
    }

    private static BodyPlan OfFamily(BodyOutline outline)
    {
        static IEnumerable<Point2> Places(OutlineSide side, int sign) => [new(side.Waist.X, sign * side.Waist.Y), new(side.LowerBout.X, sign * side.LowerBout.Y)];
        return new(new(Loop.Of(outline.Curve.Flatten())), [.. Places(outline.Treble, +1), .. Places(outline.Bass, -1)]);
    }

    private static BodyPlan OfDrawing(DrawnOutline drawn)
    {
        var (treble, bass) = (LoopStations.Of(drawn.Loop, +1), LoopStations.Of(drawn.Loop, -1));
        return new(new(drawn.Loop), [treble.Waist, treble.LowerBout, bass.Waist, bass.LowerBout]);
    }
}
