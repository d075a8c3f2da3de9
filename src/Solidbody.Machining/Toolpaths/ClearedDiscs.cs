using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Where a cutter's axis has been in a room at one level: discs. The wood is gone within the cutter's radius of them, and where a wider cutter took it.</summary>
/// <param name="room">Where the axis may go.</param>
/// <param name="cutter">The cutter's radius, mm.</param>
/// <param name="gone">Wood a wider cutter has taken; none for solid wood.</param>
internal sealed class ClearedDiscs(Region room, double cutter, IReadOnlyList<Region> gone)
{
    /// <summary>Wood thinner than this beside a wall counts as gone, mm: the walls' own pass takes it.</summary>
    public const double Ripple = 0.08;
    /// <summary>Wood that a bite beside a disc not quite cleared may meet more than was reckoned with, mm.</summary>
    public const double FineRipple = 0.05;
    /// <summary>Distance between places tried on a rim, and on a straight way, mm.</summary>
    private const double Spacing = 0.25, WaySpacing = 0.3;
    private const int LeastPlaces = 24;

    /// <summary>Share of a ripple allowed midway between two discs: other places may lie a little worse.</summary>
    private const double BetweenShare = 0.4;

    private readonly List<InnerDisc> discs = [];
    /// <summary>Where the axis is free from the beginning.</summary>
    private readonly Region[] free = [.. gone.SelectMany(g => Offsets.Of(g, -cutter))];

    public void Add(InnerDisc disc)
    {
        if (!discs.Contains(disc)) discs.Add(disc);
    }

    /// <summary>Whether the axis meets no wood at a place.</summary>
    public bool Holds(Point2 p) => Holds(p, Tolerances.Geometry);

    private bool Holds(Point2 p, double ripple)
    {
        for (var i = discs.Count - 1; i >= 0; i--)
            if (p.DistanceTo(discs[i].Centre) <= discs[i].Radius + ripple) return true;
        return IsIn(free, p, ripple);
    }

    /// <summary>Whether all the wood that a further disc would take is gone, but for a ripple.</summary>
    public bool Covers(InnerDisc disc, double ripple = Ripple)
    {
        var rim = disc.Radius + cutter;
        var places = Math.Max(LeastPlaces, (int)(2 * Math.PI * rim / Spacing));
        var last = discs.Count - 1;
        var (step, spoke) = (Point2.Polar(2 * Math.PI / places), new Point2(rim, 0));
        for (var k = 0; k < places; k++)
        {
            var p = disc.Centre + spoke;
            spoke = new(spoke.X * step.X - spoke.Y * step.Y, spoke.X * step.Y + spoke.Y * step.X);
            if (last >= 0 && Gone(p, discs[last], ripple)) continue;
            for (last = discs.Count - 1; last >= 0 && !Gone(p, discs[last], ripple);) last--;
            if (last < 0 && !IsIn(gone, p, ripple)) return false;
        }
        return true;
    }

    /// <summary>Whether two discs take all but a ripple of what one between them would take.</summary>
    /// <remarks>What stands between two rims is highest where they cross: at (d² + a² − b²)/(2d) along the line of their middles, d apart.</remarks>
    public bool LeaveARipple(InnerDisc a, InnerDisc b, InnerDisc between)
    {
        var line = b.Centre - a.Centre;
        var (apart, rimA, rimB) = (line.Length, a.Radius + cutter, b.Radius + cutter);
        if (apart <= Math.Abs(rimA - rimB) + Tolerances.Geometry) return true;
        var along = (apart * apart + rimA * rimA - rimB * rimB) / (2 * apart);
        if (Math.Abs(along) >= rimA) return false;
        var (foot, across) = (a.Centre + along * line.Unit, Math.Sqrt(rimA * rimA - along * along) * line.Unit.Left);
        return Low(foot + across) && Low(foot - across);

        bool Low(Point2 p) => between.Radius + cutter - p.DistanceTo(between.Centre) <= BetweenShare * Ripple || IsIn(gone, p, 0);
    }

    private bool Gone(Point2 p, InnerDisc disc, double ripple)
    {
        var (to, reach) = (p - disc.Centre, disc.Radius + cutter + ripple);
        return to.Dot(to) <= reach * reach;
    }

    private static bool IsIn(IReadOnlyList<Region> regions, Point2 p, double ripple)
    {
        foreach (var region in regions)
            if (region.SignedDistance(p, 1) <= ripple) return true;
        return false;
    }

    /// <summary>Whether the axis may go straight from a to b within its room without meeting more than ripples.</summary>
    public bool MayGo(Point2 a, Point2 b)
    {
        if (discs.Any(d => Math.Max(a.DistanceTo(d.Centre), b.DistanceTo(d.Centre)) <= d.Radius + Tolerances.Geometry)) return true;
        var n = Math.Max(1, (int)Math.Ceiling(a.DistanceTo(b) / WaySpacing));
        for (var i = 0; i <= n; i++)
        {
            var p = a + (double)i / n * (b - a);
            if (!Holds(p, Ripple) || room.SignedDistance(p, 1) > Tolerances.Output) return false;
        }
        return true;
    }

    /// <summary>A way from a to b over the middles of discs that meet, cut short where straight ways are free; null when there is none.</summary>
    public List<Point2>? Way(Point2 a, Point2 b)
    {
        var (cost, before) = (new double[discs.Count], new int[discs.Count]);
        Array.Fill(cost, double.PositiveInfinity);
        Array.Fill(before, -1);
        var open = new PriorityQueue<int, (double, int)>();
        for (var i = 0; i < discs.Count; i++)
            if (a.DistanceTo(discs[i].Centre) <= discs[i].Radius + Tolerances.Output) Reach(i, a.DistanceTo(discs[i].Centre), -1);
        var (best, end) = (double.PositiveInfinity, -1);
        while (open.TryDequeue(out var i, out var key))
        {
            if (key.Item1 > cost[i] || key.Item1 >= best) continue;
            var left = b.DistanceTo(discs[i].Centre);
            if (left <= discs[i].Radius + Tolerances.Output && cost[i] + left < best) (best, end) = (cost[i] + left, i);
            for (var k = 0; k < discs.Count; k++)
            {
                var apart = discs[i].Centre.DistanceTo(discs[k].Centre);
                if (apart <= discs[i].Radius + discs[k].Radius) Reach(k, cost[i] + apart, i);
            }
        }
        if (end < 0) return null;
        var way = new List<Point2> { b };
        for (var i = end; i >= 0; i = before[i]) way.Add(discs[i].Centre);
        way.Add(a);
        way.Reverse();
        return Shortened(way);

        void Reach(int i, double along, int from)
        {
            if (along >= cost[i]) return;
            (cost[i], before[i]) = (along, from);
            open.Enqueue(i, (along, i));
        }
    }

    private List<Point2> Shortened(List<Point2> way)
    {
        var kept = new List<Point2> { way[0] };
        for (var i = 0; i + 1 < way.Count;)
        {
            var next = way.Count - 1;
            while (next > i + 1 && !MayGo(way[i], way[next])) next--;
            kept.Add(way[i = next]);
        }
        return kept;
    }
}
