using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Drawn;

/// <summary>What can be wrong about a drawing and where it is told: in the instrument file, or in the drawing itself.</summary>
public class DrawingKeyTests
{
    [Theory]
    [InlineData("drawing = \"../a.svg\"", "not a drawing's name")]
    [InlineData("drawing = \"/etc/passwd.svg\"", "not a drawing's name")]
    [InlineData("drawing = \"c:a.svg\"", "not a drawing's name")]
    [InlineData("drawing = \".svg\"", "not a drawing's name")]
    [InlineData("drawing = \"a.pdf\"", "not a drawing's name")]
    [InlineData("drawing = \"none.svg\"", "there is no file none.svg")]
    [InlineData("drawing = \"school-drawn.svg\"", "cannot be used as an outline")]
    [InlineData(Shelf.Svg + "waist_width = 240", "has no meaning here")]
    [InlineData(Shelf.Svg + "family = \"offset\"", "has no meaning here")]
    [InlineData(Shelf.Svg + "[body.outline.bass]\nkind = \"rounded\"", "has no meaning here")]
    [InlineData(Shelf.Svg + "place = \"as-drawn\"", "has no meaning here")]
    [InlineData(Shelf.Svg + "gap = 2", "gap")]
    [InlineData(Shelf.Svg + "unit = \"in\"", "cannot be used as an outline")]
    [InlineData("drawing = \"school-drawn.svg\"\npick = \"body\"\nturn = \"90 deg\"\ncentre_line = 500", "passes beside")]
    [InlineData("drawing = \"drawn-r12.dxf\"\npick = \"body\"\nunit = \"cm\"", "long and")]
    [InlineData("drawing = \"drawn-r12.dxf\"\npick = \"body\"", "cannot be used as an outline")]
    public void A_mistake_about_the_drawing_is_told_in_the_instrument_file(string outline, string says)
    {
        var read = Shelf.Read(outline);
        Assert.Null(read.Value);
        var mistake = read.Mistakes.FirstOrDefault(m => m.Wrong.Contains(says, StringComparison.Ordinal));
        Assert.True(mistake is not null, string.Join("\n", read.Mistakes));
        Assert.Equal("a.toml", mistake.File);
        Assert.True(mistake.Line >= 5);
    }

    [Fact]
    public void What_is_wrong_in_the_drawing_is_told_with_the_drawing_s_own_line()
    {
        var read = Shelf.Read("drawing = \"open.svg\"", new Shelf().With("open.svg", "<svg width=\"500mm\" height=\"500mm\" viewBox=\"0 0 500 500\">\n<path d=\"M0 0H400V300\"/></svg>"));
        Assert.Contains(read.Mistakes, m => m is { File: "open.svg", Line: 2 } && m.Wrong.Contains("ends in the open", StringComparison.Ordinal));
        Assert.Single(read.Mistakes, m => m.File == "a.toml");
    }

    [Fact]
    public void Without_a_shelf_no_drawing_is_read() =>
        Assert.Contains(InstrumentFile.Read("units = \"mm\"\nname = \"a\"\nscale = 635\n[body.outline]\ndrawing = \"a.svg\"\n", "a.toml").Mistakes, m => m.Wrong.Contains("no a.svg", StringComparison.Ordinal));
}
