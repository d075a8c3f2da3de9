using Solidbody.Instrument.Files;
using Solidbody.Materials;

namespace Solidbody.Instrument.Tests.Files;

public class WoodsSectionTests
{
    const string Top = "units = \"mm\"\nname = \"a\"\nscale = 635\n";

    static InstrumentDefinition Read(string more) => InstrumentFile.Read(Top + more, "a.toml").Good;

    [Fact]
    public void A_given_figure_stands_before_the_tables_and_leaves_the_others()
    {
        var alder = Read("[[woods]]\nkey = \"red-alder\"\ndensity = \"504 kg/m3\"\nshrinkage_tangential = 6\n").WoodOf("red-alder")!;
        Assert.Equal((0.45, Known.Given), (Math.Round(alder.Gravity!.Value.Value, 12), alder.Gravity!.Value.Known));
        Assert.Equal(504, alder.Density!.Value, 9);
        Assert.Equal(9_500, alder.Stiffness!.Value.Value);
        Assert.Equal(0.00151, alder.RadialChange!.Value.Value);
        Assert.Equal(Wood.ChangeFrom(6), alder.TangentialChange!.Value.Value);
    }

    [Fact]
    public void A_wood_of_ones_own_can_be_built_with()
    {
        var d = Read("[body]\nwood = \"plum\"\n[[woods]]\nkey = \"plum\"\ngravity = 0.65\nstiffness = \"1.5e6 psi\"\nprice_per_board_foot = 12\n");
        var plum = d.WoodOf(d.Body.Wood)!;
        Assert.Equal(WoodHardness.Hard, plum.Hardness);
        Assert.Equal(10_342, plum.Stiffness!.Value.Value, 1.0);
        Assert.Null(plum.RadialChange);
        // 423.776 board feet are a cubic metre: 1/(144 in³), 1 in = 25.4 mm.
        Assert.Equal(12 * 423.776, d.Woods[0].Price!.Value, 0.01);
    }

    [Fact]
    public void Without_the_list_a_wood_is_the_tables() => Assert.Same(Woods.Find("red-alder"), Read("").WoodOf("red-alder"));

    [Theory]
    [InlineData("[body]\nwood = \"plum\"", "5,8: `body.wood` is \"plum\"")]
    [InlineData("[[woods]]\ngravity = 0.5", "4,1: `key` of [[woods]] 1 is missing")]
    [InlineData("[[woods]]\nkey = \"plum\"\ngravity = 5", "6,11: `gravity` of [[woods]] 1 is 5")]
    [InlineData("[[woods]]\nkey = \"plum\"\ngravity = 0.5\ndensity = \"560 kg/m3\"", "7,11: both `gravity` and `density` are given")]
    [InlineData("[[woods]]\nkey = \"plum\"\nstiffness = 9500", "6,13: `stiffness` of [[woods]] 1 is 9500, not a stress this file can hold")]
    [InlineData("[[woods]]\nkey = \"plum\"\nprice_per_m3 = 1\nprice_per_board_foot = 2", "6,16: two prices are given")]
    [InlineData("[[woods]]\nkey = \"plum\"\n[[woods]]\nkey = \"plum\"", "7,7: the wood \"plum\" is described twice")]
    [InlineData("[[woods]]\nkey = \"plum\"\nstifness = \"9.5 GPa\"", "6,1: unknown key `stifness` in [woods]")]
    public void A_mistake_is_told_with_its_place(string more, string told)
    {
        var mistakes = InstrumentFile.Read(Top + more + "\n", "a.toml").Mistakes;
        var m = Assert.Single(mistakes);
        Assert.StartsWith(told, $"{m.Line},{m.Column}: {m.Wrong}", StringComparison.Ordinal);
        Assert.All([m.Allowed, m.Remedy], t => Assert.False(string.IsNullOrWhiteSpace(t)));
    }
}
