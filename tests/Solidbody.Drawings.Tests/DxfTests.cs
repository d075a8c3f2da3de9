using System.Text;
using Solidbody.Geometry;

namespace Solidbody.Drawings.Tests;

public class DxfTests
{
    // Bulges on a chord of 10: the table "bulge" of the reference values (b = tan(θ/4), sagitta = b · chord / 2); area of a circle's segment R² (θ − sin θ) / 2.
    public static TheoryData<double, double, double, double> Bulges => new()
    {   // bulge, degrees, radius, sagitta
        { 0.4142135624, 90, 7.071067812, 2.071067812 },
        { 1, 180, 5, 5 },
        { 0.2679491924, 60, 10, 1.339745962 },
        { 0.1989123674, 45, 13.065629649, 0.994561837 },
        { 2.4142135624, 270, 7.071067812, 12.071067812 },
    };

    [Theory, MemberData(nameof(Bulges))]
    public void A_bulge_is_the_arc_of_its_table(double bulge, double degrees, double radius, double sagitta)
    {
        var theta = double.DegreesToRadians(degrees);
        var segment = radius * radius * (theta - Math.Sin(theta)) / 2;
        // Counter-clockwise below the chord from left to right: the arc lies to the right of the way, which is below.
        foreach (var text in (string[])[
            Draw.Say($"0 LWPOLYLINE 8 0 90 2 70 1 10 0 20 0 42 {bulge} 10 10 20 0"),
            Draw.Say($"0 POLYLINE 8 0 66 1 70 1 0 VERTEX 8 0 10 0 20 0 42 {bulge} 0 VERTEX 8 0 10 10 20 0 0 SEQEND")])
        {
            var loop = Draw.Dxf(text).Only();
            loop.HasArea(segment);
            Assert.Equal(-sagitta, loop.Bounds.Y0, Tolerances.Flattening);
            Assert.Equal(0, loop.Bounds.Y1, 1e-9);
        }
        Assert.Equal(sagitta, Draw.Dxf(Draw.Say($"0 LWPOLYLINE 90 2 70 1 10 0 20 0 42 {-bulge} 10 10 20 0")).Only().Bounds.Y1, Tolerances.Flattening);
    }

    [Theory, InlineData(1e-3), InlineData(1e-6), InlineData(1e-9), InlineData(1e-14), InlineData(1e-300)]
    public void An_arc_that_is_all_but_straight_is_drawn_however_far_its_centre(double bulge)
    {
        // On a chord of 1000 the sagitta is b · 500.
        var loop = Draw.Dxf(Draw.Say($"0 LWPOLYLINE 70 1 10 0 20 0 42 {bulge} 10 1000 20 0 10 1000 20 100 10 0 20 100")).Only();
        Assert.Equal(-500 * bulge, loop.Bounds.Y0, Tolerances.Flattening);
        var straight = Draw.Path(Draw.Say($"M0 0A{250 / bulge} {250 / bulge} 0 0 0 1000 0V-100H0Z")).Only();
        Assert.Equal(-500 * bulge, straight.Bounds.Y0, Tolerances.Flattening);
    }

    [Fact]
    public void Lines_and_arcs_are_chained_into_a_loop_in_whatever_order_and_direction()
    {
        // A stadium 100 long between centres and 40 wide: 4000 + π 20². The second line is drawn backward.
        const string entities = "0 LINE 8 a 10 0 20 -20 11 100 21 -20 0 ARC 8 a 10 0 20 0 40 20 50 90 51 270 0 LINE 8 a 10 0 20 20 11 100 21 20 0 ARC 8 a 10 100 20 0 40 20 50 -90 51 90";
        Draw.Dxf(entities).Only().HasArea(4000 + Math.PI * 400);
        // A unit is what the header says, or where it says none what the person does.
        Assert.Equal(140 * 10, DrawingReader.Read(Draw.File("a.dxf", Draw.DxfText(entities, "5")), new()).Only().Bounds.Width, 2 * Tolerances.Flattening);
        Assert.Equal(140 * 25.4, DrawingReader.Read(Draw.File("a.dxf", Draw.DxfText(entities, null)), new(Unit: 25.4)).Only().Bounds.Width, 2 * Tolerances.Flattening);
    }

    // A circle of radius 50 as the usual quadratic rational spline of nine controls, weights 1 and √½: exact. Source: L. Piegl and W. Tiller, The NURBS Book, section 7.5, from memory.
    [Fact]
    public void A_rational_spline_draws_a_true_circle()
    {
        var w = Math.Sqrt(0.5);
        (double X, double Y)[] controls = [(50, 0), (50, 50), (0, 50), (-50, 50), (-50, 0), (-50, -50), (0, -50), (50, -50), (50, 0)];
        var text = new StringBuilder("0 SPLINE 8 0 70 4 71 2 ");
        foreach (var k in (double[])[0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4]) text.Append(Draw.Say($"40 {k} "));
        for (var i = 0; i < 9; i++) text.Append(Draw.Say($"41 {(i % 2 == 0 ? 1 : w):R} "));
        foreach (var (x, y) in controls) text.Append(Draw.Say($"10 {x} 20 {y} 30 0 "));
        var loop = Draw.Dxf(text.ToString()).Only();
        loop.HasArea(Math.PI * 2500);
        Assert.All(loop.Points, p => Assert.Equal(50, p.Length, 1e-9));
    }

    // Oracle: /usr/bin/python3 -c "from scipy.interpolate import BSpline; import numpy as np; k=[0,0,0,0,1,2.5,3,5,5,5,5];
    // c=np.array([[0,0],[20,60],[60,80],[100,20],[140,90],[160,30],[200,0]],float); s=BSpline(k,c,3); print([s(t) for t in (.5,1,1.7,2.75,4.2)]);
    // t=np.linspace(0,5,2000001); p=s(t); d=s.derivative()(t); print(abs(np.trapz(p[:,0]*d[:,1]-p[:,1]*d[:,0],t)/2))" with scipy 1.10.1.
    [Fact]
    public void An_uneven_spline_passes_where_an_outside_library_says()
    {
        const string spline = "0 SPLINE 8 0 70 0 71 3 40 0 40 0 40 0 40 0 40 1 40 2.5 40 3 40 5 40 5 40 5 40 5 10 0 20 0 10 20 20 60 10 60 20 80 10 100 20 20 10 140 20 90 10 160 20 30 10 200 20 0 0 LINE 10 200 20 0 11 0 21 0";
        var loop = Draw.Dxf(spline).Only();
        var region = new Region(loop);
        foreach (var (x, y) in SplinePoints) Assert.InRange(Math.Abs(region.SignedDistance(new(x, y))), 0, Tolerances.Flattening);
        loop.HasArea(SplineArea);
    }

    private static readonly (double X, double Y)[] SplinePoints =
        [(27.366667, 56.1), (50.933333, 64.8), (80.588133, 48.464567), (117.422917, 50.692187), (161.7792, 39.2384)];
    private const double SplineArea = 8840.054167;

    [Fact]
    public void A_periodic_spline_closes_by_itself()
    {
        // Even knots, the first three controls repeated: what a cubic B-spline that closes looks like in a file. Its hull is a square of half-side 60.
        var text = new StringBuilder("0 SPLINE 70 11 71 3 ");
        for (var k = -3; k <= 7; k++) text.Append(Draw.Say($"40 {k} "));
        foreach (var (x, y) in ((int, int)[])[(60, 60), (-60, 60), (-60, -60), (60, -60), (60, 60), (-60, 60), (-60, -60)]) text.Append(Draw.Say($"10 {x} 20 {y} "));
        var loop = Draw.Dxf(text.ToString()).Only();
        // At a knot the curve is (a + 4 b + c) / 6 of three neighbouring controls: 40 from either axis, on the diagonal.
        Assert.InRange(new Region(loop).SignedDistance(new(40, 40)), -Tolerances.Flattening, Tolerances.Flattening);
    }

    [Fact]
    public void Ellipses_lie_as_their_axes_say()
    {
        Draw.Dxf("0 ELLIPSE 10 5 20 6 11 30 21 40 40 0.5 41 0 42 6.283185307179586").Only().HasArea(Math.PI * 50 * 25);
        // The upper half of an ellipse 50 by 25 and its axis; seen from below the same parameters run the other way.
        const string half = "0 ELLIPSE 10 0 20 0 11 50 21 0 40 0.5 41 0 42 3.141592653589793";
        Assert.Equal(25, Draw.Dxf(half + " 0 LINE 10 -50 20 0 11 50 21 0").Only().Bounds.Y1, Tolerances.Flattening);
        Assert.Equal(-25, Draw.Dxf(half + " 230 -1 0 LINE 10 -50 20 0 11 50 21 0").Only().Bounds.Y0, Tolerances.Flattening);
    }

    [Fact]
    public void What_is_seen_from_below_is_mirrored()
    {
        var box = Draw.Dxf("0 CIRCLE 10 100 20 7 40 10 230 -1").Only().Bounds;
        Assert.Equal((-110, -90), (Math.Round(box.X0, 6), Math.Round(box.X1, 6)));
        // A bulge keeps to the side its own plane says, which the mirror turns over.
        Assert.Equal(-10, Draw.Dxf("0 LWPOLYLINE 70 1 10 0 20 0 42 0.5 10 10 20 0 230 -1").Only().Bounds.X0, 1e-6);
    }

    [Fact]
    public void Blocks_are_drawn_where_they_are_inserted()
    {
        const string blocks = "0 BLOCK 2 disc 10 1 20 2 0 CIRCLE 8 0 10 1 20 2 40 10 0 ENDBLK 0 BLOCK 2 pair 10 0 20 0 0 INSERT 8 0 2 disc 10 50 20 0 0 ENDBLK";
        var drawing = Draw.Dxf("0 INSERT 8 front 2 pair 10 100 20 200 41 2 42 2 50 90", new(Pick: "front"), blocks);
        var box = drawing.Only().Bounds;
        Assert.Equal((80.0, 120.0, 280.0, 320.0), (Math.Round(box.X0, 2), Math.Round(box.X1, 2), Math.Round(box.Y0, 2), Math.Round(box.Y1, 2)));
        Assert.Equal("CIRCLE on layer front", drawing.Good.Loops[0].Name);
    }

    [Fact]
    public void Layers_that_are_off_or_frozen_are_not_read_and_one_can_be_chosen()
    {
        var text = Draw.Groups("0 SECTION 2 HEADER 9 $INSUNITS 70 4 0 ENDSEC 0 SECTION 2 TABLES 0 TABLE 2 LAYER 0 LAYER 2 off 62 -7 70 0 0 LAYER 2 cold 62 7 70 1 0 ENDTAB 0 ENDSEC "
            + "0 SECTION 2 ENTITIES 0 CIRCLE 8 off 10 0 20 0 40 1 0 CIRCLE 8 cold 10 0 20 0 40 2 0 CIRCLE 8 a 10 0 20 0 40 30 0 CIRCLE 8 b 10 0 20 0 40 40 0 TEXT 8 b 1 hello 0 ENDSEC 0 EOF");
        Assert.Equal(2, DrawingReader.Read(Draw.File("a.dxf", text), new()).Good.Loops.Length);
        DrawingReader.Read(Draw.File("a.dxf", text), new(Pick: "B")).Only().HasArea(Math.PI * 1600);
        Assert.Contains("a, b", DrawingReader.Read(Draw.File("a.dxf", text), new(Pick: "c")).Mistake("layer \"c\"").Allowed, StringComparison.Ordinal);
        Assert.Contains(DrawingReader.Read(Draw.File("a.dxf", text), new()).Good.Notes, n => n.Said == "TEXT was left out");
    }

    [Theory]
    [InlineData(null, "")]
    [InlineData("0", "")]
    public void Without_a_unit_it_is_asked_for_and_never_guessed(string? units, string hint) =>
        Assert.Contains("unit", DrawingReader.Read(Draw.File("a.dxf", Draw.DxfText("0 CIRCLE 10 0 20 0 40 10", units)), new()).Mistake("does not say its unit" + hint).Remedy, StringComparison.Ordinal);

    [Fact]
    public void A_unit_that_contradicts_the_header_is_refused() => Draw.Dxf("0 CIRCLE 10 0 20 0 40 10", new(Unit: 25.4)).Mistake("millimetres");

    [Theory]
    [InlineData("0 SPLINE 71 3 11 0 21 0 11 5 21 5", "no control points")]
    [InlineData("0 SPLINE 71 3 40 0 40 1 10 0 20 0 10 1 20 1 10 2 20 2 10 3 20 3", "has 2 knots")]
    [InlineData("0 SPLINE 71 1 40 0 40 0 40 1 40 0 10 0 20 0 10 1 20 1", "smaller")]
    [InlineData("0 SPLINE 71 1 40 0 40 0 40 0 40 0 10 0 20 0 10 1 20 1", "all the same")]
    [InlineData("0 SPLINE 71 1 40 0 40 0 40 1 40 1 41 0 41 1 10 0 20 0 10 1 20 1", "weights")]
    [InlineData("0 SPLINE 71 99 10 0 20 0", "degree 99")]
    [InlineData("0 CIRCLE 10 0 20 0 40 0", "radius is 0")]
    [InlineData("0 CIRCLE 10 0 40 5", "no group 20")]
    [InlineData("0 CIRCLE 10 0 20 nan 40 5", "is \"nan\"")]
    [InlineData("0 CIRCLE 10 0 20 1e308 40 5", "reaches to")]
    [InlineData("0 CIRCLE 10 0 20 0 40 5 210 1 230 0", "not lie in the plan")]
    [InlineData("0 LINE 10 0 20 0 30 0 11 5 21 0 31 5", "rises")]
    [InlineData("0 3DFACE 8 0", "is not read")]
    [InlineData("0 POLYLINE 70 64 0 SEQEND", "mesh")]
    [InlineData("0 INSERT 2 none 10 0 20 0", "not in the drawing")]
    [InlineData("0 INSERT 2 b 10 0 20 0 70 4", "rows and columns")]
    [InlineData("0 INSERT 2 b 10 0 20 0 41 0", "flattened")]
    public void What_cannot_be_drawn_truly_is_refused_with_its_line(string entities, string says) =>
        Assert.True(Draw.Dxf(entities, blocks: "0 BLOCK 2 b 10 0 20 0 0 ENDBLK").Mistake(says).Line > 8);
}
