using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Timing.Least;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Tests.Toolpaths;

public class VisitOrderTests
{
    private static Gen<Point2[]> Points(int least, int most) => Gen.Select(Gen.Double[0, 100], Gen.Double[0, 60], (x, y) => new Point2(x, y)).Array[least, most];

    [Fact] // Against every order there is.
    public void No_walk_through_few_points_is_shorter() => Points(1, 7).Sample(points =>
        Assert.Equal(Orders(points.Length).Min(o => VisitOrder.Length(points, o)), VisitOrder.Length(points, VisitOrder.Of(points)), 9), iter: 40);

    [Fact] // Nine of them once, 362 880 orders.
    public void No_walk_through_nine_points_is_shorter()
    {
        Point2[] points = [new(3, 8), new(91, 4), new(40, 55), new(12, 31), new(77, 48), new(60, 20), new(25, 2), new(95, 58), new(48, 33)];
        Assert.Equal(Orders(9).Min(o => VisitOrder.Length(points, o)), VisitOrder.Length(points, VisitOrder.Of(points)), 9);
    }

    [Fact] // Every point once; no shorter than the least tree, no longer than twice that (a walk round the tree).
    public void A_walk_through_many_points_is_between_the_least_tree_and_twice_that() => Points(11, 60).Sample(points =>
    {
        var walk = VisitOrder.Of(points);
        Assert.Equal(Enumerable.Range(0, points.Length), walk.Order());
        var tree = LeastTravel.LeastTree(points.Length, (i, j) => points[i].DistanceTo(points[j]));
        Assert.InRange(VisitOrder.Length(points, walk), tree - 1e-9, 2 * tree);
    }, iter: 30);

    [Fact] // Random uniform points: the best walk through n of them in an area A is near 0.7124 √(nA) (Beardwood, Halton, Hammersley 1959, from memory).
    public void A_walk_through_many_points_is_near_the_law_of_large_numbers()
    {
        var random = new Random(5);
        Point2[] points = [.. Enumerable.Range(0, 200).Select(_ => new Point2(100 * random.NextDouble(), 100 * random.NextDouble()))];
        Assert.InRange(VisitOrder.Length(points, VisitOrder.Of(points)) / (0.7124 * Math.Sqrt(200 * 1e4)), 0.9, 1.15);
    }

    private static IEnumerable<int[]> Orders(int n)
    {
        var order = Enumerable.Range(0, n).ToArray();
        do yield return order; while (Next(order));
    }

    /// <summary>The next order in the dictionary's sense; false after the last.</summary>
    private static bool Next(int[] order)
    {
        var i = order.Length - 2;
        while (i >= 0 && order[i] > order[i + 1]) i--;
        if (i < 0) return false;
        var k = order.Length - 1;
        while (order[k] < order[i]) k--;
        (order[i], order[k]) = (order[k], order[i]);
        Array.Reverse(order, i + 1, order.Length - i - 1);
        return true;
    }
}
