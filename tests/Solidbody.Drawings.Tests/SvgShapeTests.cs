namespace Solidbody.Drawings.Tests;

public class SvgShapeTests
{
    // Areas in closed form. Section 9.2 of SVG 1.1: a radius not given is the other one, and neither is more than half its side.
    public static TheoryData<string, double> Shapes => new()
    {
        { "<rect x='10' y='20' width='100' height='50'/>", 5000 },
        { "<rect width='100' height='50' rx='10'/>", 5000 - (4 - Math.PI) * 100 },
        { "<rect width='100' height='50' rx='10' ry='20'/>", 5000 - (4 - Math.PI) * 200 },
        { "<rect width='100' height='50' ry='10'/>", 5000 - (4 - Math.PI) * 100 },
        { "<rect width='100' height='50' rx='80' ry='10'/>", 5000 - (4 - Math.PI) * 500 },
        { "<circle cx='50' cy='60' r='40'/>", Math.PI * 1600 },
        { "<ellipse cx='50' cy='60' rx='40' ry='20'/>", Math.PI * 800 },
        { "<polygon points='0,0 100,0 100,50'/>", 2500 },
        { "<polyline points='0 0 100 0 100 50 0 0'/>", 2500 },
        { "<line x2='100'/><line x1='100' x2='100' y2='50'/><line x1='100' y1='50'/>", 2500 },
        { "<rect width='10mm' height='1cm'/>", 100 * Math.Pow(96 / 25.4, 2) },
        { "<rect width='1in' height='72pt'/>", 96 * 96 },
        { "<rect width='6pc' height='96px'/>", 96 * 96 },
    };

    [Theory, MemberData(nameof(Shapes))]
    public void Basic_shapes_have_their_areas(string shape, double area) => Draw.Svg(shape).Only().HasArea(area);

    // SVG 1.1, section 7.6: areas grow by the determinant; lists work from the right.
    [Theory]
    [InlineData("translate(30,40)", 30, 40, 130, 90)]
    [InlineData("translate(30)", 30, 0, 130, 50)]
    [InlineData("scale(2)", 0, 0, 200, 100)]
    [InlineData("scale(2,3)", 0, 0, 200, 150)]
    [InlineData("scale(-1,1)", -100, 0, 0, 50)]
    [InlineData("rotate(90)", -50, 0, 0, 100)]
    [InlineData("rotate(90 100 0)", 50, -100, 100, 0)]
    [InlineData("skewX(45)", 0, 0, 150, 50)]
    [InlineData("skewY(45)", 0, 0, 100, 150)]
    [InlineData("matrix(1 0 0 2 5 6)", 5, 6, 105, 106)]
    [InlineData("translate(10,0) scale(2)", 10, 0, 210, 100)]
    [InlineData("scale(2) translate(10,0)", 20, 0, 220, 100)]
    [InlineData("translate(1-2)scale(.5.5)", 1, -2, 51, 23)]
    public void Transforms_move_as_the_standard_says(string transform, double x0, double y0, double x1, double y1)
    {
        foreach (var svg in (string[])[$"<rect transform='{transform}' width='100' height='50'/>", $"<g transform='{transform}'><g><rect width='100' height='50'/></g></g>"])
        {
            var box = Draw.Svg(svg).Only().Bounds;
            foreach (var (ours, theirs) in ((double, double)[])[(box.X0, x0), (-box.Y1, y0), (box.X1, x1), (-box.Y0, y1)]) Assert.Equal(theirs, ours, 1e-9);
        }
    }

    // Units: CSS, 1 in = 25.4 mm = 96 px = 72 pt = 6 pc (the table "CSS/SVG units" of the reference values, from the W3C's coords-units figures).
    [Theory]
    [InlineData("width='100mm' height='50mm' viewBox='0 0 100 50'", 10)]
    [InlineData("width='10cm' height='5cm' viewBox='0 0 100 50'", 10)]
    [InlineData("width='2in' height='1in' viewBox='0 0 2 1'", 254)]
    [InlineData("width='144pt' height='72pt' viewBox='0 0 2 1'", 254)]
    [InlineData("width='12pc' height='6pc' viewBox='0 0 2 1'", 254)]
    [InlineData("width='192' height='96' viewBox='0 0 2 1'", 254)]
    [InlineData("width='192px' height='96px'", 254.0 / 96)]
    [InlineData("width='200mm' height='50mm' viewBox='0 0 100 50'", 10)]
    [InlineData("width='200mm' height='50mm' viewBox='0 0 100 50' preserveAspectRatio='xMidYMid slice'", 20)]
    [InlineData("width='200mm' viewBox='0 0 100 50'", 20)]
    public void A_page_says_how_large_a_unit_is(string page, double tenUnits)
    {
        var box = DrawingReader.Read(Draw.File("a.svg", $"<svg {page}><rect width='10' height='10'/></svg>"), new()).Only().Bounds;
        Assert.Equal(tenUnits, box.Width, 1e-9);
        Assert.Equal(tenUnits, box.Height, 1e-9);
    }

    [Fact]
    public void A_page_that_stretches_stretches_both_ways_apart()
    {
        var box = DrawingReader.Read(Draw.File("a.svg", "<svg width='200mm' height='50mm' viewBox='0 0 100 50' preserveAspectRatio='none'><rect width='10' height='10'/></svg>"), new()).Only().Bounds;
        Assert.Equal((20, 10), (box.Width, box.Height));
    }

    [Theory, InlineData("viewBox='0 0 100 100'"), InlineData("width='100%' height='100%' viewBox='0 0 100 100'"), InlineData("")]
    public void Without_a_size_the_unit_is_asked_for_and_never_guessed(string page)
    {
        var file = Draw.File("a.svg", $"<svg {page}><rect width='10' height='10'/></svg>");
        DrawingReader.Read(file, new()).Mistake("does not say how large");
        Assert.Equal(254, DrawingReader.Read(file, new(Unit: 25.4)).Only().Bounds.Width, 1e-9);
    }

    [Fact]
    public void A_unit_that_contradicts_the_page_is_refused() => Draw.Svg("<rect width='10' height='10'/>", new(Unit: 25.4)).Mistake("instrument file says");

    [Fact]
    public void Pixels_are_told_about() => Assert.Contains(DrawingReader.Read(Draw.File("a.svg", "<svg width='10' height='10'><rect width='9' height='9'/></svg>"), new()).Good.Notes, n => n.Said.Contains("96 to the inch", StringComparison.Ordinal));

    [Theory]
    [InlineData("<rect display='none' width='5' height='5'/>")]
    [InlineData("<g style='fill:red; display : none'><rect width='5' height='5'/></g>")]
    [InlineData("<g visibility='hidden'><rect width='5' height='5'/></g>")]
    [InlineData("<defs><rect width='5' height='5'/></defs>")]
    [InlineData("<clipPath><rect width='5' height='5'/></clipPath>")]
    [InlineData("<foreign xmlns='urn:else'><rect width='5' height='5'/></foreign>")]
    [InlineData("<rect width='5' height='0'/>")]
    public void What_is_not_drawn_is_not_read(string unseen) => Draw.Svg(unseen + "<circle r='40'/>").Only().HasArea(Math.PI * 1600);

    [Fact]
    public void A_shown_shape_in_a_hidden_group_is_seen() => Draw.Svg("<g visibility='hidden'><circle visibility='visible' r='40'/></g>").Only().HasArea(Math.PI * 1600);

    [Fact]
    public void Words_and_pictures_are_left_out_and_told_once()
    {
        var notes = Draw.Svg("<text>a</text><text>b</text><image/><style>x</style><circle r='40'/>").Good.Notes;
        Assert.Equal(["<text> was left out (2 times)", "<image> was left out", "<style> was left out"], notes.Select(n => n.Said));
    }

    [Fact]
    public void A_copy_is_drawn_where_it_is_used()
    {
        var box = Draw.Svg("<defs><g id='g'><rect id='r' width='10' height='20'/></g></defs><use href='#g' x='100' y='200' transform='scale(2)'/>").Only().Bounds;
        Assert.Equal((200.0, 220.0, -440.0, -400.0), (box.X0, box.X1, box.Y0, box.Y1));
    }

    [Fact]
    public void An_older_way_of_naming_the_copy_is_understood() =>
        Draw.Svg("<defs><circle id='c' r='40'/></defs><use xmlns:l='http://www.w3.org/1999/xlink' l:href='#c'/>").Only().HasArea(Math.PI * 1600);

    [Theory]
    [InlineData("<use href='#none'/>", "names")]
    [InlineData("<use href='other.svg#a'/>", "names")]
    [InlineData("<symbol id='s'/><use href='#s'/>", "page of its own")]
    [InlineData("<svg/>", "is not read")]
    [InlineData("<circle r='4' clip-path='url(#a)'/>", "cut off")]
    [InlineData("<circle r='4' style='transform:scale(2)'/>", "moved by its style")]
    [InlineData("<circle r='4' transform='scale(0)'/>", "transform of")]
    [InlineData("<circle r='4' transform='turn(4)'/>", "transform of")]
    [InlineData("<circle r='4' transform='scale(1,2,3'/>", "transform of")]
    [InlineData("<circle r='50%'/>", "r of <circle>")]
    [InlineData("<circle r='-4'/>", "below 0")]
    [InlineData("<polygon points='0 0 1'/>", "break off")]
    [InlineData("<circle r='4e7'/>", "reaches to")]
    public void What_cannot_be_drawn_truly_is_refused(string shape, string says) => Draw.Svg(shape).Mistake(says);

    [Fact]
    public void One_shape_is_chosen_by_its_id_or_its_group_s()
    {
        const string shapes = "<g id='front'><circle id='a' r='40'/></g><g id='back'><rect id='b' width='10' height='10'/><circle clip-path='url(#x)' r='3'/></g>";
        Draw.Svg(shapes, new(Pick: "a")).Only().HasArea(Math.PI * 1600);
        Draw.Svg(shapes, new(Pick: "front")).Only().HasArea(Math.PI * 1600);
        Draw.Svg(shapes, new(Pick: "b")).Only().HasArea(100);
        Assert.Contains("front, a, back, b", Draw.Svg(shapes, new(Pick: "c")).Mistake("has the id \"c\"").Allowed, StringComparison.Ordinal);
        Assert.Equal("a", Draw.Svg(shapes, new(Pick: "a")).Good.Loops[0].Name);
    }
}
