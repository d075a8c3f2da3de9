using Solidbody.Geometry.Arcs;

namespace Solidbody.Geometry.Tests.Arcs;

public class ArcFitTests
{
    [Fact]
    public void A_rounded_rectangle_gets_its_four_straights_and_four_arcs_back()
    {
        var fitted = ArcFit.Of(Shapes.Rectangle(new(3, 4), 80, 50, 10), 0.001, 0.006);
        Assert.Equal(8, fitted.Segments.Length);
        Assert.All(fitted.Segments.Where(s => s.IsArc), s => Assert.Equal(10, s.Radius, 6));
        Assert.Equal(80 * 50 - (4 - Math.PI) * 100, fitted.SignedArea, 4);
    }

    [Fact]
    public void A_circle_gets_its_radius_back()
    {
        var fitted = ArcFit.Of(Shapes.Circle(new(1, 2), 30), 0.001, 0.006);
        Assert.InRange(fitted.Segments.Length, 2, 4);
        Assert.All(fitted.Segments, s => Assert.True(Math.Abs(s.Radius - 30) < 1e-6 && s.Centre.DistanceTo(new(1, 2)) < 1e-6));
    }

    [Fact]
    public void A_polygon_with_corners_stays_as_it_is()
    {
        var fitted = ArcFit.Of(Shapes.Rectangle(new(0, 0), 80, 50), 0.001, 0.006);
        Assert.Equal(4, fitted.Segments.Length);
        Assert.DoesNotContain(fitted.Segments, s => s.IsArc);
    }

    [Fact]
    public void Points_lie_nearer_than_chords_where_so_asked()
    {
        var outline = OffsetsTests.Waisted;
        var fitted = ArcFit.Of(outline, 0.0005, 0.02);
        Assert.True(fitted.Loops[0].Segments.Length < outline.Loops[0].Points.Length);
        Assert.All(outline.Loops[0].Points, p => Assert.InRange(Math.Abs(fitted.SignedDistance(p)), 0, 0.0005 + 1e-9));
    }

    [Fact]
    public void No_edge_lies_further_from_its_arcs_than_the_tolerance_nor_an_arc_from_its_edges()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var tolerance = Math.Pow(10, -4 + 2.0 * (seed % 7) / 6);
            var region = seed % 2 == 0 ? RandomShapes.Of(6 * seed + 5).Flattened() : RandomShapes.Wavy(seed);
            var fitted = ArcFit.Of(region, tolerance, tolerance);
            Assert.Equal(tolerance, fitted.Deviation);
            foreach (var p in fitted.Loops.SelectMany(l => l.Segments).SelectMany(s => Enumerable.Range(0, 9).Select(k => s.At(k / 8.0))))
                Assert.True(Math.Abs(region.SignedDistance(p)) <= tolerance * (1 + 1e-6), $"seed {seed}: an arc {region.SignedDistance(p)} off, tolerance {tolerance}");
            foreach (var loop in region.Loops.Select(l => l.Points))
                for (var i = 0; i < loop.Length; i++)
                    for (var k = 0; k < 4; k++)
                        Assert.True(Math.Abs(fitted.SignedDistance(loop[i] + k / 4.0 * (loop[(i + 1) % loop.Length] - loop[i]))) <= tolerance * (1 + 1e-6), $"seed {seed}: an edge off");
        }
    }

    [Fact]
    public void A_flattened_spline_becomes_a_few_arcs_that_run_smoothly_into_each_other()
    {
        var spline = new BSpline([.. Enumerable.Range(0, 10).Select(i => (60 + 25 * (i % 3)) * Point2.Polar(i * Math.PI / 5))], true);
        var points = spline.Flatten();
        // A chord stands off its curve by the flattening, so an arc through its ends stands off the chord by that and a little.
        var fitted = ArcFit.Of(Loop.Of(points), Tolerances.Output, Tolerances.Fitting);
        Assert.InRange(fitted.Segments.Length, 10, points.Length / 2);
        Assert.All(fitted.Segments, s => Assert.True(s.IsArc));
        for (var i = 0; i < fitted.Segments.Length; i++)
            Assert.InRange(fitted.Segments[i].Direction(1).DistanceTo(fitted.Segments[(i + 1) % fitted.Segments.Length].Direction(0)), 0, 1e-6);
        // The arcs come nearer to the true curve than the chords do.
        var truth = spline.Flatten(1e-6).Max(p => fitted.Segments.Min(s => s.DistanceTo(p)));
        Assert.InRange(truth, 0, 2 * Tolerances.Output);
    }

    [Fact]
    public void An_open_path_keeps_its_ends_and_its_bends()
    {
        var path = Enumerable.Range(0, 200).Select(i => new Point2(i * 0.5, 8 * Math.Sin(i * 0.05))).ToArray();
        var fitted = ArcFit.Of(path, 0.002, 0.004);
        Assert.Equal(path[0], fitted[0].From);
        Assert.Equal(path[^1], fitted[^1].To);
        Assert.InRange(fitted.Length, 4, 60);
        Assert.Contains(fitted, s => s.Sweep > 0);
        Assert.Contains(fitted, s => s.Sweep < 0);
        Assert.All(path, p => Assert.InRange(fitted.Min(s => s.DistanceTo(p)), 0, 0.002));
        for (var i = 0; i + 1 < fitted.Length; i++) Assert.Equal(fitted[i].To, fitted[i + 1].From);
    }

    [Fact]
    public void A_straight_row_of_points_is_one_straight()
    {
        var line = Assert.Single(ArcFit.Of([.. Enumerable.Range(0, 50).Select(i => new Point2(i, 2 * i))], 0.001, 0.001));
        Assert.False(line.IsArc);
    }

    [Fact]
    public void No_tolerance_and_no_path_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ArcFit.Of(Shapes.Circle(new(0, 0), 5), 0, 1));
        Assert.Throws<ArgumentException>(() => ArcFit.Of([new Point2(0, 0)], 0.01, 0.01));
    }
}
