using Solidbody.Geometry;
using Solidbody.Materials;
using Solidbody.Shop;

namespace Solidbody.Machining.Feeds;

/// <summary>Feeds and speeds from chip load, held inside what spindle and axes can do.</summary>
public static class FeedPlanner
{
    /// <summary>How a cutter is driven through a wood on a machine.</summary>
    /// <param name="cutter">The cutter; a drill is driven by feed a turn, all others by chip load.</param>
    /// <param name="wood">The wood as the shop works it: its chip-load factor and cutting force.</param>
    /// <remarks>
    /// Router bits start at the usual speed inside the spindle's range, thin ones at its fastest. When the axes cannot follow fz·n·z, the spindle slows down first,
    /// because a smaller chip rubs and burns; only at the spindle's least speed does the chip get smaller.
    /// The full-width cut's power bounds the step-down.
    /// </remarks>
    public static CutFeeds For(Cutter cutter, WoodOnHand wood, Machine machine)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        ArgumentNullException.ThrowIfNull(wood);
        ArgumentNullException.ThrowIfNull(machine);
        return cutter.Kind == CutterKind.Drill ? ForDrill(cutter, machine) : ForRouterBit(cutter, wood, machine);
    }

    private static CutFeeds ForRouterBit(Cutter cutter, WoodOnHand wood, Machine machine)
    {
        var wanted = wood.ChipLoad * ChipLoads.For(EdgeDiameter(cutter)).Middle;
        var usual = EdgeDiameter(cutter) < FeedPractice.ThinCutter ? machine.SpindleSpeedMost : FeedPractice.RouterTurns;
        var turns = Math.Clamp(usual, machine.SpindleSpeedLeast, machine.SpindleSpeedMost);
        if (CuttingPhysics.Feed(wanted, turns, cutter.Flutes) > machine.FeedMostXY)
            turns = Math.Max(machine.SpindleSpeedLeast, machine.FeedMostXY / (wanted * cutter.Flutes));
        turns = WholeTurnsAMinute(turns, machine);
        var feed = WholeMillimetresAMinute(Math.Min(machine.FeedMostXY, CuttingPhysics.Feed(wanted, turns, cutter.Flutes)));
        var plunge = WholeMillimetresAMinute(Math.Min(machine.FeedMostZ, FeedPractice.Plunge * feed));

        var force = wood.CuttingForce ?? CuttingForces.Default(Woods.Find(wood.Wood)?.Hardness ?? WoodHardness.Hard);
        var stepDown = Math.Min(FeedPractice.StepDown * cutter.Diameter, cutter.FluteLength);
        var most = FeedPractice.PowerShare * machine.SpindlePower;
        stepDown = Math.Min(stepDown, stepDown * most / CuttingPhysics.Power(force, cutter.Diameter, stepDown, feed));
        return new(turns, feed, plunge, stepDown, FeedPractice.StepOver * cutter.Diameter,
            CuttingPhysics.ChipLoad(feed, turns, cutter.Flutes), CuttingPhysics.Power(force, cutter.Diameter, stepDown, feed));
    }

    private static CutFeeds ForDrill(Cutter drill, Machine machine)
    {
        var turns = WholeTurnsAMinute(FeedPractice.DrillCuttingSpeed / (Math.PI * drill.Diameter), machine);
        var feed = WholeMillimetresAMinute(Math.Min(machine.FeedMostZ, FeedPractice.DrillFeedPerTurn * drill.Diameter * turns));
        return new(turns, feed, feed, FeedPractice.Peck * drill.Diameter, drill.Diameter,
            CuttingPhysics.ChipLoad(feed, turns, drill.Flutes), 0);
    }

    /// <summary>The diameter that makes the chip: a roundover's and a tapered ball's tip is thinner than its widest part.</summary>
    internal static double EdgeDiameter(Cutter cutter) => cutter.Kind switch
    {
        CutterKind.Roundover => 2 * (cutter.TipRadius + cutter.EdgeRadius / 2),
        CutterKind.TaperedBallEnd => 2 * cutter.TipRadius,
        _ => cutter.Diameter,
    };

    /// <summary>Programs say S in whole turns a minute and F in whole mm/min: what is said is what is planned.</summary>
    private static double WholeTurnsAMinute(double turns, Machine machine) =>
        Math.Clamp(Math.Round(turns * 60), Math.Ceiling(machine.SpindleSpeedLeast * 60 - 1e-6), Math.Floor(machine.SpindleSpeedMost * 60 + 1e-6)) / 60;

    private static double WholeMillimetresAMinute(double feed) => Math.Max(1, Math.Floor(feed * 60 + 1e-6)) / 60;
}
