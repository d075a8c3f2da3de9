using Solidbody.Geometry;
using Solidbody.Proof.Comparing;

namespace Solidbody.Proof.Tests;

/// <summary>Places on the block of <see cref="BlockJob"/>, in words.</summary>
public sealed class PlaceNamerTests
{
    [Theory]
    [InlineData(25, 0, Side.Front, "pocket")]
    [InlineData(60, 13, Side.Front, "blind hole")]
    [InlineData(60, 13, Side.Back, "face")]          // it does not come through
    [InlineData(60, -16.5, Side.Back, "through hole")]
    [InlineData(79.5, 3, Side.Front, "outline")]
    [InlineData(50, 0, Side.Front, "face")]          // far from everything
    public void The_nearest_feature_that_opens_to_the_side_is_named(double x, double y, Side side, string feature) =>
        Assert.Equal(feature, new PlaceNamer(BlockJob.Part).Feature(new(x, y), side));
}
