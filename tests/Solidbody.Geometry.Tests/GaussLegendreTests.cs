namespace Solidbody.Geometry.Tests;

public class GaussLegendreTests
{
    /// <summary>Abramowitz and Stegun, table 25.4, n = 5, from memory: closed forms (1/3)√(5 ± 2√(10/7)), (322 ∓ 13√70)/900, 128/225.</summary>
    [Fact]
    public void Five_nodes_are_the_textbooks()
    {
        var nodes = GaussLegendre.Nodes(5);
        Assert.Equal(Math.Sqrt(5 + 2 * Math.Sqrt(10 / 7.0)) / 3, nodes[0].Node, 15);
        Assert.Equal(Math.Sqrt(5 - 2 * Math.Sqrt(10 / 7.0)) / 3, nodes[1].Node, 15);
        Assert.Equal(0, nodes[2].Node, 15);
        Assert.Equal((322 - 13 * Math.Sqrt(70)) / 900, nodes[0].Weight, 15);
        Assert.Equal((322 + 13 * Math.Sqrt(70)) / 900, nodes[1].Weight, 15);
        Assert.Equal(128 / 225.0, nodes[2].Weight, 15);
    }

    [Fact] // ∫ x^p over [−1, 1] = 2/(p + 1) for even p, 0 for odd.
    public void Polynomials_below_twice_the_nodes_are_exact()
    {
        foreach (var n in (int[])[1, 2, 7, 24, 64])
            for (var p = 0; p < 2 * n; p++)
                Assert.Equal(p % 2 == 0 ? 2.0 / (p + 1) : 0, GaussLegendre.Nodes(n).Sum(x => x.Weight * Math.Pow(x.Node, p)), 1e-13);
    }

    [Fact] public void No_nodes_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => GaussLegendre.Nodes(0));
}
