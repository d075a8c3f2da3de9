using CsCheck;
using Solidbody.Machining.Feeds;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Tests.Feeds;

public class CuttingPhysicsTests
{
    // Source: fz = F/(n·z) worked by hand with F in mm/min, n in turns a minute.
    [Theory]
    [InlineData(2400, 18000, 2, 0.06666667)]
    [InlineData(3000, 18000, 2, 0.08333333)]
    [InlineData(1500, 12000, 2, 0.0625)]
    [InlineData(1000, 20000, 1, 0.05)]
    public void Chip_load_agrees_with_worked_values(double feedPerMinute, double turnsPerMinute, int flutes, double chip) =>
        Assert.Equal(chip, CuttingPhysics.ChipLoad(feedPerMinute / 60, turnsPerMinute / 60, flutes), 8);

    // Source: v = π·D·n worked by hand, m/s.
    [Theory]
    [InlineData(6, 18000, 5.654867)]
    [InlineData(3.175, 24000, 3.989823)]
    [InlineData(12.7, 16000, 10.639527)]
    public void Cutting_speed_agrees_with_worked_values(double diameter, double turnsPerMinute, double metresPerSecond) =>
        Assert.Equal(metresPerSecond, CuttingPhysics.CuttingSpeed(diameter, turnsPerMinute / 60) / 1000, 6);

    // Source: P = kc·ae·ap·vf/60000 with vf in mm/min; 1 N/mm² = 1 J/cm³.
    [Theory]
    [InlineData(40, 6, 3, 2000, 24.0)]
    [InlineData(30, 6.35, 3, 2540, 24.1935)]
    [InlineData(50, 12.7, 5, 3000, 158.75)]
    public void Power_agrees_with_worked_values(double force, double width, double depth, double feedPerMinute, double watts) =>
        Assert.Equal(watts, CuttingPhysics.Power(force, width, depth, feedPerMinute / 60), 6);

    // Source: s = 2√(h(2R − h)) worked with a 60-digit calculator.
    [Theory]
    [InlineData(3, 0.01, 0.4894895)]
    [InlineData(3.175, 0.01, 0.5035871)]
    [InlineData(3.175, 0.02, 0.7116179)]
    [InlineData(1.5, 0.01, 0.3458323)]
    public void Step_over_for_a_scallop_agrees_with_worked_values(double ballRadius, double ridge, double stepOver) =>
        Assert.Equal(stepOver, Scallop.Spacing(ballRadius, ridge), 7);

    [Fact]
    public void Feed_and_chip_load_are_each_others_inverse() =>
        Gen.Select(Gen.Double[0.001, 0.5], Gen.Double[50, 500], Gen.Int[1, 4]).Sample((chip, turns, flutes) =>
            Math.Abs(CuttingPhysics.ChipLoad(CuttingPhysics.Feed(chip, turns, flutes), turns, flutes) - chip) < 1e-12);

    [Fact]
    public void A_ridge_higher_than_the_ball_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Scallop.Spacing(3, 3.1));
}
