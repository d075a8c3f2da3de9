using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Checks;

/// <summary>What a cap of another wood asks of the body it is glued on.</summary>
internal static class TopChecks
{
    public static IEnumerable<Finding> Of(BodyDefinition definition, Part body) => definition.Top is not { } top ? [] :
        [.. Rooms(top, body), .. Ledges(top, body), .. BridgeScrews(top, body), .. Contour(top, body), .. Edge(definition, top, body)];

    private static IEnumerable<Finding> Rooms(TopDefinition top, Part body)
    {
        // A slot for a switch has no floor of its own: it ends in the room behind it.
        foreach (var room in body.Pockets.Where(p => !p.Through && !body.Pockets.Any(q => q.Name == p.Into && q.From != p.From)))
        {
            var middle = room.Region.Bounds.Centre;
            var floor = room.Floor.Z(middle.X, middle.Y);
            // From the front a floor leaves cap over the glue, from the back body wood under it.
            var (left, of) = room.From == Side.Front ? (floor - top.GluePlane, "the top") : (top.GluePlane - floor, "the body's wood");
            if (left > -Limits.GlueLine && left < Limits.LeftAtGlue) yield return TopFindings.Sliver(room.Name, left, of);
            else if (room.From == Side.Back && left <= -Limits.GlueLine) yield return TopFindings.TopAlone(room.Name, -floor);
        }
    }

    /// <summary>A binding that ends on the glue line or below hides it: only what of the top is left under its ledge can be too thin.</summary>
    private static IEnumerable<Finding> Ledges(TopDefinition top, Part body) =>
        from ledge in body.Ledges
        where ledge.From == Side.Front
        let left = ledge.Floor - top.GluePlane
        where left > Limits.GlueLine && left < Limits.LeftAtGlue
        select TopFindings.Sliver(ledge.Name, left, "the top");

    private static IEnumerable<Finding> BridgeScrews(TopDefinition top, Part body) =>
        from hole in body.Holes
        where hole.From == Side.Front && !hole.Through && hole.Name.StartsWith("bridge screw", StringComparison.Ordinal)
        let below = top.GluePlane - hole.Reach
        where !(below >= Limits.ScrewUnderTop)
        select TopFindings.HoldsInTop(hole.Name, below);

    private static IEnumerable<Finding> Contour(TopDefinition top, Part body)
    {
        if (body.Front is not ArmContour arm) yield break;
        var most = ContourChecks.Inside(body).Concat(body.Outline.Loops[0].Points).Max(arm.Removed);
        if (!(most <= top.Thickness)) yield return TopFindings.CutThrough(most, top.Thickness);
    }

    private static IEnumerable<Finding> Edge(BodyDefinition definition, TopDefinition top, Part body)
    {
        if (definition.FrontEdge is not { Height: var height }) yield break;
        var most = height - body.Outline.Loops[0].Points.Min(p => body.Front.Z(p.X, p.Y));
        if (!(most <= top.Thickness)) yield return TopFindings.InEdge(most, top.Thickness);
    }
}
