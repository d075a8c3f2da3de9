using Solidbody.Geometry;

namespace Solidbody.Instrument;

/// <summary>Finds a place for a caliper away from everything that could disturb it.</summary>
internal static class Clearest
{
    /// <summary>Distance between the places tried, and the least clearance a caliper needs, mm.</summary>
    private const double Step = 2, Least = 1;

    /// <summary>The point of a box with the most clearance, on a 2 mm grid; null when none has 1 mm.</summary>
    public static Point2? Point(Box2 box, Func<Point2, double> clearance)
    {
        (Point2? At, double Clear) best = (null, Least);
        for (var x = box.X0; x <= box.X1; x += Step)
            for (var y = box.Y0; y <= box.Y1; y += Step)
                if (clearance(new(x, y)) is var clear && clear > best.Clear) best = (new(x, y), clear);
        return best.At;
    }
}
