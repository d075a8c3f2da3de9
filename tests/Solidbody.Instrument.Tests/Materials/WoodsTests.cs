using Solidbody.Materials;

namespace Solidbody.Instrument.Tests.Materials;

public class WoodsTests
{
    // Source: 1000·G·(1 + M/100) at 12 %, Wood Handbook chapter 4, from memory; worked values.
    [Theory]
    [InlineData("red-alder", 459.20)]
    [InlineData("white-ash", 672.00)]
    [InlineData("basswood", 414.40)]
    [InlineData("black-cherry", 560.00)]
    [InlineData("soft-maple", 604.80)]
    [InlineData("sugar-maple", 705.60)]
    [InlineData("black-walnut", 616.00)]
    [InlineData("yellow-poplar", 470.40)]
    [InlineData("sitka-spruce", 448.00)]
    public void Density_follows_from_gravity(string key, double density) => Assert.Equal(density, Woods.Find(key)!.Density!.Value, 2);

    [Fact] // A dry board weighs less than the same board wet, though it is smaller: alder at 6 % and 12 %, its volume 1 − 0.126·24/30 and 1 − 0.126·18/30 of the green.
    public void A_board_at_another_moisture_has_its_own_density()
    {
        var alder = Woods.Find("red-alder")!;
        Assert.Equal(1000 * 0.41 * 0.9244 / 0.8992 * 1.06, alder.DensityAt(6)!.Value, 6);
        Assert.True(alder.DensityAt(6) < alder.DensityAt(12) && alder.DensityAt(12) < alder.DensityAt(15));
    }

    [Fact] // Green gravity 0.45 and shrinkage 7.8 %: 0.45/(1 − 0.078·0.6).
    public void Gravity_of_imported_woods_is_brought_to_the_volume_at_12_per_cent() => Assert.Equal(0.45 / 0.9532, Woods.Find("mahogany")!.Gravity!.Value.Value, 9);

    [Fact]
    public void Keys_are_unique_and_every_figure_says_where_it_comes_from()
    {
        Assert.Equal(Woods.All.Length, Woods.All.Select(w => w.Key).Distinct().Count());
        Assert.All(Woods.All.SelectMany(Figures), f => Assert.Contains("Wood Handbook", f.Told, StringComparison.Ordinal));
    }

    public static TheoryData<string> PrintedTwice => [.. Woods.All.Where(w => w is { RadialShrinkage: not null, PrintedRadialChange: not null }).Select(w => w.Key)];

    /// <summary>Data-entry check: shrinkage (tables 4-3) and dimensional change (table 13-5) of the Wood Handbook say the same thing twice.
    /// C = S/(3000 − 20 S) gave 32 of 36 rows read in both tables to the printed five decimals; the exceptions are none of these woods.</summary>
    [Theory, MemberData(nameof(PrintedTwice))]
    public void Shrinkage_and_coefficient_agree(string key)
    {
        var wood = Woods.Find(key)!;
        Assert.Equal(wood.PrintedRadialChange!.Value.Value, Wood.ChangeFrom(wood.RadialShrinkage!.Value.Value), 5e-6 * 1.0001);
        Assert.Equal(wood.PrintedTangentialChange!.Value.Value, Wood.ChangeFrom(wood.TangentialShrinkage!.Value.Value), 5e-6 * 1.0001);
    }

    // Source: the relation's own worked rows, of woods that are not in our table: beech, Oregon ash, black ash (tables 4-3 and 13-5, read).
    [Theory]
    [InlineData(5.5, 0.00190)]
    [InlineData(11.9, 0.00431)]
    [InlineData(4.1, 0.00141)]
    [InlineData(8.1, 0.00285)]
    [InlineData(5.0, 0.00172)]
    [InlineData(7.8, 0.00274)]
    public void The_relation_holds_for_rows_we_do_not_keep(double shrinkage, double coefficient) => Assert.Equal(coefficient, Wood.ChangeFrom(shrinkage), 5e-6 * 1.0001);

    [Fact] // Our tables carry no coefficient for these: it follows from the shrinkage that was read.
    public void Mahogany_moves_by_its_shrinkage()
    {
        Assert.Equal(0.001020, Woods.Find("mahogany")!.RadialChange!.Value.Value, 6);
        Assert.Equal(0.001405, Woods.Find("mahogany")!.TangentialChange!.Value.Value, 6);
        Assert.Equal(Known.WorkedOut, Woods.Find("mahogany")!.RadialChange!.Value.Known);
        Assert.Null(Woods.Find("wenge")!.RadialChange);
    }

    /// <summary>Wood shrinks about twice as much along the rings as across them, and the volume by about their sum (Wood Handbook, chapter 4, from memory): a slip of a digit shows.</summary>
    [Fact]
    public void Shrinkages_are_in_proportion() => Assert.All(Woods.All.Where(w => w.VolumeShrinkage is not null), w =>
    {
        var (r, t, v) = (w.RadialShrinkage!.Value.Value, w.TangentialShrinkage!.Value.Value, w.VolumeShrinkage!.Value.Value);
        Assert.InRange(t / r, 1.3, 2.5);
        Assert.InRange(v / (r + t), 0.9, 1.3);
    });

    /// <summary>Strength and stiffness of clear wood go with gravity: rupture 171 G^1.13 N/mm² and stiffness 16,500 G^0.7 N/mm² within a third
    /// (Wood Handbook FPL-GTR-190, table 5-11, hardwoods at 12 %, from memory): a slip of a digit or of a unit shows.</summary>
    [Fact]
    public void Strength_goes_with_gravity() => Assert.All(Woods.All.Where(w => w.BendingStrength is not null), w =>
    {
        var gravity = w.Gravity!.Value.Value;
        Assert.InRange(w.BendingStrength!.Value.Value / (171 * Math.Pow(gravity, 1.13)), 0.7, 1.35);
        Assert.InRange(w.Stiffness!.Value.Value / (16_500 * Math.Pow(gravity, 0.7)), 0.7, 1.35);
    });

    private static IEnumerable<Sourced> Figures(Wood w) => ((Sourced?[])[w.Gravity, w.Stiffness, w.BendingStrength, w.SideHardness, w.RadialShrinkage, w.TangentialShrinkage,
        w.VolumeShrinkage, w.RadialChange, w.TangentialChange]).OfType<Sourced>();
}
