using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Materials;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with a binding and its ledge.</summary>
public static class BindingFindings
{
    public static Finding AtShapedEdge(string face, EdgeForm edge)
    {
        var (done, key) = edge is EdgeForm.Rounded ? ("rounded", $"{face}_radius") : ("chamfered", $"{face}_chamfer");
        return new("BINDING-01", Severity.Stops, $"body, {face} binding", $"the same edge is {done}, {Say.Mm(edge.Width)} wide", "a sharp edge where a binding goes", "a shaped edge takes away the wood its strip is glued to", $"set {key} to 0, and round the strip a little by hand; or leave the binding out.") { Title = "an edge is both bound and shaped" };
    }

    public static Finding AtContour(string binding, string contour, Point2 at, double removed) =>
        new("BINDING-02", Severity.Stops, $"body, {binding} at {Say.At(at)}", $"the {contour} takes {Say.Mm(removed)} off the face there", "nothing along a bound edge", "the ledge is cut level, at a depth below the planed face: in a contour it would run out", $"leave out the {contour}, or bind only the other edge.") { Title = "a contour crosses a bound edge" };

    public static Finding TooTight(BodyBinding binding, double least) =>
        new("BINDING-03", Severity.Warns, Place(binding), $"an inside radius of {Say.Mm(binding.LeastRadius)}", $"{Say.AtLeast(least)} for {BindingStrip.Of(binding.Definition.Kind).Name} of {Say.Mm(binding.Definition.Thickness)}, softened", BindingStrip.Source, "make the horn's tip or the cutaway rounder, take a thinner strip or another material, or mitre two strips there.") { Title = "the binding bends too tightly" };

    public static Finding Softened(BodyBinding binding, double cold) =>
        new("BINDING-04", Severity.Notes, Place(binding), $"an inside radius of {Say.Mm(binding.LeastRadius)}", $"{Say.AtLeast(cold)} as it comes", BindingStrip.Source, $"soften the strip {BindingStrip.Of(binding.Definition.Kind).Softened} and let it cool in shape before it is glued.") { Title = "the binding must be softened to bend" };

    public static Finding NothingInside(double width) =>
        new("BINDING-05", Severity.Stops, "body, binding", $"a ledge of {Say.Mm(width)} leaves no single body within it", "one closed line within the outline", Limits.OwnFile, "take a thinner strip, or a wider body.") { Title = "the binding's ledge cuts the body apart" };

    public static Finding ThinBeside(Wall wall, double least) =>
        new("BINDING-06", wall.Wood > 0 ? Severity.Warns : Severity.Stops, $"body, {wall.Of} and {wall.To} at {Say.At(wall.At)}", $"{Say.Mm(wall.Wood)} of wood between them", Say.AtLeast(least), Limits.Practice, $"move {wall.Of} inward, or take a thinner or lower strip.") { Title = "little wood beside a binding's ledge" };

    public static Finding NoSide(Point2 at, double left) =>
        new("BINDING-07", left > 0 ? Severity.Warns : Severity.Stops, $"body, binding at {Say.At(at)}", $"{Say.Mm(left)} of upright side left beside it", Say.AtLeast(Limits.UnderControls), Limits.Practice, "take a lower strip, a smaller edge on the other side, or a thicker body.") { Title = "the ledges leave no side" };

    private static string Place(BodyBinding binding) => $"body, {binding.Name} at {Say.At(binding.Tightest)}";
}
