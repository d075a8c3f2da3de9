namespace Solidbody.Machining.Toolpaths;

/// <summary>Depth in even steps, none deeper than the settings allow.</summary>
internal static class DepthLevels
{
    /// <summary>Heights to cut at, from the first below <paramref name="top"/> down to <paramref name="floor"/> itself; the floor alone when nothing lies between.</summary>
    public static double[] Of(double top, double floor, double stepDown)
    {
        if (!(stepDown > 0)) throw new ArgumentOutOfRangeException(nameof(stepDown), stepDown, "Step-down must be positive, mm.");
        var n = Math.Max(1, (int)Math.Ceiling((top - floor) / stepDown - 1e-9));
        return [.. Enumerable.Range(1, n).Select(i => i == n ? floor : top + (floor - top) * i / n)];
    }
}
