using Solidbody.Geometry;

namespace Solidbody.Machining.Planning;

/// <summary>Where in the plan a piece of work lies.</summary>
internal static class WorkPlace
{
    /// <summary>The middle of it, laid frame.</summary>
    public static Point2 Of(Work work) => Bounds(work).Centre;

    private static Box2 Bounds(Work work) => work switch
    {
        Work.Drill w => Box2.Around([.. w.Holes.Select(h => h.Centre)]),
        Work.Bore w => Box2.Around([.. w.Holes.Select(h => h.Centre)]),
        Work.Clear w => w.Region.Bounds,
        Work.Walls w => w.Region.Bounds,
        Work.ClearSlope w => w.Region.Bounds,
        Work.SlopeFloor w => w.Region.Bounds,
        Work.SlopeWalls w => w.Region.Bounds,
        Work.Channel w => Box2.Around([w.A, w.B]),
        Work.Outline w => w.Loop.Bounds,
        Work.FinishOutline w => w.Loop.Bounds,
        Work.RoughFace w => w.Zone.Bounds,
        Work.FinishFace w => w.Zone.Bounds,
        Work.LevelFace w => w.Zone.Bounds,
        Work.ThinSlots w => Box2.Around([.. w.Slots.Select(s => 0.5 * (s.A + s.B))]),
        Work.FormEdge w => Box2.Around(w.Path),
        Work.FollowEdge w => Box2.Around(w.Stretches.SelectMany(s => s.Path)),
        _ => throw new ArgumentOutOfRangeException(nameof(work), work.GetType().Name, "No place is known for this work."),
    };
}
