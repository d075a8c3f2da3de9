using Solidbody.Findings;

namespace Solidbody.Drawings.Tests;

public class LoopTests
{
    /// <summary>A rectangle 100 by 50 of four lines whose second begins late.</summary>
    private static Result<Drawing> Gapped(double gap, double allowed) => Draw.Dxf(Draw.Say(
        $"0 LINE 10 0 20 0 11 100 21 0 0 LINE 10 100 20 {gap} 11 100 21 50 0 LINE 10 100 20 50 11 0 21 50 0 LINE 10 0 20 50 11 0 21 0"), new(Gap: allowed));

    [Theory, InlineData(0.009, 0.01), InlineData(0.3, 0.5)]
    public void A_gap_within_the_stated_one_is_mended_and_told(double gap, double allowed)
    {
        var read = Gapped(gap, allowed);
        Assert.InRange(read.Only().SignedArea, 5000 - 100 * gap, 5000);
        var note = Assert.Single(read.Good.Notes);
        Assert.Equal((DrawingNoteKind.Mended, gap), (note.Kind, Math.Round(note.Size, 6)));
        Assert.Contains("x 100", note.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wider_gap_is_refused_with_its_size_and_the_way_out()
    {
        var mistake = Gapped(0.2, 0.01).Mistake("ends in the open");
        Assert.Contains("0.2 mm away", mistake.Wrong, StringComparison.Ordinal);
        Assert.Contains("gap = 0.201", mistake.Remedy, StringComparison.Ordinal);
        Assert.Equal(2, Gapped(0.2, 0.01).Mistakes.Length);
        Assert.DoesNotContain("gap =", Gapped(0.9, 0.01).Mistakes[0].Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_gaps_nothing_is_told() => Assert.Empty(Gapped(0, 0.01).Good.Notes);

    [Fact]
    public void A_branch_is_refused() =>
        Draw.Dxf("0 LINE 10 0 20 0 11 100 21 0 0 LINE 10 100 20 0 11 100 21 50 0 LINE 10 100 20 50 11 0 21 0 0 LINE 10 100 20 0 11 150 21 0").Mistake("3 ends meet at x 100");

    [Fact]
    public void A_line_drawn_twice_is_refused_either_way_round()
    {
        const string triangle = "0 LINE 10 0 20 0 11 100 21 0 0 LINE 10 100 20 0 11 100 21 50 0 LINE 10 100 20 50 11 0 21 0 ";
        Draw.Dxf(triangle + "0 LINE 10 0 20 0 11 100 21 0").Mistake("drawn twice");
        Draw.Dxf(triangle + "0 LINE 10 100 20 0 11 0 21 0").Mistake("drawn twice");
        Draw.Svg("<rect width='10' height='10'/><rect width='10' height='10'/>").Mistake("drawn twice");
    }

    [Theory]
    [InlineData("M0 0 L100 0 L100 50 L50 -20 L0 50 Z", "itself at x")]
    [InlineData("M0 0 L100 50 L100 0 L0 60 Z", "itself at x 54.55, y -27.27")]
    [InlineData("M0 0 L100 0 L100 50 L50 0 L0 50 Z", "itself at x 50")]
    [InlineData("M0 0 L100 0 L100 50 L150 50 L100 50 L0 50 Z", "itself")]
    [InlineData("M0 0 L100 0 L150 0 L100 0 L100 50 Z", "itself")]
    public void A_loop_that_crosses_or_touches_itself_is_refused_with_the_place(string d, string says) => Draw.Path(d).Mistake(says);

    [Fact]
    public void Loops_that_cross_one_another_are_refused() => Draw.Svg("<circle r='40'/><circle cx='30' r='40'/>").Mistake("crosses or touches circle");

    [Fact]
    public void A_loop_without_area_is_refused() => Draw.Svg("<rect width='100' height='0.001'/>").Mistake("encloses");

    [Fact]
    public void Only_one_loop_is_an_outline()
    {
        Result<Drawing> Outline(string shapes) => DrawingReader.ReadOutline(Draw.File("a.svg", Draw.Page(shapes)), new());
        Outline("<circle r='40'/>").Only();
        Outline("<circle r='40'/>\n<circle r='20'/>").Mistake("second loop inside circle (line 2)");
        Assert.Equal(3, Outline("<circle r='40'/>\n<circle cx='100' r='20'/>").Mistake("second loop beside").Line);
        Outline("<text>none</text>").Mistake("no closed line");
    }

    [Fact]
    public void A_speck_is_left_out_and_told() =>
        Assert.Contains("speck", Assert.Single(Draw.Svg("<rect width='100' height='50'/><line x1='7' x2='7.004'/>").Good.Notes).Said, StringComparison.Ordinal);
}
