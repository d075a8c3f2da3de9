using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>The control cavity with its ledge, and what its shafts, switches and cover take out of the wood.</summary>
internal static class ControlRooms
{
    public static IEnumerable<Pocket> Of(BodyDefinition body)
    {
        if (body.Controls is not { } c) yield break;
        var plan = new ControlsPlan(c);
        if (HasLedge(c)) yield return new(RoomNames.CoverLedge, Side.Back, new(plan.Grown(c.LedgeWidth)), new LevelHeight(-body.Thickness + c.LedgeDepth)) { Into = RoomNames.Controls };
        yield return new(RoomNames.Controls, Side.Back, new(plan.Grown(0)), new LevelHeight(-c.Floor));
        foreach (var (s, at) in plan.Shafts.Where(s => s.Shaft.Slot > 0))
        {
            var (a, b) = plan.Opening(s, at);
            yield return new($"{s.Name} slot", Side.Front, new(Shapes.Capsule(a, b, s.Diameter / 2)), new LevelHeight(-c.Floor - Drilling.Overlap)) { Into = RoomNames.Controls };
        }
    }

    /// <summary>Shafts and switches from the front down into the cavity, and the pilots of the cover's screws.</summary>
    public static IEnumerable<Hole> Holes(BodyDefinition body, Region outline)
    {
        if (body.Controls is not { } c) yield break;
        var plan = new ControlsPlan(c);
        var reach = -c.Floor - Drilling.Overlap;
        Hole Through(string name, Point2 at, double diameter) => new(name, Side.Front, at, diameter, 0, reach, reach - Drilling.Cone(diameter)) { Into = RoomNames.Controls };
        foreach (var (s, at) in plan.Shafts)
        {
            if (!(s.Slot > 0)) yield return Through(s.Name, at, s.Diameter);
            if (s.ScrewsApart > 0)
                foreach (var (side, i) in ((double, int)[])[(-0.5, 1), (0.5, 2)])
                    yield return Through($"{s.Name} screw {i}", at + side * s.ScrewsApart * plan.Direction(s), s.ScrewHole);
        }
        if (CoverOf(body, outline) is { } cover)
            foreach (var pilot in cover.Pilots("cover screw pilot", -body.Thickness + c.LedgeDepth, RoomNames.CoverLedge)) yield return pilot;
    }

    /// <summary>The cover's plate; null where there is no ledge for it or it is not described.</summary>
    public static CoverPlate? CoverOf(BodyDefinition body, Region outline) => body.Controls is { Cover: { } cover } c && HasLedge(c)
        ? CoverPlate.Of(CoverPlate.OverControls, new ControlsPlan(c).Grown, c.LedgeWidth, cover, body.Jack is { } jack ? JackBore.Line(jack, outline, new(c.CentreX, c.CentreY)) : null)
        : null;

    private static bool HasLedge(ControlsDefinition c) => c.LedgeWidth > 0 && c.LedgeDepth > 0;
}
