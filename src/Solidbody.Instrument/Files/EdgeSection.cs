using Solidbody.Geometry;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>One edge of <c>[body.edges]</c>: rounded unless it is bound or a chamfer is given; rounded and chamfered is a mistake.</summary>
static class EdgeSection
{
    const double UsualRadius = 6, Most = 15;

    /// <param name="bound">Whether a binding goes there.</param>
    public static EdgeForm? Read(TableReader edges, string face, bool bound)
    {
        string radiusKey = $"{face}_radius", chamferKey = $"{face}_chamfer";
        var width = edges.Length(chamferKey, 0, Most, 0, $"chamfered edge of the {face}: its width on the face; 0 is none");
        var angle = edges.Angle($"{chamferKey}_angle", 30, 60, 45, $"chamfered edge of the {face}: between chamfer and face");
        var radius = edges.Length(radiusKey, 0, Most, width > 0 || bound ? 0 : UsualRadius, $"rounded edge of the {face}; 0 is a sharp edge, and so it is where a chamfer or a binding is given");
        if (width > 0 && radius > 0) edges.Refuse(radiusKey, $"the {face} edge is chamfered and rounded", "one of the two", $"remove `{radiusKey}` or `{chamferKey}`");
        return width > 0 ? new EdgeForm.Chamfered(width, angle) : radius > 0 ? new EdgeForm.Rounded(radius) : null;
    }
}
