using CsCheck;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Files;
using Solidbody.Instrument.Outlines;
using Solidbody.Materials;

namespace Solidbody.Instrument.Tests.Bodies;

/// <summary>Binding in a ledge round the body.</summary>
public class BindingTests
{
    private static readonly BindingDefinition Strip = new(Front: true, Back: true, BindingKind.Plastic, Height: 6, Thickness: 1.5, Glue: 0.1);
    private static readonly InstrumentDefinition Plain = Workshop.Strung with { Body = Workshop.Strung.Body with { FrontEdge = null, BackEdge = null } };
    private static readonly InstrumentDefinition Bound = With(Strip);
    private static readonly Part Body = Designer.Design(Bound).Part("body");

    private static InstrumentDefinition With(BindingDefinition binding) => Plain with { Body = Plain.Body with { Binding = binding } };

    [Fact]
    public void It_is_read_absent_unless_a_side_is_bound_and_leaves_that_edge_sharp()
    {
        InstrumentDefinition Read(string more) => InstrumentFile.Read("units = \"mm\"\nname = \"a\"\nscale = 635\n" + more, "a.toml").Good;
        Assert.Null(Read("").Body.Binding);
        Assert.Null(Read("[body.binding]\nheight = 5\n").Body.Binding);
        var bound = Read("[body.binding]\nfront = true\nmaterial = \"wood\"\nheight = 5\nthickness = 2\nglue = 0.1\n").Body;
        Assert.Equal(new BindingDefinition(true, false, BindingKind.Wood, 5, 2, 0.1), bound.Binding);
        Assert.Null(bound.FrontEdge);
        Assert.Equal(new EdgeForm.Rounded(6), bound.BackEdge);
    }

    /// <summary>Inside a strip as wide as the ledge the wood ends at its floors; further in, and without a binding, nothing changes.</summary>
    [Fact]
    public void The_wood_is_cut_down_beside_the_outline_and_nowhere_else()
    {
        var (shape, plain) = (new PartShape(Body), new PartShape(Designer.Design(Plain).Part("body")));
        var grid = Grid.Over(Body.Bounds.Plan.Grown(3), 1.7);
        var row = new DesignColumn[grid.Columns];
        var onLedge = 0;
        for (var r = 0; r < grid.Rows; r++)
        {
            shape.SampleRow(grid, r, row);
            for (var c = 0; c < grid.Columns; c++)
            {
                var p = grid.Centre(c, r);
                var (column, without, depth) = (shape.At(p), plain.At(p), -Body.Outline.SignedDistance(p));
                Assert.Equal(column, row[c]);
                if (column.IsEmpty) continue;
                if (depth > 1.61) Assert.Equal(without, column);
                else if (depth < 1.59)
                {
                    onLedge++;
                    Assert.Equal((Math.Min(without.Top, -6), Math.Max(without.Bottom, -38.45)), (column.Top, column.Bottom));
                }
            }
        }
        Assert.True(onLedge > 500);
    }

    /// <summary>J. Steiner (1840): of a closed line that turns once, the strip of width w inside it has the area L w − π w².</summary>
    [Fact]
    public void The_ledge_is_as_wide_as_strip_and_glue_all_round()
    {
        var ring = Body.Outline.Area - Body.Ledges[0].Inside.Area;
        Assert.Equal(Body.Outline.Loops[0].Perimeter * 1.6 - Math.PI * 1.6 * 1.6, ring, 1e-3 * ring);
    }

    [Fact]
    public void A_left_handed_body_has_the_mirrored_ledge()
    {
        var left = Designer.Design(Bound with { Hand = Hand.Left }).Part("body");
        Assert.Equal(2, left.Ledges.Length);
        foreach (var p in left.Outline.Loops[0].Points) Assert.Equal(1.6, left.Ledges[0].Inside.SignedDistance(p), 0.02);
    }

    [Fact]
    public void It_is_measured_where_only_wood_is() => Assert.All(Body.Ledges, ledge =>
    {
        var (depth, width) = (Body.Measures.Single(m => m.Name.StartsWith($"{ledge.Name} depth", StringComparison.Ordinal)), Body.Measures.Single(m => m.Name.StartsWith($"body width inside the {ledge.Name}", StringComparison.Ordinal)));
        Assert.Equal(6, depth.Expected, 9);
        var over = ((Caliper.Outside)width.Caliper).Middle.X;
        var ys = Segments.CrossingsAtX(Body.Outline.Loops[0], over);
        Assert.InRange(ys[1] - ys[0] - width.Expected, 2 * 1.6, 2 * 1.6 / 0.8);
    });

    [Fact]
    public void A_circle_bends_by_its_radius_to_its_side() => Gen.Select(Gen.Double[6, 40], Gen.Bool).Sample((radius, hollow) =>
    {
        var circle = Shapes.Circle(new(0, 0), radius, 1e-4);
        Assert.All(PathBends.Of(hollow ? circle.Reversed : circle), b => Assert.True(Math.Abs(b.Radius / radius - 1) < 0.01 && b.Turn == (hollow ? -1 : 1), $"{b} of {radius}"));
    });

    [Fact] // A drawn line of chords 0.005 mm off: 10 mm within 3 %, as the table of the strips is coarser still.
    public void A_flattened_circle_still_tells_its_radius() => Assert.InRange(PathBends.Of(Shapes.Circle(new(0, 0), 10)).Min(b => b.Radius), 9.7, 10.05);

    /// <summary>A body of one round line and two hollows: the strip's inside radius is the horn's less the strip, the hollow's own.</summary>
    [Fact]
    public void The_tightest_bend_is_the_inside_of_horn_or_hollow()
    {
        var strip = BodyBinding.Of(Bound, new(Shapes.Rectangle(new(500, 0), 400, 300, 9)))[0];
        Assert.Equal(9 - 1.5, strip.LeastRadius, 0.3);
    }

    [Fact] // Round it goes from wall to wall of the pocket's mouth; a fifth more is bought: 1.2 g/cm³ over 6 × 1.5 mm are 10.8 g a metre.
    public void The_strip_is_bought_and_weighed()
    {
        var design = Designer.Design(Bound);
        var strips = design.Figures.Bindings;
        Assert.Equal(["front binding", "back binding"], strips.Select(s => s.Name));
        var round = Body.Outline.Loops[0].Perimeter - 2 * BodyMaker.PocketHalfWidth(Bound, NeckJoint.Of(Bound).ShoulderX);
        Assert.Equal((round, round * 1.2), (strips[0].Round, strips[0].Bought));
        Assert.Equal(round * 10.8e-6, design.Figures.Balance!.Things.Single(t => t.Name == "front binding").Mass, 1e-9);
        Assert.Empty(Designer.Design(Plain).Figures.Bindings);
    }

    private static InstrumentDefinition Front(Func<BodyDefinition, BodyDefinition> change) => Bound with { Body = change(Bound.Body with { Binding = Strip with { Back = false } }) };

    public static TheoryData<EdgeForm> Forms => [new EdgeForm.Rounded(6), new EdgeForm.Chamfered(4, Math.PI / 3)];

    [Theory, MemberData(nameof(Forms))]
    public void A_bound_edge_that_is_shaped_is_refused(EdgeForm form) => Fires.OnlyWhenSpoilt("BINDING-01", Front(b => b with { BackEdge = form }), Front(b => b with { FrontEdge = form }));
    [Fact]
    public void A_contour_across_a_bound_edge_is_refused()
    {
        var arm = new ArmContourDefinition(655, -98, double.DegreesToRadians(-66), double.DegreesToRadians(14), 18, 900);
        InstrumentDefinition Contoured(BindingDefinition binding) => With(binding) with { Body = With(binding).Body with { ArmContour = arm } };
        Fires.OnlyWhenSpoilt("BINDING-02", Contoured(Strip with { Front = false }), Contoured(Strip with { Back = false }));
    }
    [Fact] public void A_strip_that_bends_too_tightly_is_found() => Fires.OnlyWhenSpoilt("BINDING-03", Bound, With(Strip with { Kind = BindingKind.Wood, Thickness = 3 }));
    [Fact] public void A_strip_that_must_be_softened_is_noted() => Fires.OnlyWhenSpoilt("BINDING-04", With(Strip with { Kind = BindingKind.Fibre, Thickness = 0.4 }), Bound);
    [Fact]
    public void A_ledge_that_cuts_the_body_apart_is_refused()
    {
        var found = Checks.BindingFindings.NothingInside(3);
        Assert.Equal("BINDING-05", found.Code);
        var body = Body with { Ledges = [] };
        Assert.Contains(Checks.BindingChecks.Of(Bound, body, BodyBinding.Of(Bound, body.Outline)), f => f.Code == "BINDING-05");
        Assert.DoesNotContain(Checks.BindingChecks.Of(Bound, Body, BodyBinding.Of(Bound, Body.Outline)), f => f.Code == "BINDING-05");
    }
    [Fact] public void Little_wood_beside_the_ledge_is_found() => Fires.OnlyWhenSpoilt("BINDING-06", Bound, Front(b => b with { Pickups = [b.Pickups[0] with { AlongY = 2 * (Segments.CrossingsAtX(Body.Outline.Loops[0], b.Pickups[0].CentreX).Min(Math.Abs) - 4) }, b.Pickups[1]] }));
    [Fact] public void Ledges_that_leave_no_side_are_found() => Fires.OnlyWhenSpoilt("BINDING-07", Bound, With(Strip with { Height = 20 }));

    [Fact] // 44.45 mm less a ledge of 6 and a chamfer of 20 tan 60° = 34.64: 3.81 are left, under 5; of 20 tan 45°, 18.45.
    public void A_ledge_and_the_other_sides_edge_that_leave_no_side_are_found() =>
        Fires.OnlyWhenSpoilt("BINDING-07", Front(b => b with { BackEdge = new EdgeForm.Chamfered(20, Math.PI / 4) }), Front(b => b with { BackEdge = new EdgeForm.Chamfered(20, Math.PI / 3) }));

    [Fact]
    public void A_ledge_that_leaves_a_skin_of_the_top_is_found()
    {
        InstrumentDefinition Capped(double thickness) => Bound with { Body = Bound.Body with { Top = new("sugar-maple", thickness, Grain.Flat, 2) } };
        var found = Fires.OnlyWhenSpoilt("TOP-01", Capped(4), Capped(6.5));
        Assert.Contains("0.50 mm", Designer.Design(Capped(6.5)).Findings.Single(f => f.Code == "TOP-01" && f.Place.Contains("ledge", StringComparison.Ordinal)).Figure, StringComparison.Ordinal);
        Assert.Equal("TOP-01", found.Code);
    }
}
