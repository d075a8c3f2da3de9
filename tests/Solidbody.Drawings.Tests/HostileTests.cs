using System.Text;
using CsCheck;

namespace Solidbody.Drawings.Tests;

/// <summary>What nobody draws: every one is refused with a sentence.</summary>
public class HostileTests
{
    private static DrawingFile Svg(string text) => Draw.File("evil.svg", text);
    private static DrawingFile Dxf(string text) => Draw.File("evil.dxf", text);

    [Theory, InlineData("huge.svg"), InlineData("huge.dxf")]
    public void A_hundred_megabytes_are_refused_by_their_size(string name) =>
        DrawingReader.Read(new(name, new byte[100 << 20]), new()).Mistake("104857600 bytes");

    [Fact]
    public void Entities_that_multiply_are_refused_before_they_do()
    {
        var bomb = new StringBuilder("<?xml version=\"1.0\"?>\n<!DOCTYPE svg [\n<!ENTITY a \"ha\">\n");
        for (var i = 1; i < 30; i++) bomb.Append($"<!ENTITY {(char)('a' + i % 26)}{i} \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">\n");
        Assert.Equal(2, DrawingReader.Read(Svg(bomb + "]>\n<svg width='1mm' height='1mm'>&d29;</svg>"), new()).Mistake("document type").Line);
    }

    [Fact]
    public void Another_file_is_never_opened() =>
        DrawingReader.Read(Svg("<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><svg width='1mm' height='1mm'><text>&x;</text></svg>"), new()).Mistake("document type");

    [Fact]
    public void Copies_that_multiply_are_refused()
    {
        var bomb = new StringBuilder("<g id='a0'/>");
        for (var i = 1; i < 9; i++) bomb.Append($"<g id='a{i}'>{string.Concat(Enumerable.Repeat($"<use href='#a{i - 1}'/>", 20))}</g>");
        Draw.Svg($"<defs>{bomb}</defs><use href='#a7'/>").Mistake("with its copies");
        Draw.Svg("<g id='a'><use href='#a'/></g>").Mistake("deep inside one another");
    }

    [Fact]
    public void A_block_that_holds_itself_is_refused() => Draw.Dxf("0 INSERT 2 a 10 0 20 0", blocks: "0 BLOCK 2 a 0 INSERT 2 a 10 0 20 0 0 ENDBLK").Mistake("deep inside one another");

    [Fact]
    public void Blocks_that_multiply_are_refused()
    {
        var blocks = new StringBuilder("0 BLOCK 2 b0 0 POINT 10 0 20 0 0 ENDBLK ");
        for (var i = 1; i < 8; i++) blocks.Append($"0 BLOCK 2 b{i} {string.Concat(Enumerable.Repeat($"0 INSERT 2 b{i - 1} 10 0 20 0 ", 20))}0 ENDBLK ");
        Draw.Dxf("0 INSERT 2 b7 10 0 20 0", blocks: blocks.ToString()).Mistake("copies counted each time");
    }

    [Fact]
    public void Depth_without_end_is_refused() => Draw.Svg(string.Concat(Enumerable.Repeat("<g>", 100_000))).Mistake("deep inside one another");

    [Fact]
    public void Elements_without_end_are_refused() => Draw.Svg(string.Concat(Enumerable.Repeat("<g/>", 900_000))).Mistake("more than 50000 elements");

    [Fact]
    public void Groups_without_end_are_refused() => DrawingReader.Read(Dxf(string.Concat(Enumerable.Repeat("0\na\n", 1_000_000))), new()).Mistake("more than 800000 groups");

    [Fact]
    public void Shapes_and_points_without_end_are_refused()
    {
        Draw.Svg(string.Concat(Enumerable.Repeat("<circle r='1'/>", 30_000))).Mistake("points");
        Draw.Svg(string.Concat(Enumerable.Repeat("<rect/>", 30_000))).Mistake("shapes");
        Draw.Path("M0 0" + string.Concat(Enumerable.Range(0, 40_000).Select(i => $"L{i % 1000} {i % 7}"))).Mistake("points");
        Draw.Dxf("0 LWPOLYLINE 70 1 " + string.Concat(Enumerable.Range(0, 40_000).Select(i => $"10 {i % 1000} 20 {i % 7} "))).Mistake("points");
    }

    [Theory, InlineData(0), InlineData(31)] // Long strokes side by side, none crossing: every pair is as near as can be. Turned, no box keeps two of them apart.
    public void A_drawing_as_full_as_it_may_be_is_read_to_the_end(int turn)
    {
        var d = new StringBuilder("M0 0");
        for (var i = 0; i < 9_990; i++) d.Append(i % 2 == 0 ? Draw.Say($"L{i * 0.02:0.##} 500 L{i * 0.02 + 0.02:0.##} 500") : Draw.Say($"L{i * 0.02:0.##} 0 L{i * 0.02 + 0.02:0.##} 0"));
        d.Append("V-10H0Z");
        Assert.InRange(Draw.Svg($"<path transform='rotate({turn})' d='{d}'/>").Only().Points.Length, 19_900, 20_000);
    }

    [Theory]
    [InlineData("")]
    [InlineData("plain words")]
    [InlineData("<svg width='1mm' height='1mm'><path d='M0 0")]
    [InlineData("<svg width='1mm' height='1mm'></g></svg>")]
    [InlineData("<svg width='1mm' height='1mm'>&nbsp;</svg>")]
    [InlineData("<html><body/></html>")]
    [InlineData("<svg width='NaNmm' height='infmm'><circle r='9'/></svg>")]
    [InlineData("<svg width='10mm' height='10mm' viewBox='0 0 0 0'><circle r='9'/></svg>")]
    [InlineData("<svg width='-10mm' height='10mm' viewBox='0 0 1 1'><circle r='9'/></svg>")]
    [InlineData("<svg width='1e308mm' height='1e308mm' viewBox='0 0 1e-300 1e-300'><circle r='9'/></svg>")]
    public void A_broken_svg_is_refused(string text) => Assert.NotEmpty(DrawingReader.Read(Svg(text), new()).Mistakes);

    [Theory]
    [InlineData("")]
    [InlineData("plain words")]
    [InlineData("0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n")]
    [InlineData("0\nSECTION\n2\nENTITIES\n0\nENDSEC\n")]
    [InlineData("0\nEOF\n")]
    [InlineData("<svg/>")]
    public void A_broken_dxf_is_refused(string text) => Assert.NotEmpty(DrawingReader.Read(Dxf(text), new()).Mistakes);

    [Fact]
    public void A_binary_file_is_called_what_it_is()
    {
        DrawingReader.Read(new("a.dxf", new byte[] { 65, 66, 13, 10, 26, 0, 7 }), new()).Mistake("not text");
        Assert.NotEmpty(DrawingReader.Read(new("a.svg", new byte[] { 0x1f, 0x8b, 8, 0, 0 }), new()).Mistakes);
    }

    [Fact]
    public void Another_ending_is_refused() => DrawingReader.Read(Draw.File("a.pdf", "x"), new()).Mistake("neither an SVG nor a DXF");

    [Fact] // Whatever bytes, and whatever damage to a good drawing: an answer, never an exception; and never both a drawing and mistakes.
    public void Any_bytes_give_an_answer()
    {
        var good = Encoding.UTF8.GetBytes(Draw.Page("<g transform='rotate(3)'><path id='p' d='M0 0C10 20 30 40 50 0S80-20 90 0L90 50A30 20 0 0 1 0 50Z'/></g><use href='#p' x='200'/>"));
        var dxf = Encoding.UTF8.GetBytes(Draw.DxfText("0 LWPOLYLINE 8 a 90 3 70 1 10 0 20 0 42 0.5 10 10 20 0 10 10 20 10 0 SPLINE 71 1 40 0 40 0 40 1 40 1 10 0 20 0 10 1 20 1", "4"));
        Gen.Select(Gen.Bool, Gen.Select(Gen.Int[0, 400], Gen.Byte).List[0, 6], Gen.Int[0, 600]).Sample((isSvg, edits, length) =>
        {
            var bytes = ((isSvg ? good : dxf).AsSpan()[..Math.Min(length < 100 ? int.MaxValue : length, (isSvg ? good : dxf).Length)]).ToArray();
            foreach (var (at, value) in edits) if (at < bytes.Length) bytes[at] = value;
            var read = DrawingReader.ReadOutline(new(isSvg ? "a.svg" : "a.dxf", bytes), new());
            return read.IsGood == (read.Value is not null) && (read.Value is null || read.Value.Loops.All(l => l.Loop.Points.All(p => double.IsFinite(p.X + p.Y))));
        }, iter: 3000);
        Gen.Select(Gen.Bool, Gen.Byte.Array[0, 300]).Sample((isSvg, bytes) => !DrawingReader.ReadOutline(new(isSvg ? "a.svg" : "a.dxf", bytes), new()).IsGood, iter: 1000);
    }
}
