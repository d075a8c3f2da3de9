using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>Lays a drawn outline into the instrument's frame by measures a person can take with a rule.</summary>
internal static class OutlinePlacing
{
    /// <summary>Straight sides are divided to no more than this, mm: neighbouring points tell the edge's direction.</summary>
    private const double LongestSide = 2;

    /// <summary>Turned so that the neck's end lies toward −x, and over about that direction where it was drawn from behind.</summary>
    public static Loop Turned(Loop drawn, double turn, bool mirrored)
    {
        var turned = drawn.Map(p => p.Turned(turn));
        return mirrored ? turned.Mirrored : turned;
    }

    /// <summary>The centre line at a distance from the outline's bass-most point.</summary>
    public static Loop OnCentreLine(Loop turned, double fromBassSide) => Shifted(turned, new(0, -turned.Bounds.Y0 - fromBassSide));

    /// <summary>x from the foremost point to where the centre line enters the outline; null where it passes beside it.</summary>
    public static double? MouthBehindForemost(Loop centred)
    {
        var xs = new List<double>();
        new Region(centred).Crossings(0, xs);
        return xs.Count > 0 ? xs[0] - centred.Bounds.X0 : null;
    }

    /// <summary>The foremost point at x.</summary>
    public static Loop From(Loop centred, double foremost) => Shifted(centred, new(foremost - centred.Bounds.X0, 0));

    /// <summary>The same loop with its long sides divided.</summary>
    public static Loop Divided(Loop loop)
    {
        var points = new List<Point2>();
        for (var i = 0; i < loop.Points.Length; i++)
        {
            var (a, b) = (loop.Points[i], loop.Points[(i + 1) % loop.Points.Length]);
            var n = Math.Max(1, (int)Math.Ceiling(a.DistanceTo(b) / LongestSide));
            for (var k = 0; k < n; k++) points.Add(a + (double)k / n * (b - a));
        }
        return Loop.Of(points).CounterClockwise;
    }

    private static Loop Shifted(Loop loop, Point2 by) => loop.Map(p => p + by);
}
