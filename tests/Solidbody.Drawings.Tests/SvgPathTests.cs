using Solidbody.Geometry;

namespace Solidbody.Drawings.Tests;

public class SvgPathTests
{
    // Path data of SVG 1.1 (second edition), section 8.3, figures arcs01, cubic01 and quad01, from memory; areas in closed form.
    public static TheoryData<string, double, string> Figures => new()
    {
        { "M300,200 h-150 a150,150 0 1,0 150,-150 z", 0.75 * Math.PI * 150 * 150, "arcs01: three quarters of a disc" },
        { "M275,175 v-150 a150,150 0 0,0 -150,150 z", 0.25 * Math.PI * 150 * 150, "arcs01: a quarter of a disc" },
        { "M200,300 Q400,50 600,300 Z", 2.0 / 3 * (400 * 250 / 2.0), "quad01: a parabola's segment, Archimedes" },
        { "M100,200 C100,100 250,100 250,200 Z", 0.6 * 150 * 100, "cubic01: y = 300 t (1 − t), x = 150 t² (3 − 2 t): the integral of y dx is 3/5 of 150 · 100" },
        { "M0,0 H100 V50 H0 Z", 5000, "a rectangle" },
    };

    [Theory, MemberData(nameof(Figures))]
    public void Areas_are_the_figures(string d, double area, string source)
    {
        Assert.NotEmpty(source);
        Draw.Path(d).Only().HasArea(area);
    }

    [Theory] // Relative letters, repeats without a letter, compact numbers, smooth curves: all one shape each.
    [InlineData("M10 20 L110 20 L110 70 L10 70 Z", "m10,20 100,0 0,50-100,0z")]
    [InlineData("M10 20 L110 20 L110 70 L10 70 Z", "M10 20 110 20 110 70 10 70Z")]
    [InlineData("M10 20 L110 20 L110 70 L10 70 Z", "M10 20h100v50H10z")]
    [InlineData("M0.5 0.5 L100.5 0.5 L100.5 50.25 Z", "M.5.5 100.5.5 100.5,50.25z")]
    [InlineData("M0 0 L100 0 L100 50 Z", "M0 0L1e2 0 1.0E+2 5e1Z")]
    [InlineData("M0 0 C0 40 40 40 40 0 C40 -40 80 -40 80 0 L80 100 L0 100 Z", "M0 0C0 40 40 40 40 0S80-40 80 0V100H0Z")]
    [InlineData("M0 0 C0 40 40 40 40 0 C40 -40 80 -40 80 0 L80 100 L0 100 Z", "M0 0c0 40 40 40 40 0s40-40 40 0v100h-80z")]
    [InlineData("M0 0 Q20 40 40 0 Q60 -40 80 0 L80 100 L0 100 Z", "M0 0Q20 40 40 0T80 0V100H0Z")]
    [InlineData("M0 0 Q20 40 40 0 Q60 -40 80 0 L80 100 L0 100 Z", "M0 0q20 40 40 0t40 0v100h-80z")]
    [InlineData("M0 0 A50 50 0 0 1 100 0 L100 100 L0 100 Z", "M0 0a50 50 0 01100 0v100h-100z")]
    public void Two_ways_of_writing_are_one_shape(string plain, string other)
    {
        var (a, b) = (Draw.Path(plain).Only(), Draw.Path(other).Only());
        Assert.Equal(a.Points.Length, b.Points.Length);
        Assert.All(a.Points.Zip(b.Points), pair => Assert.InRange(pair.First.DistanceTo(pair.Second), 0, 1e-9));
    }

    // SVG 1.1 appendix F.6.6: radii too small are grown until they just reach; a radius of 0 is a straight line; a negative one is its size.
    [Fact]
    public void Small_radii_grow_and_none_is_a_line()
    {
        Draw.Path("M0 0 A10 10 0 0 1 100 0 Z").Only().HasArea(Math.PI * 50 * 50 / 2);
        Draw.Path("M0 0 A-50 50 0 0 1 100 0 Z").Only().HasArea(Math.PI * 50 * 50 / 2);
        Draw.Path("M0 0 A0 50 0 0 1 100 0 L50 80 Z").Only().HasArea(4000);
    }

    // A whole ellipse of half-axes 60 and 30 turned by 30 degrees, from its ends: area π a b whatever its turn; both large and small arcs, both ways.
    [Theory, InlineData(0, 0), InlineData(0, 1), InlineData(1, 0), InlineData(1, 1)]
    public void An_ellipse_of_two_arcs_is_whole(int large, int sweep)
    {
        var (x, y) = (60 * Math.Cos(Math.PI / 6), 60 * Math.Sin(Math.PI / 6));
        var loop = Draw.Path(Draw.Say($"M{200 - x:R} {200 - y:R} A60 30 30 {large} {sweep} {200 + x:R} {200 + y:R} A60 30 30 {large} {sweep} {200 - x:R} {200 - y:R} Z")).Only();
        loop.HasArea(Math.PI * 60 * 30);
        Assert.All(loop.Points, p => Assert.Equal(1, Ellipse(p.X - 200, -p.Y - 200, Math.PI / 6, 60, 30), 1e-6));
    }

    private static double Ellipse(double x, double y, double turn, double a, double b)
    {
        var p = new Point2(x, y).Turned(-turn);
        return p.X * p.X / (a * a) + p.Y * p.Y / (b * b);
    }

    // Outside reader: librsvg 2.54.7 with cairo drew the same shape, 20 pixels to the unit; its coverage summed up over 400, and its first and last
    // half-covered columns and rows. A disc of radius 100 came out 0.025 % too large the same way. Pixels are 0.05 wide.
    [Fact]
    public void An_outside_reader_finds_the_same_area_and_place()
    {
        const string shape = "<g transform=\"translate(200 180) rotate(17)\"><path transform=\"skewX(12) scale(1.1 .9)\" d=\"M-120-60C-90-130 10-110 30-70S110-90 130-20q30 60-20 90t-90 10A70 40 25 0 1-90 90a60 90-15 01-30-150z\"/></g>";
        var loop = Draw.Svg(shape).Only();
        Assert.InRange(loop.SignedArea / 44445.2, 0.9990, 1.0003);
        var box = loop.Bounds;
        foreach (var (ours, theirs) in ((double, double)[])[(box.X0, 57.0), (box.X1, 347.1), (-box.Y1, 62.65), (-box.Y0, 289.45)]) Assert.Equal(theirs, ours, 0.08);
    }

    [Theory]
    [InlineData("L10 10", "character 2")]
    [InlineData("M10", "breaks off")]
    [InlineData("M0 0 L10 x", "breaks off")]
    [InlineData("M0 0 L10 NaN", "breaks off")]
    [InlineData("M0 0 L1e999 0", "breaks off")]
    [InlineData("M0 0 A10 10 0 2 1 5 5", "breaks off")]
    [InlineData("M0 0 L10 0 Z 5 5", "breaks off")]
    [InlineData("M0 0 K10 0", "breaks off")]
    public void A_path_that_is_none_is_refused_with_the_character(string d, string says) => Draw.Path(d).Mistake(says);

    [Fact]
    public void A_path_s_mistake_tells_line_and_column()
    {
        var mistake = Draw.Svg("  <path d=\"M0 0 L10\"/>").Mistake("breaks off");
        Assert.Equal((2, 4), (mistake.Line, mistake.Column));
    }

    [Fact]
    public void A_path_left_open_is_refused_and_one_that_comes_home_is_closed()
    {
        Draw.Path("M0 0 L100 0 L100 50").Mistake("ends in the open");
        Draw.Path("M0 0 L100 0 L100 50 L0 0").Only().HasArea(2500);
    }

    [Fact]
    public void Y_runs_upward_and_every_loop_runs_counter_clockwise()
    {
        var loop = Draw.Path("M0 10 L100 10 L100 60 Z").Only();
        Assert.Equal((-60.0, -10.0), (loop.Bounds.Y0, loop.Bounds.Y1));
        Assert.True(loop.SignedArea > 0);
    }

    [Fact]
    public void Chords_keep_within_the_tolerance()
    {
        // A cubic quarter of a circle strays from it by 2.7e-4 of the radius (0.0273 mm here): the test is against the cubic itself.
        var loop = Draw.Path("M100 0 C100 55.2285 55.2285 100 0 100 L0 0 Z").Only();
        for (var i = 0; i < loop.Points.Length; i++)
        {
            var middle = 0.5 * (loop.Points[i] + loop.Points[(i + 1) % loop.Points.Length]);
            if (middle.X < 1 || middle.Y > -1) continue;
            var nearest = Enumerable.Range(0, 20001).Min(k => Cubic(k / 20000.0).DistanceTo(new(middle.X, -middle.Y)));
            Assert.InRange(nearest, 0, Tolerances.Flattening + 1e-6);
        }
    }

    private static Point2 Cubic(double t)
    {
        var u = 1 - t;
        return u * u * u * new Point2(100, 0) + 3 * u * u * t * new Point2(100, 55.2285) + 3 * u * t * t * new Point2(55.2285, 100) + t * t * t * new Point2(0, 100);
    }
}
