using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Tests.Toolpaths;

public class ScallopTests
{
    [Theory] // s = 2 √(h (2R − h)), from the right triangle; worked to seven digits apart from this code.
    [InlineData(3, 0.01, 0.4894895)]
    [InlineData(3.175, 0.01, 0.5035871)]
    [InlineData(3.175, 0.02, 0.7116179)]
    [InlineData(1.5, 0.01, 0.3458323)]
    public void Spacing_agrees_with_worked_numbers(double ball, double height, double spacing) => Assert.Equal(spacing, Scallop.Spacing(ball, height), 7);

    [Theory] // Limit: around a very large edge radius the arc r·δ is the flat spacing.
    [InlineData(3, 0.02)]
    [InlineData(6, 0.01)]
    public void Around_a_huge_edge_the_spacing_is_the_flat_one(double ball, double height) =>
        Assert.Equal(Scallop.Spacing(ball, height), 1e5 * Scallop.AngleAround(1e5, ball, height), 3);
}
