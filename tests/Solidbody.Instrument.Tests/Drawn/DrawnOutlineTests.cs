using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Tests.Drawn;

public class DrawnOutlineTests
{
    // The drawing's own figures, worked out with numpy from its control points (200 points a span): bounds x 309.809 to 767.809, y -165 to 169, area 106081.2 mm².
    // The heel's end is 635 (1 - 2^(-22/12)) + 6 = 462.809, its shoulder line 75 before that: 387.809, where the drawing has it.
    [Theory]
    [InlineData(Shelf.Svg)]
    [InlineData("drawing = \"drawn-r12.dxf\"\npick = \"body\"\nunit = \"mm\"\nplace = \"as-drawn\"\n")]
    [InlineData("drawing = \"drawn-r12.dxf\"\npick = \"body\"\nunit = \"mm\"\ncentre_line = 165\n")]
    [InlineData("drawing = \"drawn-inches.dxf\"\nplace = \"as-drawn\"\n")]
    public void The_same_body_comes_out_of_every_kind_of_drawing(string outline)
    {
        var loop = Shelf.Drawn(outline).Loop;
        var box = loop.Bounds;
        foreach (var (ours, theirs) in ((double, double)[])[(box.X0, 309.809), (box.X1, 767.809), (box.Y0, -165), (box.Y1, 169)]) Assert.Equal(theirs, ours, 0.012);
        Assert.InRange(loop.SignedArea / 106081.2, 0.99995, 1.00001);
    }

    [Fact]
    public void Arcs_and_spline_and_cubics_lie_on_one_another()
    {
        var spline = new Region(Shelf.Drawn("drawing = \"drawn-inches.dxf\"\nplace = \"as-drawn\"\n").Loop);
        foreach (var outline in (string[])[Shelf.Svg, "drawing = \"drawn-r12.dxf\"\npick = \"body\"\nunit = \"mm\"\nplace = \"as-drawn\"\n"])
            Assert.All(Shelf.Drawn(outline).Loop.Points, p => Assert.InRange(Math.Abs(spline.SignedDistance(p)), 0, 2.5 * Tolerances.Flattening));
    }

    [Fact]
    public void A_drawing_made_from_behind_is_turned_over()
    {
        var (plain, mirrored) = (Shelf.Drawn(Shelf.Svg), Shelf.Drawn(Shelf.Svg.Replace("165", "169", StringComparison.Ordinal) + "mirrored = true\n"));
        Assert.Equal(plain.Loop.Bounds.Y1, -mirrored.Loop.Bounds.Y0, 1e-6);
        Assert.True(mirrored.Loop.SignedArea > 0);
    }

    [Fact]
    public void The_body_is_the_drawing_and_its_hardware_finds_its_places()
    {
        var definition = Shelf.Read(Shelf.Svg).Good;
        var design = Designer.Design(definition);
        Assert.Empty(design.Findings.Where(f => f.Severity == Severity.Stops));
        var body = design.Part("body");
        Assert.Equal(definition.Body.Drawn!.Loop, body.Outline.Loops[0]);
        // Tabs stand on the flanks: on the outline, two a side, the waist's nearer the neck and the centre line.
        Assert.Equal(4, body.TabPlaces.Length);
        Assert.All(body.TabPlaces, p => Assert.InRange(Math.Abs(body.Outline.SignedDistance(p)), 0, 0.01));
        foreach (var side in (int[])[1, -1])
        {
            var own = body.TabPlaces.Where(p => side * p.Y > 0).OrderBy(p => p.X).ToList();
            Assert.True(own.Count == 2 && Math.Abs(own[0].Y) < Math.Abs(own[1].Y) - 20, string.Join(" ", own));
        }
        // The strap's front button is on the bass horn's tip, which the drawing puts furthest forward.
        Assert.Equal(309.8, definition.Body.StrapButtons[0].X, 0.1);
        Assert.True(definition.Body.StrapButtons[0].Y < 0);
    }

    [Fact]
    public void A_left_handed_instrument_mirrors_the_drawing()
    {
        var (right, left) = (Designer.Design(Shelf.Read(Shelf.Svg).Good), Designer.Design(Shelf.Read(Shelf.Svg, rest: "hand = \"left\"").Good));
        Assert.Equal(right.Part("body").Bounds.Y1, -left.Part("body").Bounds.Y0, 1e-9);
    }

    [Fact]
    public void A_drawing_that_misses_the_neck_stops()
    {
        var finding = Fires.OnlyWhenSpoilt("DRAWING-03", Shelf.Read(Shelf.Svg).Good, Shelf.Read(Shelf.Svg + "foremost = 290\n").Good);
        Assert.Equal(Severity.Stops, finding.Severity);
        Assert.Contains("in front of", finding.Figure, StringComparison.Ordinal);
        Fires.OnlyWhenSpoilt("DRAWING-03", Shelf.Read(Shelf.Svg).Good, Shelf.Read(Shelf.Svg + "foremost = 330\n").Good);
        Fires.OnlyWhenSpoilt("DRAWING-03", Shelf.Read(Shelf.Svg).Good, Shelf.Read(Shelf.Svg.Replace("165", "100", StringComparison.Ordinal)).Good);
    }

    /// <summary>A body of four lines, its shoulder level, the last corner open by a gap.</summary>
    private static Shelf Box(double gap) => new Shelf().With("box.svg", FormattableString.Invariant(
        $"<svg width=\"500mm\" height=\"500mm\" viewBox=\"0 0 500 500\"><text>x</text><path d=\"M0 0V330\"/><path d=\"M0 330H440\"/><path d=\"M440 330V0\"/><path d=\"M440 0H{gap}\"/></svg>"));

    [Fact]
    public void What_was_mended_is_told_with_its_size()
    {
        const string outline = "drawing = \"box.svg\"\ngap = 0.3\n";
        var finding = Fires.OnlyWhenSpoilt("DRAWING-01", Shelf.Read(outline, Box(0)).Good, Shelf.Read(outline, Box(0.25)).Good);
        Assert.Equal(Severity.Notes, finding.Severity);
        Assert.Contains("0.25 mm", finding.Figure, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_read_is_told() =>
        Fires.OnlyWhenSpoilt("DRAWING-02", Shelf.Read(Shelf.Svg).Good, Shelf.Read("drawing = \"box.svg\"\n", Box(0)).Good);
}
