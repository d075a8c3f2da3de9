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
}
