using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A room whose floor slopes along x, made by flat cutters: the paths of a level room, sheared by the floor's plane, without arcs.</summary>
/// <remarks>Heights of wood are given above the floor where that is lowest. The tip runs <see cref="FlatOnSlope.Lift"/> above the plane, so it touches it and never cuts below.</remarks>
public static class SlopedPocket
{
    /// <summary>Clears in steps parallel to the floor.</summary>
    /// <param name="s">Settings; the slope must be less steep than the ramp.</param>
    /// <param name="region">The finished room.</param>
    /// <param name="floor">Its floor, laid frame.</param>
    /// <param name="wood">Of the wood above the floor's lowest place, mm.</param>
    /// <param name="wallLeave">Skin on the walls, mm.</param>
    /// <param name="floorLeave">Skin on the floor, mm.</param>
    /// <returns>Motions; none when the cutter does not fit.</returns>
    public static ImmutableArray<Motion> Rough(CutSettings s, Region region, SlopedHeight floor, double wood, double wallLeave, double floorLeave) =>
        On(s, region, floor, (level, lowest, tip) => PocketClearing.Path(level, region, lowest + wood, tip, wallLeave, floorLeave));

    /// <summary>Takes the skin off the floor: passes up and down the slope, close enough that the ridges between them stay under the given height.</summary>
    /// <param name="ridge">mm.</param>
    /// <inheritdoc cref="Rough"/>
    public static ImmutableArray<Motion> Floor(CutSettings s, Region region, SlopedHeight floor, double wood, double ridge, double wallLeave)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(floor);
        var spacing = FlatOnSlope.Spacing(s.Cutter.Diameter, floor.Slope, ridge);
        return On(s, region, floor, (level, lowest, tip) => FloorPasses.Path(level, region, lowest + wood, tip, spacing, wallLeave));
    }

    /// <summary>Follows the walls at the cutter's radius.</summary>
    /// <param name="floorLeave">Height above the floor it goes down to, mm.</param>
    /// <param name="springPasses">Passes repeated without a new cut.</param>
    /// <inheritdoc cref="Rough"/>
    public static ImmutableArray<Motion> Walls(CutSettings s, Region region, SlopedHeight floor, double wood, double floorLeave, int springPasses) =>
        On(s, region, floor, (level, lowest, tip) => PocketWalls.Path(level, region, lowest + wood, tip + floorLeave, springPasses));

    private static ImmutableArray<Motion> On(CutSettings s, Region region, SlopedHeight floor, Func<CutSettings, double, double, ImmutableArray<Motion>> path)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(region);
        ArgumentNullException.ThrowIfNull(floor);
        var steep = Math.Atan(Math.Abs(floor.Slope));
        if (!(steep < s.RampAngle)) throw new ArgumentOutOfRangeException(nameof(floor), floor.Slope, $"The floor must be less steep than the ramp, {Math.Tan(s.RampAngle)}.");
        var lowest = floor.Z(floor.Slope > 0 ? region.Bounds.X0 : region.Bounds.X1, 0);
        // Downhill the slope joins the ramp: tan a + tan b ≤ tan(a + b).
        var level = path(s with { Arcs = false, RampAngle = s.RampAngle - steep }, lowest, lowest + FlatOnSlope.Lift(s.Cutter.Radius, floor.Slope));
        return ShearedPath.Of(level, s, p => floor.Z(p.X, p.Y) - lowest);
    }
}
