using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A straight slot exactly as wide as its cutter.</summary>
public static class Slotting
{
    /// <summary>Ramps back and forth between the ends down to the floor, then runs once along it flat.</summary>
    /// <param name="s">Each leg sinks by at most half a step-down (the far end meets two legs' worth) and no steeper than the ramp.</param>
    /// <param name="a">Axis at one end, plan.</param>
    /// <param name="b">Axis at the other; not the same point.</param>
    /// <param name="top">Height of the wood.</param>
    /// <param name="floor">Height of the floor.</param>
    /// <exception cref="ArgumentException">The ends are one point.</exception>
    public static ImmutableArray<Motion> Path(CutSettings s, Point2 a, Point2 b, double top, double floor)
    {
        ArgumentNullException.ThrowIfNull(s);
        var length = a.DistanceTo(b);
        if (length <= Tolerances.Geometry) throw new ArgumentException("A slot needs two ends apart.", nameof(b));
        var path = new PathBuilder(s);
        path.EnterAbove(a, top);
        path.Line(a, top);
        var (here, there) = (a, b);
        foreach (var z in DepthLevels.Of(top, floor, Math.Min(s.StepDown / 2, length * Math.Tan(s.RampAngle))))
        {
            path.Line(there, z);
            (here, there) = (there, here);
        }
        path.Line(there, floor);
        return path.Build();
    }
}
