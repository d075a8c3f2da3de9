using CsCheck;
using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Tests.Toolpaths;

/// <summary>Edges as cut, against the closed form of what they should be.</summary>
public class EdgeTests
{
    private const double Face = 20, Ridge = 0.02;

    private static readonly Loop Disc = Shapes.Circle(new(0, 0), 30, 1e-4);

    /// <summary>Falls away beyond x = 20 like an arm contour: level, a bend of 12 mm, then a slope.</summary>
    private sealed record Falling(double Slope) : IHeight
    {
        public double Z(double x, double y) => x <= 20 ? Face : x <= 32 ? Face - Slope * (x - 20) * (x - 20) / 24 : Face - Slope * (x - 26);
    }

    /// <summary>How much an edge as cut stands above its shape, square to it: at least and at most.</summary>
    private static (double Least, double Most) Off(TestBlock block, EdgeForm form, IHeight face, Func<Point2, double> inside)
    {
        double Z(Point2 p) => face.Z(p.X, p.Y) - form.TakenAt(inside(p));
        var (least, most) = (0.0, 0.0);
        for (var i = 0; i < block.Grid.Count; i++)
        {
            var p = block.At(i);
            if (inside(p) < 0.05 || inside(p) >= form.Width) continue;
            const double h = 1e-5;
            var (gx, gy) = ((Z(new(p.X + h, p.Y)) - Z(new(p.X - h, p.Y))) / (2 * h), (Z(new(p.X, p.Y + h)) - Z(new(p.X, p.Y - h))) / (2 * h));
            var off = (block[i] - Z(p)) / Math.Sqrt(1 + gx * gx + gy * gy);
            (least, most) = (Math.Min(least, off), Math.Max(most, off));
        }
        return (least, most);
    }

    public static TheoryData<Cutter, EdgeForm> Formers => new()
    {
        { Given.Roundover(4, 1.5), new EdgeForm.Rounded(4) },
        { Given.Tapered(0.1, Math.PI / 4, 14), new EdgeForm.Chamfered(5, Math.PI / 4) },
        { Given.Tapered(1, Math.PI / 4, 14), new EdgeForm.Chamfered(5, Math.PI / 4) },
        { Given.Tapered(0.5, Math.PI / 6, 12), new EdgeForm.Chamfered(3, Math.PI / 3) },
        { Given.Tapered(0.5, Math.PI / 3, 16), new EdgeForm.Chamfered(6, Math.PI / 6) },
    };

    [Theory, MemberData(nameof(Formers))]
    public void A_cutter_of_the_edges_form_leaves_it(Cutter cutter, EdgeForm form)
    {
        foreach (var closed in new[] { true, false })
        {
            var s = Given.Settings(cutter, stepDown: 2);
            var block = new TestBlock(new Box2(20, -4, 35, 4), 0.25, Face);
            block.Cut(EdgeForming.Path(s, closed ? Disc.Points : [new(30, -8), new(30, 8)], closed, form, Face).Checked(s), cutter);
            Assert.Equal((0, 0), (block.RapidBite, block.PlungeBite));
            var (least, most) = Off(block, form, new LevelHeight(Face), p => closed ? 30 - p.Length : 30 - p.X);
            Assert.True(least >= -0.01 && most <= 0.01, $"{least:0.0000} to {most:0.0000}");
        }
    }

    [Fact] // Plan of the chamfer at 45°, worked out by hand: T = 1, a = cos 45° + 0.3, tip w + a − (√2 − 1) T below the face.
    public void A_cone_stands_where_its_formula_says()
    {
        var place = EdgeForming.PlaceOf(Given.Tapered(1, Math.PI / 4, 14), new EdgeForm.Chamfered(5, Math.PI / 4))!.Value;
        Assert.Equal(Math.Sqrt(0.5) + 0.3, place.Out, 12);
        Assert.Equal(5 + place.Out - (Math.Sqrt(2) - 1), place.Down, 12);
    }

    [Fact]
    public void A_cutter_of_another_form_is_refused()
    {
        Assert.Null(EdgeForming.PlaceOf(Given.Roundover(6, 2), new EdgeForm.Rounded(4)));
        Assert.Null(EdgeForming.PlaceOf(Given.Tapered(1, Math.PI / 4, 8), new EdgeForm.Chamfered(5, Math.PI / 4)));    // too narrow
        Assert.Null(EdgeForming.PlaceOf(Given.Tapered(1, Math.PI / 6, 14), new EdgeForm.Chamfered(5, Math.PI / 4)));   // leans otherwise
        Assert.Throws<ArgumentException>(() => EdgeForming.Path(Given.Settings(Given.Flat(6)), Disc.Points, true, new EdgeForm.Rounded(4), Face));
        Assert.Throws<ArgumentException>(() => EdgeFollowing.Path(Given.Settings(Given.Flat(6)), [new(Disc.Points, true)], new EdgeForm.Rounded(4), new LevelHeight(Face), Face, Ridge));
    }

    private static readonly Gen<EdgeForm> Forms = Gen.Bool.SelectMany(round => round
        ? Gen.Double[2, 6].Select(r => (EdgeForm)new EdgeForm.Rounded(r))
        : Gen.Select(Gen.Double[2, 5], Gen.Double[Math.PI / 6, Math.PI / 3], (w, a) => (EdgeForm)new EdgeForm.Chamfered(w, a)));

    [Fact]
    public void A_ball_follows_the_edge_of_a_level_or_falling_face_within_the_ridge() => Gen.Select(Forms, Gen.Bool, Gen.Double[0, 0.55], Gen.Double[4, 12])
        .Sample((form, closed, slope, diameter) =>
        {
            var (ball, face) = (Given.Ball(diameter), new Falling(slope));
            var s = Given.Settings(ball, stepDown: 2);
            EdgeStretch edge = closed ? new(Disc.Points, true) : new([new(30, -8), new(30, 8)], false);
            var block = new TestBlock(new Box2(20, -4, 35, 4), 0.25, Face);
            // The face is carved before its edge.
            block.Carve(p => face.Z(p.X, p.Y));
            block.Cut(EdgeFollowing.Path(s, [edge], form, face, Face, Ridge).Checked(s), ball);
            Assert.True(block.RapidBite <= 1e-9, $"rapid {block.RapidBite}");
            var (least, most) = Off(block, form, face, p => closed ? 30 - p.Length : 30 - p.X);
            Assert.True(least >= -0.01 && most <= Ridge + 0.01, $"{least:0.0000} to {most:0.0000}");
        }, iter: 12);

    [Fact]
    public void A_ball_that_does_not_fit_a_hollow_never_cuts_into_it()
    {
        // A bay of 4 mm radius in the edge, and a ball of 6: wood is left, none is taken.
        var bay = new Region(Shapes.Rectangle(new(0, 0), 60, 40, 5)).Loops[0];
        var outline = Offsets.Difference(new Region(bay), new Region(Shapes.Circle(new(0, 20), 4, 0.001)))[0].Loops[0];
        var (ball, form, region) = (Given.Ball(12), new EdgeForm.Rounded(3), new Region(outline));
        var s = Given.Settings(ball, stepDown: 2);
        var block = new TestBlock(new Box2(-14, 8, 14, 21), 0.25, Face).Cut(EdgeFollowing.Path(s, [new(outline.Points, true)], form, new LevelHeight(Face), Face, Ridge).Checked(s), ball);
        for (var i = 0; i < block.Grid.Count; i++)
        {
            var inside = -region.SignedDistance(block.At(i));
            if (inside > 0) Assert.True(block[i] >= Face - form.TakenAt(inside) - 0.02 * Math.Max(1, 3 / Math.Max(inside, 0.1)), $"{block.At(i)}: {block[i]} under {Face - form.TakenAt(inside)}");
        }
    }

    [Fact]
    public void Only_carved_stretches_are_followed_each_with_its_lead()
    {
        EdgeStretch edge = new(Shapes.Rectangle(new(0, 0), 60, 40, 5).Points, true);
        Assert.Empty(EdgeStretch.WhereCarved(edge, new LevelHeight(Face), Face, 4, 5));
        var carved = Assert.Single(EdgeStretch.WhereCarved(edge, new Falling(0.3), Face, 4, 5));
        Assert.False(carved.Closed);
        // The face falls by 0.005 at 20 + √(0.005 · 24 / 0.3) = 20.63.
        Assert.InRange(carved.Path.Min(p => p.X), 20.63 - 5 - 2, 20.63 - 4);
        Assert.Single(EdgeStretch.WhereCarved(edge, new Falling(0.3), Face + 1, 4, 5), whole => whole.Closed);
    }
}
