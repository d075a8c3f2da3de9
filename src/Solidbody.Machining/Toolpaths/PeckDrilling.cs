using System.Collections.Immutable;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Drilling in short bites, out of the hole between them to clear chips.</summary>
public static class PeckDrilling
{
    /// <summary>How far above the last bottom a rapid back into the hole ends, mm; common practice, no source.</summary>
    internal const double AboveLastBottom = 0.5;

    /// <summary>Drills each hole down to its tip height, in a short order.</summary>
    /// <param name="s">Feed down is <see cref="CutSettings.PlungeFeed"/>.</param>
    /// <param name="spots">Holes; Tip below Mouth.</param>
    /// <param name="peck">Deepest bite, mm; positive.</param>
    /// <exception cref="ArgumentOutOfRangeException">The peck is not positive.</exception>
    public static ImmutableArray<Motion> Path(CutSettings s, IReadOnlyList<DrillSpot> spots, double peck)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(spots);
        var path = new PathBuilder(s);
        foreach (var spot in VisitOrder.Of([.. spots.Select(h => h.Centre)]).Select(i => spots[i]))
        {
            path.EnterAbove(spot.Centre, spot.Mouth);
            Pecks(path, s, spot.Mouth, spot.Tip, peck);
        }
        return path.Build();
    }

    /// <summary>Straight down where the tip is, in bites; leaves the tip at the bottom.</summary>
    internal static void Pecks(PathBuilder path, CutSettings s, double mouth, double bottom, double peck)
    {
        var outside = Math.Min(mouth + s.Approach, s.Clearance);
        var levels = DepthLevels.Of(mouth, bottom, peck);
        for (var i = 0; i < levels.Length; i++)
        {
            if (i > 0)
            {
                path.Rapid(path.At with { Z = outside });
                path.Rapid(path.At with { Z = Math.Min(outside, levels[i - 1] + AboveLastBottom) });
            }
            path.Line(path.At with { Z = levels[i] });
        }
    }
}
