using Solidbody.Geometry;

namespace Solidbody.Instrument.Checks;

/// <summary>The upright side that the body's shaped edges leave between them.</summary>
internal static class EdgeLand
{
    /// <summary>The least of it, and where.</summary>
    public static (double Left, Point2 At) Least(BodyDefinition definition, Part body)
    {
        double Left(Point2 p)
        {
            var (low, high) = Ends(definition, body, p);
            return high - low;
        }
        return body.Outline.Loops[0].Points.Select(p => (Left(p), p)).MinBy(side => side.Item1);
    }

    /// <summary>Its width about the middle of the body's thickness: a plate no wider than this lies on upright wood. Negative when the middle lies on an edge.</summary>
    public static double AboutMiddle(BodyDefinition definition, Part body, Point2 at)
    {
        var (low, high) = Ends(definition, body, at);
        var middle = -definition.Thickness / 2;
        return 2 * Math.Min(high - middle, middle - low);
    }

    private static (double Low, double High) Ends(BodyDefinition definition, Part body, Point2 at) =>
        (body.Back.Z(at.X, at.Y) + (definition.BackEdge?.Height ?? 0), body.Front.Z(at.X, at.Y) - (definition.FrontEdge?.Height ?? 0));
}
