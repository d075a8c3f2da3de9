using Solidbody.Geometry;

namespace Solidbody.Programs.Writing;

/// <summary>A hole that a controller's drilling cycle makes by itself.</summary>
/// <param name="At">The hole in the plan, mm.</param>
/// <param name="Start">Height the way there runs at.</param>
/// <param name="Clear">Height where drilling begins and chips are cleared.</param>
/// <param name="Bottom">Lowest tip.</param>
/// <param name="Bite">Deepest bite; 0 for one without pecks.</param>
/// <param name="Feed">mm/s.</param>
/// <param name="ReturnsToStart">Whether it ends at <paramref name="Start"/> rather than at <paramref name="Clear"/>.</param>
internal readonly record struct DrillCycle(Point2 At, double Start, double Clear, double Bottom, double Bite, double Feed, bool ReturnsToStart)
{
    public const int Plain = 81, Pecked = 83;

    /// <summary>Its motion word.</summary>
    public int Word => Bite > 0 ? Pecked : Plain;

    /// <summary>The hole that the motions from one on make, and the last of them; null when they are anything else.</summary>
    /// <remarks>A way in the plan (or none), straight down by rapid, then bites straight down at one feed with a rapid up to where drilling begins and back between
    /// them, then up. A cycle counts its bites from there, so that none in the wood is deeper than the deepest of the motions.</remarks>
    public static (DrillCycle Cycle, int Last)? Find(IReadOnlyList<Motion> motions, int first)
    {
        var i = first;
        if (IsLevelRapid(motions[i])) i++;
        if (i + 2 >= motions.Count || !IsUpright(motions[i], MotionKind.Rapid, down: true) || !IsUpright(motions[i + 1], MotionKind.Line, down: true)) return null;
        var (start, clear, feed) = (motions[i].From.Z, motions[i].To.Z, motions[i + 1].Feed);
        var (bottom, bite) = (motions[i + 1].To.Z, 0.0);
        for (i += 2; IsBite(motions, i, clear, bottom, feed); i += 3)
            (bite, bottom) = (Math.Max(bite, bottom - motions[i + 2].To.Z), motions[i + 2].To.Z);
        if (i >= motions.Count || !IsUpright(motions[i], MotionKind.Rapid, down: false)) return null;
        var end = motions[i].To.Z;
        if (!Same(end, start) && !Same(end, clear)) return null;
        return (new(motions[i].To.Plan, start, clear, bottom, bite, feed, Same(end, start)), i);
    }

    /// <summary>Up to the clear height, back into the hole, on down: below the last bottom.</summary>
    private static bool IsBite(IReadOnlyList<Motion> motions, int i, double clear, double bottom, double feed) =>
        i + 3 < motions.Count && IsUpright(motions[i], MotionKind.Rapid, down: false) && Same(motions[i].To.Z, clear)
        && IsUpright(motions[i + 1], MotionKind.Rapid, down: true) && motions[i + 1].To.Z >= bottom
        && IsUpright(motions[i + 2], MotionKind.Line, down: true) && motions[i + 2].To.Z < bottom && motions[i + 2].Feed == feed;

    private static bool IsLevelRapid(in Motion m) => m.Kind == MotionKind.Rapid && Same(m.From.Z, m.To.Z);

    private static bool IsUpright(in Motion m, MotionKind kind, bool down) =>
        m.Kind == kind && Same(m.From.X, m.To.X) && Same(m.From.Y, m.To.Y) && (down ? m.To.Z < m.From.Z : m.To.Z > m.From.Z);

    private static bool Same(double a, double b) => Math.Abs(a - b) <= Tolerances.Geometry;
}
