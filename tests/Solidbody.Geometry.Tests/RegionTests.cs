using CsCheck;

namespace Solidbody.Geometry.Tests;

public class RegionTests
{
    private static readonly Gen<Region> Star = Gen.Select(Gen.Int[3, 60], Gen.Double[5, 200].Array[60], Gen.Double[-300, 300], (n, radii, x) =>
        new Region(Loop.Of(Enumerable.Range(0, n).Select(i => new Point2(x, 2 * x) + radii[i] * Point2.Polar(2 * Math.PI * i / n)))));

    /// <summary>Distance to a polygon by its definition: every edge looked at.</summary>
    private static double PlainDistance(Region region, Point2 p) => region.Loops.SelectMany(l => l.Points.Select((a, i) =>
    {
        var b = l.Points[(i + 1) % l.Points.Length];
        var along = Math.Clamp((p - a).Dot(b - a) / (b - a).Dot(b - a), 0, 1);
        return p.DistanceTo(a + along * (b - a));
    })).Min();

    [Fact]
    public void Distance_is_that_of_the_nearest_edge() => Star.Select(Gen.Double[-250, 250], Gen.Double[-250, 250]).Sample((region, dx, dy) =>
    {
        var p = region.Bounds.Centre + new Point2(dx, dy);
        var plain = PlainDistance(region, p);
        var near = region.SignedDistance(p, 7);
        return Math.Abs(Math.Abs(region.SignedDistance(p)) - plain) < 1e-9 && Math.Abs(Math.Abs(near) - Math.Min(plain, 7)) < 1e-9;
    }, iter: 2000);

    [Fact]
    public void Inside_agrees_with_the_winding_number() => Star.Select(Gen.Double[-220, 220], Gen.Double[-220, 220]).Sample((region, dx, dy) =>
    {
        var p = region.Bounds.Centre + new Point2(dx, dy);
        if (PlainDistance(region, p) < 1e-6) return true;
        // Sum of the angles under which the edges are seen: 2π inside, 0 outside (textbook point-in-polygon test).
        var points = region.Loops[0].Points;
        var turn = 0.0;
        for (var i = 0; i < points.Length; i++)
        {
            var (a, b) = (points[i] - p, points[(i + 1) % points.Length] - p);
            turn += Math.Atan2(a.Cross(b), a.Dot(b));
        }
        return region.Contains(p) == Math.Abs(turn) > Math.PI;
    }, iter: 2000);

    [Fact]
    public void Crossings_bound_what_is_inside() => Star.Select(Gen.Double[0.01, 0.99]).Sample((region, part) =>
    {
        var y = region.Bounds.Y0 + part * region.Bounds.Height;
        var xs = new List<double>();
        region.Crossings(y, xs);
        if (xs.Count % 2 != 0) return false;
        for (var i = 0; i + 1 < xs.Count; i++)
        {
            if (xs[i + 1] - xs[i] < 1e-6) continue;
            if (region.Contains(new((xs[i] + xs[i + 1]) / 2, y)) != (i % 2 == 0)) return false;
        }
        return true;
    });

    [Fact]
    public void The_mirror_image_has_the_same_area_and_runs_the_same_way() => Star.Sample(region =>
        Math.Abs(region.Mirrored.Area - region.Area) < 1e-6 * Math.Abs(region.Area)
        && Math.Abs(region.Mirrored.SignedDistance(new(3, -4)) - region.SignedDistance(new(3, 4))) < 1e-9);
}
