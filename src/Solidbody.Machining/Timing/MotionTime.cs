using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Shop;

namespace Solidbody.Machining.Timing;

/// <summary>How long a machine takes over a chain of motions: every motion speeds up and slows down evenly, corners are taken at the speed
/// at which an arc that strays by <see cref="CornerDeviation"/> needs no more than the machine's acceleration.</summary>
public static class MotionTime
{
    /// <summary>How far a controller may cut a corner, mm. Common setting of small controllers, from memory.</summary>
    public const double CornerDeviation = 0.01;

    /// <summary>Running time, seconds, starting and ending at rest.</summary>
    /// <remarks>
    /// Two sweeps, as a controller that sees the whole program would plan it: backward, so that each motion can still slow down for what follows;
    /// forward, so that none starts faster than the one before could reach. Limits: feeds and accelerations of the axes along the motion.
    /// </remarks>
    public static double Seconds(IReadOnlyList<Motion> motions, Machine machine) => Each(motions, machine).Sum();

    /// <summary>Seconds of each motion of the chain; together what <see cref="Seconds"/> says.</summary>
    public static double[] Each(IReadOnlyList<Motion> motions, Machine machine)
    {
        ArgumentNullException.ThrowIfNull(motions);
        ArgumentNullException.ThrowIfNull(machine);
        var moving = Enumerable.Range(0, motions.Count).Where(i => motions[i].Length > Tolerances.Geometry).ToArray();
        var legs = moving.Select(i => Leg.Of(motions[i], machine)).ToArray();
        var seconds = new double[motions.Count];
        if (legs.Length == 0) return seconds;
        var entry = new double[legs.Length + 1];   // speed at the start of each leg; the last is the rest at the end
        for (var i = 1; i < legs.Length; i++)
            entry[i] = Math.Min(Corner(legs[i - 1], legs[i]), Math.Min(legs[i - 1].Speed, legs[i].Speed));
        for (var i = legs.Length - 1; i >= 0; i--) entry[i] = Math.Min(entry[i], Reached(entry[i + 1], legs[i]));
        for (var i = 0; i < legs.Length; i++) entry[i + 1] = Math.Min(entry[i + 1], Reached(entry[i], legs[i]));
        for (var i = 0; i < legs.Length; i++) seconds[moving[i]] = Trapezoid(legs[i].Length, entry[i], entry[i + 1], legs[i].Speed, legs[i].Acceleration);
        return seconds;
    }

    /// <summary>Time over a distance with even acceleration, cruising and even slowing down.</summary>
    /// <param name="distance">d, mm; &gt; 0, long enough to get from one end speed to the other.</param>
    /// <param name="from">v₀, mm/s.</param>
    /// <param name="to">v₁, mm/s.</param>
    /// <param name="most">v, mm/s; at least both ends.</param>
    /// <param name="acceleration">a, mm/s²; &gt; 0.</param>
    /// <returns>Seconds. Peak v_p = min(v, √((2ad + v₀² + v₁²)/2)); what is left of d is cruised at v.</returns>
    public static double Trapezoid(double distance, double from, double to, double most, double acceleration)
    {
        var peak = Math.Min(most, Math.Sqrt((2 * acceleration * distance + from * from + to * to) / 2));
        peak = Math.Max(peak, Math.Max(from, to));
        var ramps = (2 * peak * peak - from * from - to * to) / (2 * acceleration);
        return (2 * peak - from - to) / acceleration + Math.Max(0, distance - ramps) / peak;
    }

    /// <summary>Corner speed v = √(a·R) on the arc R = e·sin(θ/2)/(1 − sin(θ/2)) that touches both legs and passes the corner at distance e.</summary>
    /// <param name="interior">θ, angle between the legs, radians: π is straight on, 0 turns back.</param>
    /// <param name="acceleration">a, mm/s².</param>
    /// <param name="deviation">e, mm.</param>
    public static double CornerSpeed(double interior, double acceleration, double deviation = CornerDeviation)
    {
        var half = Math.Sin(interior / 2);
        return half >= 1 ? double.PositiveInfinity : Math.Sqrt(acceleration * deviation * half / (1 - half));
    }

    private static double Corner(in Leg a, in Leg b)
    {
        var cosine = -(a.EndX * b.StartX + a.EndY * b.StartY + a.EndZ * b.StartZ);   // of the interior angle
        return CornerSpeed(Math.Acos(Math.Clamp(cosine, -1, 1)), Math.Min(a.Acceleration, b.Acceleration));
    }

    private static double Reached(double from, in Leg leg) => Math.Sqrt(from * from + 2 * leg.Acceleration * leg.Length);
}
