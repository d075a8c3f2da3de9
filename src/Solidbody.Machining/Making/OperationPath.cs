using System.Collections.Immutable;
using Solidbody.Machining.Planning;
using Solidbody.Machining.Toolpaths;
using Solidbody.Programs;
using Solidbody.Shop;

namespace Solidbody.Machining.Making;

/// <summary>From what is to be cut to the motions that cut it, laid frame.</summary>
internal static class OperationPath
{
    public static ImmutableArray<Motion> Of(Operation operation, double clearance, Machine machine)
    {
        var s = new CutSettings
        {
            Cutter = operation.Cutter,
            Feed = operation.Feeds.Feed,
            PlungeFeed = operation.Feeds.PlungeFeed,
            StepDown = operation.Feeds.StepDown,
            StepOver = operation.Feeds.StepOver,
            Clearance = clearance,
            Arcs = machine.Arcs,
        };
        var path = operation.Work switch
        {
            Work.Drill w => PeckDrilling.Path(s, [.. w.Holes.Select(h => new DrillSpot(h.Centre, h.Mouth, h.Bottom))], w.Peck),
            Work.Bore w => HelicalBoring.Path(s, [.. w.Holes.Select(h => new BoreSpot(h.Centre, h.Diameter, h.Mouth, h.Bottom))]),
            Work.Clear { IsNarrow: true } w => EngagedClearing.Path(s, w.Rooms, w.Top, w.Floor + w.FloorLeave),
            Work.Clear w => PocketClearing.Path(s, w.Region, w.Top, w.Floor, w.WallLeave, w.FloorLeave),
            Work.Walls w => PocketWalls.Path(s, w.Region, w.Top, w.Floor, w.SpringPasses),
            Work.ClearSlope w => SlopedPocket.Rough(s, w.Region, w.Floor, w.Wood, w.WallLeave, w.FloorLeave),
            Work.SlopeFloor w => SlopedPocket.Floor(s, w.Region, w.Floor, w.Wood, w.Ridge, w.WallLeave),
            Work.SlopeWalls w => SlopedPocket.Walls(s, w.Region, w.Floor, w.Wood, w.FloorLeave, w.SpringPasses),
            Work.Channel w => Slotting.Path(s, w.A, w.B, w.Top, w.Floor),
            Work.Outline w => ProfileCutting.Path(s, w.Loop, w.Top, w.Bottom, w.Leave, Tabs(w.Bridges)),
            Work.FinishOutline w => ProfileCutting.Finish(s, w.Loop, w.Top, w.Bottom, Tabs(w.Bridges), w.Way),
            Work.RoughFace w => SurfaceRoughing.Path(s, w.Face, w.Zone, w.Top, w.Leave, w.Lowest),
            Work.FinishFace w => SurfaceRaster.Path(s, w.Face, w.Zone, w.Along ? RasterDirection.Along : RasterDirection.Across, w.Scallop, w.Lowest, w.Skip),
            Work.LevelFace w => FaceRaster.Path(s, w.Zone, w.Top, w.Floor, w.Highest),
            Work.ThinSlots w => FretSlotting.Path(s, [.. w.Slots.Select(l => new SlotLine(l.A, l.B, l.Depth, l.Over))], w.Face),
            Work.FormEdge w => EdgeForming.Path(s, w.Path, w.Closed, w.Form, w.Face),
            Work.FollowEdge w => EdgeFollowing.Path(s, w.Stretches, w.Form, w.Face, w.Top, w.Scallop),
            _ => throw new ArgumentOutOfRangeException(nameof(operation), operation.Work.GetType().Name, "No toolpath is known for this work."),
        };
        var isFinishing = operation.Driven is { } driven && operation.Feeds.Bite.Width < driven.EdgeDiameter;
        return isFinishing ? CornerFeed.Of(path, operation.Driven!, operation.Feeds.Bite, operation.Work is Work.FinishOutline { Way: var way } ? way : OutlineWay.Climb) : path;
    }

    private static ImmutableArray<TabSpan> Tabs(ImmutableArray<Bridge> bridges) => [.. bridges.Select(b => new TabSpan(b.At, b.Length, b.Top))];
}
