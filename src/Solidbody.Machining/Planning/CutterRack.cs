using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>Which cutters of the rack can do a job: it must fit in the plan, reach down, and keep its collet out of the wood. Best first.</summary>
internal sealed class CutterRack(ShopDefinition shop)
{
    /// <summary>Flat cutters that clear rooms, widest first; among equals up-spirals, then straight, then down-spirals.</summary>
    public ImmutableArray<Cutter> Flat { get; } =
        [.. shop.Cutters.Where(c => c.IsFlat && c.Diameter >= PlanPractice.LeastRoomCutter).OrderByDescending(c => c.Diameter).ThenBy(Rank).ThenBy(c => c.Name, StringComparer.Ordinal)];

    public ImmutableArray<Cutter> Balls { get; } = Of(shop, CutterKind.BallEnd);
    public ImmutableArray<Cutter> Drills { get; } = Of(shop, CutterKind.Drill);
    public ImmutableArray<Cutter> Roundovers { get; } = Of(shop, CutterKind.Roundover);
    public ImmutableArray<Cutter> TaperedBalls { get; } = Of(shop, CutterKind.TaperedBallEnd);
    /// <summary>Flat cutters of any width, thinnest first: for slots.</summary>
    public ImmutableArray<Cutter> Slotters { get; } = [.. shop.Cutters.Where(c => c.IsFlat).OrderBy(c => c.Diameter).ThenBy(c => c.Name, StringComparer.Ordinal)];

    /// <summary>Cutters that draw a line: all but drills and roundovers.</summary>
    public ImmutableArray<Cutter> Scribers { get; } =
        [.. shop.Cutters.Where(c => c.IsFlat || c.Kind is CutterKind.BallEnd or CutterKind.TaperedBallEnd).OrderBy(c => c.Name, StringComparer.Ordinal)];

    /// <summary>Cutters that leave an edge's form as they run along it, and reach its depth below a level face.</summary>
    public ImmutableArray<Cutter> Formers(EdgeForm form) =>
        [.. Roundovers.Concat(TaperedBalls).Where(c => EdgeForming.PlaceOf(c, form) is { } p && Reaches(c, p.Down, p.Down))];

    private static ImmutableArray<Cutter> Of(ShopDefinition shop, CutterKind kind) =>
        [.. shop.Cutters.Where(c => c.Kind == kind).OrderByDescending(c => c.Diameter).ThenBy(c => c.Name, StringComparer.Ordinal)];

    private static int Rank(Cutter c) => c.Kind switch { CutterKind.UpSpiral => 0, CutterKind.Straight => 1, _ => 2 };

    /// <summary>Whether the cutter gets that deep below the highest wood near it: the collet stays above, and no part of the shank is wider than the edges where flutes end.</summary>
    /// <param name="cutter">The cutter.</param>
    /// <param name="beside">Depth of the room it makes: upright wood beside it, mm.</param>
    /// <param name="belowTop">From the highest wood or screw head near it down to its tip, mm.</param>
    public static bool Reaches(Cutter cutter, double beside, double belowTop) =>
        cutter.StickOut >= belowTop + PlanPractice.ColletRoom
        && (cutter.FluteLength >= beside || cutter.ShankDiameter <= cutter.Diameter + Tolerances.Output);

    /// <summary>Cutters whose flutes span the whole depth come before those that must rub their shank along the wall.</summary>
    public static IEnumerable<Cutter> FlutesFirst(IEnumerable<Cutter> cutters, double beside) =>
        cutters.OrderBy(c => c.FluteLength >= beside ? 0 : 1);

    /// <summary>Only the widest, and what is nearly as wide: for wood by the fistful, where a change of cutter is soon won back.</summary>
    public static ImmutableArray<Cutter> Widest(IEnumerable<Cutter> bestFirst)
    {
        var able = bestFirst.ToList();
        return [.. able.Where(c => c.Diameter >= PlanPractice.NearlyAsWide * able[0].Diameter)];
    }

    /// <summary>Without those under half the best one's diameter: they would take four times as long, and are no alternative.</summary>
    public static ImmutableArray<Cutter> NotMuchThinner(IEnumerable<Cutter> bestFirst)
    {
        var able = bestFirst.ToList();
        return [.. able.Where(c => c.Diameter >= able[0].Diameter / 2)];
    }
}
