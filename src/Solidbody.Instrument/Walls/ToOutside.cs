using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Walls;

/// <summary>The least wood from a void to the body's edge, and to the face it does not open to.</summary>
internal static class ToOutside
{
    public static IEnumerable<Wall> Of(Void v, Part part)
    {
        if (ToEdge(v, part.Outline) is var (edge, at)) yield return new(v.Name, "edge", WallSide.Edge, edge, at);
        if (OpensTo(v) != Side.Front && Least(v, part.Front, +1) is var (front, high)) yield return new(v.Name, "front", WallSide.Front, front, high);
        if (OpensTo(v) != Side.Back && Least(v, part.Back, -1) is var (back, low)) yield return new(v.Name, "back", WallSide.Back, back, low);
    }

    private static Side? OpensTo(Void v) => v switch { RoomVoid r => r.Pocket.From, HoleVoid h => h.Hole.From, _ => null };

    private static (double, PartPoint)? ToEdge(Void v, Region outline)
    {
        switch (v)
        {
            case RoomVoid { Pocket.IsOpenAtSide: true } or BoreVoid { Bore.FromEdge: true }: return null;
            case HoleVoid h: return (-outline.SignedDistance(h.Hole.Centre) - h.Hole.Diameter / 2, new(h.Hole.Centre.X, h.Hole.Centre.Y, (h.Low + h.High) / 2));
            case BoreVoid b:
                var (least, at) = AlongAxis.Least(b, p => -outline.SignedDistance(p.Plan, WallFinder.Interest + b.Radius));
                return (least - b.Radius, at);
            case RoomVoid r:
                (double Wood, Point2 At) best = (double.PositiveInfinity, default);
                foreach (var p in r.Pocket.Region.Loops[0].Points)
                    if (-outline.SignedDistance(p, WallFinder.Cutoff(best.Wood)) is var wood && wood < best.Wood) best = (wood, p);
                // A bay of the outline may reach toward the middle of a long wall.
                var near = r.Pocket.Region.Bounds.Grown(Math.Min(best.Wood, WallFinder.Interest));
                foreach (var p in outline.Loops[0].Points)
                    if (near.Contains(p) && r.PlanGap(p, WallFinder.Interest) is var wood && wood < best.Wood) best = (wood, p);
                return (best.Wood, new(best.At.X, best.At.Y, (r.Low + r.High) / 2));
            default: return null;
        }
    }

    /// <summary>Wood along z to a face.</summary>
    /// <param name="up">+1 for the front, −1 for the back.</param>
    private static (double, PartPoint)? Least(Void v, IHeight face, int up)
    {
        (double Wood, PartPoint At) best = (double.PositiveInfinity, default);
        void Offer(Point2 p, double z)
        {
            if (up * (face.Z(p.X, p.Y) - z) is var wood && wood < best.Wood) best = (wood, new(p.X, p.Y, z));
        }
        switch (v)
        {
            case HoleVoid h: Offer(h.Hole.Centre, up > 0 ? h.High : h.Low); break;
            case RoomVoid r:
                Offer(r.Pocket.Region.Bounds.Centre, up > 0 ? r.High : r.Low);
                if (face is not LevelHeight) foreach (var p in r.Pocket.Region.Loops[0].Points) Offer(p, up > 0 ? r.High : r.Low);
                break;
            // One that starts at an edge or at a face opens there.
            case BoreVoid { Bore.FromFace: not null } b when b.Bore.FromFace == (up > 0 ? Side.Front : Side.Back): return null;
            case BoreVoid b:
                // A wire's ends lie inside their rooms, where there is no wood to judge.
                var end = b.Bore.ForWires && b.Length > 0 ? Math.Min(0.5, WireLine.IntoRoom / b.Length) : 0;
                foreach (var t in (double[])[end, 0.5, 1 - end]) Offer(b.Axis(t).Plan, b.Axis(t).Z + up * b.Radius);
                break;
        }
        return best;
    }
}
