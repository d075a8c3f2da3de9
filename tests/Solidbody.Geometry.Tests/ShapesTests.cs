
namespace Solidbody.Geometry.Tests;

public class ShapesTests
{
    /// <summary>Segments of a full circle for a sagitta, from c = 2√(2Re − e²), closed form.</summary>
    [Theory]
    [InlineData(50, 0.01, 158)]   // chord 1.99990000 mm
    [InlineData(5, 0.01, 50)]     // chord 0.63213923 mm
    [InlineData(150, 0.005, 385)] // chord 2.44946933 mm
    public void A_circle_gets_the_chords_its_tolerance_asks_for(double radius, double sagitta, int chords) =>
        Assert.Equal(chords, Shapes.ChordsFor(radius, 2 * Math.PI, sagitta));

    [Fact]
    public void A_rounded_rectangle_has_its_closed_form_area_and_size()
    {
        var loop = Shapes.Rectangle(new(10, 20), 72, 40, 3.5, 0, 1e-5);
        Assert.Equal(72 * 40 - (4 - Math.PI) * 3.5 * 3.5, loop.SignedArea, 2);
        Assert.Equal(72, loop.Bounds.Width, 9);
        Assert.Equal(40, loop.Bounds.Height, 9);
    }

    [Fact]
    public void A_turned_rectangle_is_the_same_rectangle_turned()
    {
        var turned = Shapes.Rectangle(new(0, 0), 72, 40, 3.5, 0.4);
        var plain = Shapes.Rectangle(new(0, 0), 72, 40, 3.5).Map(p => p.Turned(0.4));
        Assert.Equal(plain.SignedArea, turned.SignedArea, 9);
        Assert.All(plain.Points.Zip(turned.Points), pair => Assert.True(pair.First.DistanceTo(pair.Second) < 1e-12));
    }

    [Fact]
    public void A_capsule_is_a_circle_moved_along_a_line()
    {
        var region = new Region(Shapes.Capsule(new(0, 0), new(30, 40), 5, 1e-5));
        Assert.Equal(50 * 10 + Math.PI * 25, region.Area, 2);
        Assert.Equal(-5, region.SignedDistance(new(15, 20)), 4);
    }
}
