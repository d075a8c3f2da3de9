using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Solidbody.Geometry;
using Solidbody.Packet.Pictures;

namespace Solidbody.Packet.Tests.Pictures;

public class PictureTests
{
    private const int MostBytes = 1_000_000;

    [Fact]
    public void The_deviation_scale_ends_where_the_published_map_ends()
    {
        // F. Crameri, Scientific colour maps, “vik”: first, middle and last of the eleven stops.
        Assert.Equal("#001261", Palette.Deviation(1).Hex);
        Assert.Equal("#ece5e0", Palette.Deviation(0).Hex);
        Assert.Equal("#590008", Palette.Deviation(-1).Hex);
        Assert.Equal("#590008", Palette.Deviation(-7).Hex);
    }

    [Fact]
    public void Parts_are_drawn_in_true_millimetres()
    {
        foreach (var part in new[] { Scenes.Neck().Part, Scenes.Body().Part })
        {
            var box = ViewBox(Read($"part-{part.Name}.svg", PartPicture.Svg(part, "School six")));
            Assert.Equal(part.Outline.Bounds.Width + 2 * 2 + 2 * 12, box[2], 0.01);   // 2 mm of air, 12 mm of margin a side
        }
    }

    [Fact]
    public void A_deviation_map_points_at_its_worst_places_and_tells_the_share()
    {
        var part = Scenes.Body().Part;
        var grid = Grid.Over(part.Outline.Bounds, 1);
        var map = new float[grid.Count];
        for (var i = 0; i < map.Length; i++)
            map[i] = part.Outline.Contains(grid.Centre(i % grid.Columns, i / grid.Columns)) ? 0.01f : float.NaN;
        void Spot(double x, double y, float value) => map[(int)(y - grid.Y0) * grid.Columns + (int)(x - grid.X0)] = value;
        Spot(500, 50, -0.14f);
        Spot(700, -60, 0.21f);
        var svg = Read("deviation-body.svg", DeviationPicture.Svg(part, Side.Front, grid, map, 0.05, 0.1));
        Assert.Contains("−0.14", Texts(svg));
        Assert.Contains("+0.21", Texts(svg));
        Assert.Contains("−0.05", Texts(svg));
        Assert.Contains("+0.10", Texts(svg));
        Assert.Contains(Texts(svg), t => t.Contains("99.9 % within both limits", StringComparison.Ordinal));
        Assert.Equal(400 + 2 * 2 + 2 * 12, ViewBox(svg)[2], 0.01);
    }

    [Fact]
    public void Level_lines_of_a_slope_stand_two_millimetres_of_height_apart()
    {
        // Closed form: a face that falls 1 in 10 is 1, 3, 5 … mm below its highest at x = 10, 30, 50 … mm from its high end.
        var part = Scenes.Body().Part with { Outline = new(Shapes.Rectangle(new(50, 0), 100, 40)), Front = new Slope(), Pockets = [], Holes = [], Bounds = new(0, -20, -44.5, 100, 20, 0) };
        var lines = LevelLines.Of(part, Side.Front);
        Assert.NotEmpty(lines);
        var places = lines.SelectMany(l => new[] { l.A.X, l.B.X }).Select(x => Math.Round((x - 10) / 20)).Distinct().Order();
        Assert.Equal([0, 1, 2, 3, 4], places);
        Assert.All(lines.SelectMany(l => new[] { l.A.X, l.B.X }), x => Assert.Equal(10 + 20 * Math.Round((x - 10) / 20), x, 0.5));   // the highest is seen to half a cell
        Assert.Empty(LevelLines.Of(part, Side.Back));   // its back is level
    }

    private sealed record Slope : IHeight
    {
        public double Z(double x, double y) => -x / 10;
    }

    [Theory, InlineData(400), InlineData(120)]
    public void No_words_run_out_of_the_picture_even_in_the_widest_face(double length)
    {
        var part = Scenes.Body().Part with { Outline = new(Shapes.Rectangle(new(length / 2, 0), length, 60)), Pockets = [], Holes = [], Bounds = new(0, -30, -44.5, length, 30, 0) };
        var grid = Grid.Over(part.Outline.Bounds, 1);
        var svg = XDocument.Parse(DeviationPicture.Svg(part, Side.Front, grid, new float[grid.Count], 0.05, 0.07)).Root!;
        foreach (var text in svg.Descendants().Where(e => e.Name.LocalName == "text"))
        {
            double Number(string name) => double.Parse(text.Attribute(name)!.Value, CultureInfo.InvariantCulture);
            var room = Svg.WidestText(text.Value, Number("font-size"));
            var left = Number("x") - text.Attribute("text-anchor")!.Value switch { "start" => 0, "middle" => room / 2, _ => room };
            Assert.True(left >= 0 && left + room <= ViewBox(svg)[2], $"“{text.Value}” runs from {left} to {left + room} of {ViewBox(svg)[2]} mm.");
            Assert.True(Number("y") < ViewBox(svg)[3]);
        }
    }

    [Fact]
    public void A_worst_cell_survives_being_made_smaller()
    {
        var grid = new Grid(0, 0, 0.25, 400, 100);
        var map = new float[grid.Count];
        map[57 * 400 + 301] = -0.3f;
        var summary = DeviationSummary.Of(grid, map, 0.05, 0.1, 50);
        Assert.Equal(-0.3f, summary.Worst.Min());
        Assert.Equal(-0.3, Assert.Single(summary.Places).Value, 1e-6);
        Assert.Equal(1 - 1.0 / 40_000, summary.Within, 1e-12);
    }

    [Fact]
    public void From_the_back_the_part_is_turned_over_along_its_length()
    {
        var shown = new Box2(0, -50, 100, 50);
        Assert.Equal(new Point2(10, 20), new PictureView(Side.Front, shown, new(0, 0)).At(new(10, 30)));
        Assert.Equal(new Point2(10, 80), new PictureView(Side.Back, shown, new(0, 0)).At(new(10, 30)));
    }

    private static XElement Read(string name, string svg)
    {
        var bytes = Encoding.UTF8.GetBytes(svg);
        Look.At(name, bytes);
        Assert.True(bytes.Length < MostBytes, $"{name} has {bytes.Length} bytes.");
        return XDocument.Parse(svg).Root!;
    }

    private static List<string> Texts(XElement svg) => [.. svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value)];

    private static double[] ViewBox(XElement svg) => [.. svg.Attribute("viewBox")!.Value.Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
}
