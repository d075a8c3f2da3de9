using Solidbody.Geometry;
using Solidbody.Shop;

namespace Solidbody.Machining.Feeds;

/// <summary>How fast the spindle turns.</summary>
internal static class SpindleSpeeds
{
    /// <summary>Router bits start at the usual speed inside the spindle's range, thin ones at its fastest, wide ones as fast as their rim may run. When the axes cannot follow fz·n·z,
    /// the spindle slows down, because a smaller chip rubs and burns; only at the spindle's least speed does the chip get smaller.</summary>
    /// <returns>Turns a second, whole turns a minute; a pinned speed, or what a pinned feed and chip load come to, as it is.</returns>
    public static double For(DrivenCutter driven)
    {
        var (cutter, machine) = (driven.Cutter, driven.Machine);
        if (driven.Pinned(null, p => p.SpindleSpeed) is { } pinned) return Whole(pinned, machine);
        var (feed, chip) = (driven.Pinned(null, p => p.Feed), driven.Pinned(null, p => p.ChipLoad));
        if (feed is not null && chip is not null) return Whole(feed.Value / (chip.Value * cutter.Flutes), machine);
        var usual = driven.EdgeDiameter < FeedPractice.ThinCutter ? machine.SpindleSpeedMost : FeedPractice.RouterTurns;
        var rim = FeedPractice.CuttingSpeedMost / CuttingPhysics.CuttingSpeed(cutter.Diameter, 1);
        var followed = (feed ?? machine.FeedMostXY) / ((chip ?? driven.WantedChip) * cutter.Flutes);
        return Whole(Math.Min(usual, Math.Min(rim, followed)), machine);
    }

    /// <summary>Of a drill, by its cutting speed.</summary>
    public static double ForDrill(Cutter drill, double? pinned, Machine machine) => Whole(pinned ?? FeedPractice.DrillCuttingSpeed / CuttingPhysics.CuttingSpeed(drill.Diameter, 1), machine);

    /// <summary>Programs say S in whole turns a minute: what is said is what is planned.</summary>
    private static double Whole(double turns, Machine machine) =>
        Math.Clamp(Math.Round(turns * 60), Math.Ceiling(machine.SpindleSpeedLeast * 60 - 1e-6), Math.Floor(machine.SpindleSpeedMost * 60 + 1e-6)) / 60;
}
