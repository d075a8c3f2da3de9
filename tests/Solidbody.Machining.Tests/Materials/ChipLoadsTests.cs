using CsCheck;
using Solidbody.Materials;

namespace Solidbody.Machining.Tests.Materials;

public class ChipLoadsTests
{
    [Fact] // Common practice, no source: thicker cutters take thicker chips, without jumps.
    public void Chip_load_grows_evenly_with_the_diameter() => Gen.Select(Gen.Double[0.2, 20], Gen.Double[0.001, 0.1]).Sample((d, more) =>
    {
        var (a, b) = (ChipLoads.For(d), ChipLoads.For(d + more));
        return a.Least <= b.Least + 1e-12 && a.Most <= b.Most + 1e-12 && a.Least < a.Most && b.Most - a.Most <= 0.06 * more;
    });

    [Fact]
    public void The_tables_rows_come_back() =>
        Assert.All(ChipLoads.Table, row => Assert.Equal(row.Load, ChipLoads.For(row.Diameter)));

    // Source: 1000·G·(1 + M/100) at 12 %, Wood Handbook chapter 4, from memory; worked values.
    [Theory]
    [InlineData("red-alder", 459.20)]
    [InlineData("white-ash", 672.00)]
    [InlineData("sugar-maple", 705.60)]
    [InlineData("black-walnut", 616.00)]
    public void Density_follows_from_gravity(string key, double density) => Assert.Equal(density, Woods.Find(key)!.Density!.Value, 2);

    [Fact]
    public void Keys_are_unique_and_gravities_have_a_source()
    {
        Assert.Equal(Woods.All.Length, Woods.All.Select(w => w.Key).Distinct().Count());
        Assert.All(Woods.All, w => Assert.Equal(w.Gravity is null, w.GravitySource.Length == 0));
    }
}
