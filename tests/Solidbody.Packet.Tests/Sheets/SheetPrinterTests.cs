using System.Collections.Concurrent;
using Solidbody.Geometry;
using Solidbody.Packet.Sheets;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Solidbody.Packet.Tests.Sheets;

public class SheetPrinterTests
{
    private const double Point = 25.4 / 72;

    /// <summary>Two made by hand, one longer than a page, and what the planner lays out for the examples.</summary>
    public static TheoryData<string> All => new(["neck", "body", "long", .. Planned]);

    private static IEnumerable<string> Planned => new[] { "six", "left", "bass" }.SelectMany(i => Enumerable.Range(1, 5).Select(n => $"{i}-{n}"));

    private static SheetInput Scene(string name) => name switch
    {
        "neck" => Scenes.Neck(),
        "body" => Scenes.Body(),
        "long" => Long(Scenes.Neck()),
        _ => Examples.Sheet(name),
    };

    /// <summary>More programs, checks and notes than one page holds.</summary>
    private static SheetInput Long(SheetInput input) => input with
    {
        SetUp = input.SetUp with
        {
            Programs = [.. Enumerable.Range(0, 5).SelectMany(_ => input.SetUp.Programs)],
            Checks = [.. Enumerable.Range(0, 6).SelectMany(_ => input.SetUp.Checks)],
            Before = [.. Enumerable.Range(0, 20).SelectMany(_ => input.SetUp.Before)],
        },
    };

    private static readonly ConcurrentDictionary<string, byte[]> Printed = [];

    private static PdfDocument Read(string name) => PdfDocument.Open(Printed.GetOrAdd(name, n =>
    {
        var pdf = Scenes.Print(Scene(n));
        Look.At($"sheet-{n}.pdf", pdf);
        return pdf;
    }));

    [Theory, MemberData(nameof(All))]
    public void Every_page_is_A4_upright(string name)
    {
        using var pdf = Read(name);
        Assert.All(pdf.GetPages(), page =>
        {
            Assert.Equal(210, page.Width * Point, 0.01);   // ISO 216, A4: 210 × 297 mm
            Assert.Equal(297, page.Height * Point, 0.01);
        });
    }

    [Theory, MemberData(nameof(All))]
    public void Every_page_says_what_it_defers_to(string name)
    {
        using var pdf = Read(name);
        Assert.All(pdf.GetPages(), page => Assert.Contains("defers to your machine's manual, local codes and licensed practice", page.Text, StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(All))]
    public void The_check_line_is_50_mm(string name)
    {
        using var pdf = Read(name);
        Assert.All(pdf.GetPages(), page => Assert.Contains(Boxes(page), b => b.Height < 0.01 && Math.Abs(b.Width - 50) <= 0.01 && Math.Abs(b.X0 - 24) < 0.01));
    }

    [Fact]
    public void The_bed_is_drawn_one_to_five()
    {
        using var pdf = Read("body");
        var page = pdf.GetPage(1);
        Assert.Contains(Boxes(page), b => Is(b, 624 / 5.0, 624 / 5.0));   // bed
        Assert.Contains(Boxes(page), b => Is(b, 600 / 5.0, 600 / 5.0));   // travel
        Assert.Contains(Boxes(page), b => Is(b, 440 / 5.0, 340 / 5.0));   // blank
        Assert.Contains(Boxes(page), b => Is(b, 400 / 5.0, 310 / 5.0));   // part
        Assert.Contains("1:5", page.Text, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(All))]
    public void Nothing_is_set_smaller_than_7_points(string name)
    {
        using var pdf = Read(name);
        Assert.All(pdf.GetPages().SelectMany(p => p.Letters), l => Assert.True(l.PointSize >= 6.99, $"“{l.Value}” is {l.PointSize} pt."));
    }

    [Theory, MemberData(nameof(All))]
    public void No_letters_lie_over_one_another(string name)
    {
        using var pdf = Read(name);
        foreach (var page in pdf.GetPages())
        {
            var letters = page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)).Select(l => (l.Value, Box: Box(l))).ToList();
            for (var i = 0; i < letters.Count; i++)
                for (var k = i + 1; k < letters.Count; k++)
                    if (Overlap(letters[i].Box, letters[k].Box))
                        Assert.Fail($"“{letters[i].Value}” at {letters[i].Box} lies over “{letters[k].Value}” at {letters[k].Box}.");
        }
    }

    [Theory, MemberData(nameof(All))]
    public void All_text_lies_inside_the_frame(string name)
    {
        using var pdf = Read(name);
        Assert.All(pdf.GetPages().SelectMany(p => p.Letters), l =>
        {
            var box = Box(l);
            Assert.True(box.X0 > 20 && box.X1 < 200 && box.Y0 > 10 && box.Y1 < 287, $"“{l.Value}” stands at {box}.");
        });
    }

    [Theory, MemberData(nameof(All))]
    public void Only_our_own_fonts_are_used(string name)
    {
        using var pdf = Read(name);
        var fonts = pdf.GetPages().SelectMany(p => p.Letters).Select(l => l.FontName!).Distinct();
        Assert.All(fonts, f => Assert.Matches("^[A-Z]{6}\\+Sheet", f));   // six letters and a plus: an embedded subset (ISO 32000-1, 9.6.4)
    }

    [Fact]
    public void A_long_sheet_goes_on_and_loses_nothing()
    {
        using var pdf = Read("long");
        var text = string.Concat(pdf.GetPages().Select(p => p.Text));
        Assert.True(pdf.NumberOfPages > 1);
        Assert.Equal(5, Count(text, "volute" + "volute, tapered"));
        Assert.Equal(6, Count(text, "Second dowel to work zero"));
        Assert.Equal(20, Count(text, "four screws back"));
    }

    [Fact]
    public void A_short_sheet_takes_one_page()
    {
        using var body = Read("body");
        Assert.Equal(1, body.NumberOfPages);
    }

    [Fact]
    public void The_neck_sheet_says_what_must_be_said()
    {
        using var pdf = Read("neck");
        var text = pdf.GetPage(1).Text;
        foreach (var words in new[] { "Set-up 2 of 5", "64 min", "back up", "laid at 45° to X", "702.0 from work zero", "4 tabs, 8 × 3 mm", "Overridden by you", "will sand", "3 of 5", "proved, b2 9e 55", "front of the machine, you stand here", "18\u2009000" })
            Assert.Contains(words, text, StringComparison.Ordinal);
    }

    [Theory, InlineData("neck"), InlineData("six-4")]
    public void Two_prints_of_one_sheet_show_the_same(string name)
    {
        using var first = PdfDocument.Open(Scenes.Print(Scene(name)));
        using var second = PdfDocument.Open(Scenes.Print(Scene(name)));
        Assert.Equal(Shown(first), Shown(second));
    }

    /// <summary>Every letter and every line with its place; a font's subset tag is drawn by lot and left out.</summary>
    private static List<string> Shown(PdfDocument pdf) =>
    [
        .. pdf.GetPages().SelectMany(page => page.Letters.Select(l => $"{l.Value} {l.FontName![7..]} {l.PointSize} {Box(l)}")
            .Concat(Boxes(page).Select(b => $"{b}"))),
    ];

    [Fact]
    public void A_section_shows_the_wood_as_the_set_up_leaves_it()
    {
        using var front = Read("six-1");
        using var back = Read("six-2");
        Assert.Contains("After this set-up", front.GetPage(1).Text, StringComparison.Ordinal);
        Assert.Contains("Finished part", back.GetPage(1).Text, StringComparison.Ordinal);
    }

    [Theory, InlineData("six-1", "neck end"), InlineData("six-4", "headstock end"), InlineData("six-5", "nut end"), InlineData("left-4", "headstock end")]
    public void A_planned_sheet_says_how_the_blank_lies_and_where_zero_is(string name, string end)
    {
        using var pdf = Read(name);
        var setUp = Scene(name).SetUp;
        var text = pdf.GetPage(1).Text;
        Assert.Contains(end, text, StringComparison.Ordinal);
        Assert.Contains(setUp.Placement.Up == Side.Front ? "front up" : "back up", text, StringComparison.Ordinal);
        Assert.Contains($"{Math.Round(-setUp.Bed.X0)} from left, {Math.Round(-setUp.Bed.Y0)} from near edge", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Not drawn", text, StringComparison.Ordinal);
    }

    private static int Count(string text, string part) => (text.Length - text.Replace(part, "", StringComparison.Ordinal).Length) / part.Length;

    private static bool Is(Box2 box, double width, double height) => Math.Abs(box.Width - width) < 0.01 && Math.Abs(box.Height - height) < 0.01;

    /// <summary>Boxes of everything drawn, paper mm, y down.</summary>
    private static List<Box2> Boxes(Page page) =>
        [.. page.Paths.Select(p => p.GetBoundingRectangle()).Where(r => r.HasValue)
            .Select(r => new Box2(r!.Value.Left * Point, 297 - r.Value.Top * Point, r.Value.Right * Point, 297 - r.Value.Bottom * Point))];

    private static Box2 Box(Letter letter)
    {
        var r = letter.BoundingBox;
        var (x0, x1) = (Math.Min(Math.Min(r.BottomLeft.X, r.BottomRight.X), Math.Min(r.TopLeft.X, r.TopRight.X)), Math.Max(Math.Max(r.BottomLeft.X, r.BottomRight.X), Math.Max(r.TopLeft.X, r.TopRight.X)));
        var (y0, y1) = (Math.Min(Math.Min(r.BottomLeft.Y, r.BottomRight.Y), Math.Min(r.TopLeft.Y, r.TopRight.Y)), Math.Max(Math.Max(r.BottomLeft.Y, r.BottomRight.Y), Math.Max(r.TopLeft.Y, r.TopRight.Y)));
        return new(x0 * Point, 297 - y1 * Point, x1 * Point, 297 - y0 * Point);
    }

    /// <summary>Whether two letters share more than a hair: neighbours in a word may touch by their overhang.</summary>
    private static bool Overlap(Box2 a, Box2 b) =>
        Math.Min(a.X1, b.X1) - Math.Max(a.X0, b.X0) > 0.25 && Math.Min(a.Y1, b.Y1) - Math.Max(a.Y0, b.Y0) > 0.25;
}
