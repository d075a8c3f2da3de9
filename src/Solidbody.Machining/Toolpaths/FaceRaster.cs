using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Levels an open zone with a flat cutter: rings from the middle outward, climbing, whose outermost runs on the zone's own edge.</summary>
public static class FaceRaster
{
    /// <summary>Cuts the whole zone down to a level floor; the cutter reaches its radius beyond the zone.</summary>
    /// <param name="s">Settings; a StepOver above 0.45 D is taken as 0.45 D.</param>
    /// <param name="zone">Where the floor is to be made.</param>
    /// <param name="top">Height of the wood.</param>
    /// <param name="floor">Height of the floor.</param>
    /// <param name="highest">Rapids into the wood's room end above this: ridges may stand higher than <paramref name="top"/>.</param>
    public static ImmutableArray<Motion> Path(CutSettings s, Region zone, double top, double floor, double highest)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(zone);
        var path = new PathBuilder(s);
        PocketClearing.Clear(path, s, zone, 0, top, floor, highest);
        return path.Build();
    }
}
