using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>Where the neck's screws stand: two rows of two, the same in neck and body; plan, mm.</summary>
internal static class HeelScrews
{
    public static ImmutableArray<Point2> Of(ScrewPattern screws, NeckJoint joint)
    {
        var rear = joint.HeelEnd - screws.FromEnd;
        return [.. ((double[])[rear - screws.AlongX, rear]).SelectMany(x => (Point2[])[new(x, -screws.AlongY / 2), new(x, screws.AlongY / 2)])];
    }
}
