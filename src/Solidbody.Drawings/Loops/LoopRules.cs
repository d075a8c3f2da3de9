using System.Collections.Immutable;
using System.Globalization;
using Solidbody.Geometry;

namespace Solidbody.Drawings.Loops;

/// <summary>What closed runs must be to be loops: with an area, without crossings, each drawn once.</summary>
internal static class LoopRules
{
    /// <summary>Crossings told in one go.</summary>
    private const int MostCrossings = 5;

    public static ImmutableArray<DrawnLoop> Check(List<Chain> chains, ReadingLog log)
    {
        for (var i = 0; i < chains.Count; i++) chains[i] = chains[i] with { Points = Clean(chains[i].Points) };
        foreach (var chain in chains)
            if (chain.Points.Count < 3 || !(Math.Abs(Area(chain.Points)) >= DrawingLimits.LeastArea))
                log.Refuse(chain.At, $"{chain.Name} encloses {Say(chain.Points.Count < 3 ? 0 : Math.Abs(Area(chain.Points)))} mm²", $"at least {Say(DrawingLimits.LeastArea)} mm²", "remove it, or check the drawing's unit");
        if (!log.IsClean) return [];
        if (Repeats(chains, log)) return [];
        foreach (var meeting in Crossings.Of(chains, MostCrossings))
        {
            var (one, other) = (chains[meeting.Loop], chains[meeting.Other]);
            log.Refuse(one.At, meeting.Loop == meeting.Other
                    ? $"{one.Name} crosses or touches itself at {Place(meeting.At)}"
                    : $"{one.Name} crosses or touches {other.Name} (line {other.At.Line}) at {Place(meeting.At)}",
                "loops that cross neither themselves nor one another", "correct the drawing at that place");
        }
        return log.IsClean ? [.. chains.Select(c => new DrawnLoop(c.Name, Loop.Of(c.Points).CounterClockwise, c.At))] : [];
    }

    /// <summary>Two loops with the same area, length and corner are one drawn twice: they would cross everywhere.</summary>
    private static bool Repeats(List<Chain> chains, ReadingLog log)
    {
        var seen = new Dictionary<(double, double, double), Chain>();
        foreach (var chain in chains)
        {
            var box = Box2.Around([.. chain.Points]);
            var key = (Math.Round(Math.Abs(Area(chain.Points)), 2), Math.Round(box.X0, 3), Math.Round(box.Y0, 3));
            if (!seen.TryAdd(key, chain)) log.Refuse(chain.At, $"{chain.Name} is drawn twice, first in line {seen[key].At.Line}", "every loop once", "remove one of the two");
        }
        return !log.IsClean;
    }

    private static List<Point2> Clean(List<Point2> points)
    {
        var kept = new List<Point2>(points.Count);
        foreach (var p in points) if (kept.Count == 0 || p.DistanceTo(kept[^1]) > Tolerances.Geometry) kept.Add(p);
        while (kept.Count > 1 && kept[0].DistanceTo(kept[^1]) <= Tolerances.Geometry) kept.RemoveAt(kept.Count - 1);
        return kept;
    }

    private static double Area(List<Point2> points)
    {
        var twice = 0.0;
        for (var i = 0; i < points.Count; i++) twice += points[i].Cross(points[(i + 1) % points.Count]);
        return twice / 2;
    }

    private static string Say(double v) => v.ToString("0.###", CultureInfo.InvariantCulture);
    private static string Place(Point2 p) => string.Create(CultureInfo.InvariantCulture, $"x {p.X:0.##}, y {p.Y:0.##} mm of the drawing");
}
