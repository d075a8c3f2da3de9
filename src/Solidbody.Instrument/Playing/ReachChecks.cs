using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Playing;

/// <summary>Whether the hand comes to the highest frets. Fingers come from the treble side; the bass side holds the thumb.</summary>
internal static class ReachChecks
{
    public static IEnumerable<Finding> Of(ImmutableArray<Reach> sides)
    {
        var treble = sides[^1];
        if (treble.FretsOverBody > Limits.FretsOverBody) yield return ReachFindings.OverBody(treble, Limits.FretsOverBody);
        if (!(treble.Thickness <= Limits.HeelForHand)) yield return ReachFindings.ThickAtLastFret(treble, Limits.HeelForHand);
        if (treble.Room is { } room && !(room >= Limits.CutawayRoom)) yield return ReachFindings.NarrowCutaway(treble, room, Limits.CutawayRoom);
    }
}
