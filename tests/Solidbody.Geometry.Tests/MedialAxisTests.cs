using CsCheck;

namespace Solidbody.Geometry.Tests;

public class MedialAxisTests
{
    [Fact] // Of a circle all largest discs are the circle itself, as well as two places on a chord can tell: a disc through one of them leans to its corner.
    public void Of_a_circle_it_is_the_centre()
    {
        var axis = MedialAxis.Of(new Region(Shapes.Circle(new(4, -3), 20)), 0.5);
        Assert.All(axis.Discs, d => Assert.InRange(d.Radius, 18.5, 20));
    }

    [Fact] // The middle line of a rectangle, and its corners' bisectors.
    public void Of_a_rectangle_it_is_a_roof_from_above()
    {
        var axis = MedialAxis.Of(new Region(Shapes.Rectangle(new(0, 0), 60, 20)), 0.5);
        foreach (var (p, r) in axis.Discs.Select(d => (d.Centre, d.Radius)))
        {
            Assert.Equal(Math.Min(10 - Math.Abs(p.Y), 30 - Math.Abs(p.X)), r, 1e-9);
            Assert.True(Math.Abs(p.Y) < 1e-9 && Math.Abs(p.X) <= 20 + 1e-9 || Math.Abs(Math.Abs(p.X) - 20 - Math.Abs(p.Y)) < 1e-9, $"{p}");
        }
        Assert.True(axis.Discs.Min(d => d.Radius) < 0.02);
    }

    [Fact] // Every disc lies inside; together they leave nothing out; all are joined.
    public void Discs_of_any_region_fill_it_and_hang_together() => Gen.Select(Gen.Double[20, 50], Gen.Double[10, 30], Gen.Double[0, 4], Gen.Double[-15, 15], Gen.Double[4, 12], Gen.Bool)
        .Sample((length, width, corner, x, radius, island) =>
        {
            var region = Offsets.Union([new Region(Shapes.Rectangle(new(0, 0), length, width, corner)), new Region(Shapes.Circle(new(x, width / 3), radius))])[0];
            if (island) region = Offsets.Difference(region, new Region(Shapes.Circle(new(x / 3, 0), 2)))[0];
            var axis = MedialAxis.Of(region, 0.4);
            Assert.All(axis.Discs, d => Assert.True(-region.SignedDistance(d.Centre) >= d.Radius - 1e-9));
            var grid = Grid.Over(region.Bounds, 0.9);
            for (var i = 0; i < grid.Count; i++)
            {
                var p = grid.Centre(i % grid.Columns, i / grid.Columns);
                if (region.SignedDistance(p) < -0.1) Assert.Contains(axis.Discs, d => d.Centre.DistanceTo(p) <= d.Radius + 0.1);
            }
            var seen = new HashSet<int> { 0 };
            var open = new Stack<int>([0]);
            while (open.TryPop(out var at)) foreach (var next in axis.Neighbours(at)) if (seen.Add(next)) open.Push(next);
            Assert.Equal(axis.Discs.Length, seen.Count);
        }, iter: 20);
}
