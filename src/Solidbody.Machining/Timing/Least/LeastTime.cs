using Solidbody.Geometry;
using Solidbody.Machining.Planning;
using Solidbody.Shop;

namespace Solidbody.Machining.Timing.Least;

/// <summary>What no path could do better: a lower bound of an operation's running time, beside which its planned time is judged.</summary>
/// <remarks>
/// Given are the operation's cutter, its feeds, its deepest bite, its ramp, its ridge height. Of the motion model only greatest speeds count, and
/// speeding up where a drill must stop. The bound is the time at feed that the wood or the surface asks for, and what travel is left even then;
/// each part is a lower bound of motions that the others do not count. docs/machine-time.md derives them one by one.
/// </remarks>
internal static class LeastTime
{
    /// <summary>The bound, seconds.</summary>
    /// <param name="operation">Laid frame.</param>
    /// <param name="clearance">Height at which its path begins and ends, mm.</param>
    /// <param name="machine">Speeds and accelerations.</param>
    public static double Seconds(Operation operation, double clearance, Machine machine)
    {
        var cut = new LeastCut(operation.Cutter, operation.Feeds, machine);
        var travel = new LeastTravel(machine, clearance);
        return operation.Work switch
        {
            Work.Drill w => travel.InAndOut(w.Holes.Max(h => h.Mouth)) + travel.Between([.. w.Holes.Select(h => new Spot(h.Centre, 0))])
                + w.Holes.Sum(h => cut.Drilled(h) + travel.Pecks(h, w.Peck, operation.Feeds.PlungeFeed)),
            Work.Bore w => travel.InAndOut(w.Holes.Max(h => h.Mouth)) + w.Holes.Sum(h => cut.Bored(h, travel.Pecks(h, operation.Feeds.StepDown, operation.Feeds.PlungeFeed)))
                + travel.Between([.. w.Holes.Select(h => new Spot(h.Centre, Math.Max(0, h.Diameter - operation.Cutter.Diameter) / 2))]),
            // What a wider cutter left is not added up here: in and out again is the least.
            Work.Clear { IsNarrow: true } w when w.Rooms.Any(r => r.IsRest) => travel.InAndOut(w.Top),
            Work.Clear { IsNarrow: true } w => travel.InAndOut(w.Top) + cut.SweptNarrowly(w.Region, operation.Cutter.Radius + w.WallLeave, w.Top - w.Floor - w.FloorLeave, w.Engagement),
            Work.Clear w => travel.InAndOut(w.Top) + cut.Swept(w.Region, operation.Cutter.Radius + w.WallLeave, w.Top - w.Floor - w.FloorLeave),
            Work.Walls w => travel.InAndOut(w.Top) + cut.Along(Offsets.Of(w.Region, -operation.Cutter.Radius).Sum(Perimeter), w.Top - w.Floor),
            Work.ClearSlope w => cut.Swept(w.Region, operation.Cutter.Radius + w.WallLeave, Shallowest(w.Region, w.Floor, w.Wood) - w.FloorLeave),
            Work.SlopeFloor w => cut.Swept(w.Region, operation.Cutter.Radius + w.WallLeave, 0),
            Work.SlopeWalls w => cut.Along(Offsets.Of(w.Region, -operation.Cutter.Radius).Sum(Perimeter), Shallowest(w.Region, w.Floor, w.Wood) - w.FloorLeave),
            Work.Channel w => travel.InAndOut(w.Top) + cut.Along(w.A.DistanceTo(w.B), w.Top - w.Floor),
            Work.Outline w => travel.InAndOut(w.Top) + cut.Round(w.Loop, w.Leave, w.Top, w.Bottom, w.Bridges),
            Work.FinishOutline w => travel.InAndOut(w.Top) + cut.Round(w.Loop, 0, w.Top, w.Bottom, w.Bridges),
            Work.RoughFace w => travel.InAndOut(w.Top) + cut.Roughed(w),
            Work.FinishFace w => cut.Surfaced(w),
            Work.LevelFace w => travel.InAndOut(Math.Max(w.Top, w.Highest)) + cut.Swept(w.Zone, 0, w.Top - w.Floor),
            Work.ThinSlots w => travel.InAndOut(w.Top) + w.Slots.Sum(s => cut.Along(s.A.DistanceTo(s.B), s.Depth)) + travel.Between(w.Slots),
            Work.FormEdge w => travel.InAndOut(w.Face) + cut.Formed(w),
            Work.FollowEdge w => travel.InAndOut(w.Top) + cut.Followed(w),
            _ => throw new ArgumentOutOfRangeException(nameof(operation), operation.Work.GetType().Name, "No least time is known for this work."),
        };
    }

    /// <summary>Depth of level wood where a sloping floor is highest.</summary>
    private static double Shallowest(Region region, SlopedHeight floor, double deepest) => deepest - Math.Abs(floor.Slope) * region.Bounds.Width;

    private static double Perimeter(Region region) => region.Loops.Sum(l => l.Perimeter);
}
