using CsCheck;
using Solidbody.Machining.Feeds;

namespace Solidbody.Machining.Tests.Feeds;

public class EngagementTests
{
    private static readonly Gen<double> Angles = Gen.Double[0.01, Math.PI];

    // Source: cos φ = 1 − 2·ae/D, thickest fz·sin φ, mean fz·(1 − cos φ)/φ, feed factor 1/(2√(ae/D·(1 − ae/D))), worked by hand; plane geometry.
    [Theory]
    [InlineData(6, 0.6, 0.1, 36.869898, 0.06, 0.03107998, 1.666667)]
    [InlineData(6, 1.5, 0.1, 60, 0.08660254, 0.04774648, 1.154701)]
    [InlineData(6, 3, 0.1, 90, 0.1, 0.06366198, 1)]
    [InlineData(12, 0.5, 0.15, 23.556464, 0.05994789, 0.03040343, 2.502173)]
    public void Chip_thinning_agrees_with_worked_values(double diameter, double width, double chip, double degrees, double thickest, double mean, double factor)
    {
        var angle = Engagement.Angle(width, diameter);
        Assert.Equal(degrees, angle * 180 / Math.PI, 6);
        Assert.Equal(thickest, chip * Engagement.Thickest(angle), 8);
        Assert.Equal(mean, chip * Engagement.Mean(angle), 8);
        Assert.Equal(factor, Engagement.Thinning(angle), 6);
    }

    [Fact]
    public void From_half_the_diameter_on_nothing_is_thinned() => Gen.Select(Gen.Double[1, 20], Gen.Double[0.5, 1]).Sample((diameter, share) =>
        Math.Abs(Engagement.Thinning(Engagement.Angle(share * diameter, diameter)) - 1) < 1e-12);

    [Fact]
    public void Angle_and_width_are_each_others_inverse() => Gen.Select(Gen.Double[1, 20], Gen.Double[0.01, 1]).Sample((diameter, share) =>
        Math.Abs(Engagement.Width(Engagement.Angle(share * diameter, diameter), diameter) - share * diameter) < 1e-9);

    // Independent of the closed form: teeth stepped round in small steps, their chips added up.
    [Fact]
    public void The_chips_of_all_teeth_together_are_those_of_the_worst_moment() => Gen.Select(Angles, Gen.Int[1, 8]).Sample((angle, flutes) =>
    {
        const int steps = 2000;
        var worst = Enumerable.Range(0, steps).Max(i => Enumerable.Range(0, flutes)
            .Select(k => 2 * Math.PI * k / flutes + 2 * Math.PI / flutes * i / steps).Where(a => a <= angle).Sum(Math.Sin));
        var together = Engagement.Together(angle, flutes);
        return worst <= together + 1e-9 && together - worst < 0.02;
    });

    // Independent of the closed form: points round the cutter, asked whether they lie in the layer that stands before the bend's wall.
    [Fact]
    public void A_bend_towards_the_wood_engages_what_its_layer_says() => Gen.Select(Gen.Double[1, 12], Gen.Double[0.02, 0.45], Gen.Double[0.2, 60]).Sample((diameter, share, bend) =>
    {
        var (radius, width) = (diameter / 2, share * diameter);
        const int steps = 20000;
        var inWood = Enumerable.Range(0, steps).Count(i => Math.PI * (i + 0.5) / steps is var a
            && Math.Sqrt(Math.Pow(bend + radius * Math.Cos(a), 2) + Math.Pow(radius * Math.Sin(a), 2)) > Math.Abs(bend + radius - width));
        return Math.Abs(Engagement.InBend(width, diameter, bend) - Math.PI * inWood / steps) < 3 * Math.PI / steps || width > 2 * Math.Min(bend, radius);
    });

    [Fact]
    public void A_bend_engages_more_the_tighter_it_is_and_a_wide_one_as_the_straight() => Gen.Select(Gen.Double[1, 12], Gen.Double[0.02, 0.9], Gen.Double[0.1, 50], Gen.Double[0.01, 10]).Sample((diameter, share, bend, more) =>
    {
        var width = share * diameter;
        return Engagement.InBend(width, diameter, bend) >= Engagement.InBend(width, diameter, bend + more) - 1e-12
            && Math.Abs(Engagement.InBend(width, diameter, 1e9) - Engagement.Angle(width, diameter)) < 1e-4
            && Engagement.InBend(width, diameter, double.PositiveInfinity) == Engagement.Angle(width, diameter);
    });

    [Theory]
    [InlineData(0, 6)]
    [InlineData(6.1, 6)]
    [InlineData(double.NaN, 6)]
    [InlineData(1, double.NaN)]
    public void What_is_no_bite_is_refused(double width, double diameter) => Assert.Throws<ArgumentOutOfRangeException>(() => Engagement.Angle(width, diameter));
}
