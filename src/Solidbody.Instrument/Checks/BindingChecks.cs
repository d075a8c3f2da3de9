using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Materials;

namespace Solidbody.Instrument.Checks;

internal static class BindingChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part body, ImmutableArray<BodyBinding> bindings)
    {
        if (d.Body.Binding is not { } binding) yield break;
        foreach (var side in ((Side[])[Side.Front, Side.Back]).Where(binding.Binds))
        {
            var (face, edge) = side == Side.Front ? ("front", d.Body.FrontEdge) : ("back", d.Body.BackEdge);
            if (edge is not null) yield return BindingFindings.AtShapedEdge(face, edge);
            foreach (var (contour, _, removed) in ContourChecks.Removals(body).Where(r => r.Side == side))
                if (body.Outline.Loops[0].Points.MaxBy(removed) is var at && !(removed(at) <= ContourChecks.Nothing)) yield return BindingFindings.AtContour($"{face} binding", contour, at, removed(at));
        }
        if (body.Ledges.IsEmpty || body.Ledges[0].Inside.Loops.Length > 1) yield return BindingFindings.NothingInside(binding.Width);
        if (LowestSide(d.Body, binding, body) is var (thin, left) && !(left >= Limits.UnderControls)) yield return BindingFindings.NoSide(thin, left);
        // Front and back run along one line, so one bend tells for both.
        var (strip, stock) = (bindings[0], BindingStrip.Of(binding.Kind));
        var (warmed, cold) = (stock.Warmed * binding.Thickness, stock.Cold * binding.Thickness);
        if (!(strip.LeastRadius >= warmed)) yield return BindingFindings.TooTight(strip, warmed);
        else if (!(strip.LeastRadius >= cold)) yield return BindingFindings.Softened(strip, cold);
    }

    /// <summary>Where the upright side between both sides' ledges or shaped edges is lowest, and how high it is there.</summary>
    private static (Point2 At, double Left) LowestSide(BodyDefinition definition, BindingDefinition binding, Part body)
    {
        double Taken(bool bound, EdgeForm? edge) => Math.Max(bound ? binding.Height : 0, edge?.Height ?? 0);
        var (front, back) = (Taken(binding.Front, definition.FrontEdge), Taken(binding.Back, definition.BackEdge));
        return body.Outline.Loops[0].Points.Select(p => (p, body.Front.Z(p.X, p.Y) - body.Back.Z(p.X, p.Y) - front - back)).MinBy(p => p.Item2);
    }
}
