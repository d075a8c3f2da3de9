using Solidbody.Geometry;
using Solidbody.Machining.Planning;
using Solidbody.Machining.Toolpaths;
using Solidbody.Shop;

namespace Solidbody.Machining.Timing.Least;

/// <summary>The rapids that no path is spared, seconds.</summary>
internal sealed class LeastTravel(Machine machine, double clearance)
{
    /// <summary>Down to the wood from clearance, and back up at the end: nothing is cut above the wood.</summary>
    /// <param name="wood">Highest place of the wood that is cut.</param>
    public double InAndOut(double wood) => 2 * Math.Max(0, clearance - wood) / machine.RapidZ;

    /// <summary>From place to place over all of them, once: no walk is shorter than the least tree that joins them.</summary>
    public double Between(IReadOnlyList<Spot> spots) =>
        LeastTree(spots.Count, (i, j) => spots[i].At.DistanceTo(spots[j].At) - spots[i].Radius - spots[j].Radius) / machine.RapidXY;

    /// <summary>The same for slots, from end to end or nearer.</summary>
    public double Between(IReadOnlyList<ThinSlot> slots) => LeastTree(slots.Count, (i, j) => Apart(slots[i], slots[j])) / machine.RapidXY;

    /// <summary>Out of a hole for its chips and back between bites, and out at the end. Each way up starts from rest; ways back up to the mouth end at rest too.</summary>
    public double Pecks(RoundHole hole, double peck, double plunge)
    {
        var levels = DepthLevels.Of(hole.Mouth, hole.Bottom, peck);
        var sum = FromRest(hole.Mouth - hole.Bottom, machine.RapidZ);
        foreach (var level in levels[..^1])
        {
            var depth = hole.Mouth - level;
            sum += MotionTime.Trapezoid(depth, 0, 0, machine.RapidZ, machine.AccelerationZ);
            sum += FromRest(Math.Max(0, depth - PeckDrilling.AboveLastBottom), machine.RapidZ, plunge);
        }
        return sum;
    }

    /// <summary>Least time over a distance from rest; at its end no faster than stated.</summary>
    private double FromRest(double distance, double most, double end = double.PositiveInfinity)
    {
        var reached = Math.Sqrt(2 * machine.AccelerationZ * distance);
        return Math.Min(end, most) >= reached ? 2 * distance / Math.Max(reached, double.Epsilon)
            : MotionTime.Trapezoid(distance, 0, Math.Min(end, most), most, machine.AccelerationZ);
    }

    private static double Apart(ThinSlot a, ThinSlot b) => new[] { ToSegment(a.A, b), ToSegment(a.B, b), ToSegment(b.A, a), ToSegment(b.B, a) }.Min();

    private static double ToSegment(Point2 p, ThinSlot slot)
    {
        var edge = slot.B - slot.A;
        var t = Math.Clamp((p - slot.A).Dot(edge) / edge.Dot(edge), 0, 1);
        return p.DistanceTo(slot.A + t * edge);
    }

    /// <summary>Length of the shortest tree that joins all places (Prim, Bell System Technical Journal 36, 1957, from memory).</summary>
    /// <param name="count">Places.</param>
    /// <param name="apart">Distance between two of them, mm; below 0 counts as 0.</param>
    internal static double LeastTree(int count, Func<int, int, double> apart)
    {
        if (count < 2) return 0;
        var near = Enumerable.Range(0, count).Select(i => i == 0 ? double.NegativeInfinity : Math.Max(0, apart(0, i))).ToArray();
        var sum = 0.0;
        for (var joined = 1; joined < count; joined++)
        {
            var next = Enumerable.Range(0, count).Where(i => !double.IsNegativeInfinity(near[i])).MinBy(i => near[i]);
            sum += near[next];
            near[next] = double.NegativeInfinity;
            for (var i = 0; i < count; i++)
                if (!double.IsNegativeInfinity(near[i])) near[i] = Math.Min(near[i], Math.Max(0, apart(next, i)));
        }
        return sum;
    }
}
