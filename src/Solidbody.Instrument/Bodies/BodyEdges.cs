using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>The body's shaped edges: the whole outline behind; in front all but the neck pocket's mouth.</summary>
internal static class BodyEdges
{
    /// <summary>The front path leaves the body along its end tangents for at least this long, mm: a cutter runs out in the air.</summary>
    private const double RunOut = 25;

    /// <summary>And so far past the mouth's corner, in edge widths: a roundover is wider than its edge, and its end is round.</summary>
    private const double PastCorner = 3;

    public static IEnumerable<ShapedEdge> Of(BodyDefinition body, Region plan, NeckJoint joint)
    {
        var outline = plan.Loops[0].Points;
        if (body.FrontEdge is { } front && FrontPath(outline, joint, front.Width) is { } path)
            yield return new("front edge", Side.Front, path, Closed: false, front);
        if (body.BackEdge is { } back)
            yield return new("back edge", Side.Back, outline, Closed: true, back);
    }

    /// <summary>Counter-clockwise from just past the mouth on the bass side to just before it on the treble side; null when no stretch of outline keeps clear of the mouth.</summary>
    /// <param name="width">The path, run-outs included, stays this far from the pocket's wall, so that the mouth keeps its full edge.</param>
    internal static ImmutableArray<Point2>? FrontPath(ImmutableArray<Point2> outline, NeckJoint joint, double width)
    {
        var n = outline.Length;
        var shoulder = Enumerable.Range(0, n).MinBy(i => outline[i].DistanceTo(new(joint.ShoulderX, 0)));
        var mouth = joint.HeelWidth / 2 + joint.Clearance;
        Point2 At(int i) => outline[(i % n + n) % n];

        // The wall runs from the mouth's corner back to the pocket's end.
        (int Index, Point2 End)? Leave(int step)
        {
            Point2 Corner(int side) => new(joint.ShoulderX, side * mouth);
            for (var k = 1; k < n / 2; k++)
            {
                var i = shoulder + step * k;
                var side = step > 0 ? -1 : 1;
                if (side * At(i).Y <= mouth) continue;
                var along = (At(i - step) - At(i + step)).Unit;
                var end = At(i) + Math.Max(RunOut, (Corner(side) - At(i)).Dot(along) + PastCorner * width) * along;
                if (Segments.Distance(Corner(side), At(i), end) >= width + Tolerances.Flattening) return (i, end);
            }
            return null;
        }

        if (Leave(+1) is not var (from, before) || Leave(-1) is not var (to, after)) return null;
        return [before, .. Enumerable.Range(from, to + n - from + 1).Select(At), after];
    }
}
