using Solidbody.Geometry;
using Solidbody.Instrument.Balance;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Files;
using Solidbody.Instrument.Tests.Files;

namespace Solidbody.Instrument.Tests.Bodies;

/// <summary>A neck that goes through the body: its wood counted once, its joints sound, its heights its own.</summary>
public class ThroughNeckTests
{
    private const string Minimal = "units = \"mm\"\nname = \"a\"\nscale = 635\n[neck]\njoint = \"through\"\n";

    private static InstrumentDefinition Read(string more)
    {
        var result = InstrumentFile.Read(Minimal + more, "a.toml");
        Assert.Empty(result.Mistakes);
        return result.Good;
    }

    /// <summary>A core so wide that every room and screw stands in it.</summary>
    private static InstrumentDefinition Sound { get; } = Read("[neck.core]\nwidth = 90\n");

    private static InstrumentDefinition Neck(Func<NeckDefinition, NeckDefinition> change) => Sound with { Neck = change(Sound.Neck) };
    private static InstrumentDefinition Core(double width, BoardDefinition? board = null) => Neck(n => n with { Core = new(width) { Board = board } });
    private static InstrumentDefinition Body(Func<BodyDefinition, BodyDefinition> change) => Sound with { Body = change(Sound.Body) };

    [Fact]
    public void The_body_has_neither_pocket_nor_screws_and_keeps_all_else()
    {
        var (through, bolted) = (Designer.Design(Read("")), Designer.Design(Read("") with { Neck = Read("").Neck with { Core = null, Joint = JointKind.Set } }));
        var body = through.Part("body");
        Assert.DoesNotContain(body.Pockets, p => p.Name == RoomNames.NeckPocket);
        Assert.DoesNotContain(body.Holes.Concat(through.Part("neck").Holes), h => h.Name.StartsWith("neck screw", StringComparison.Ordinal) || h.Name.StartsWith("heel screw", StringComparison.Ordinal));
        Assert.DoesNotContain(body.Measures, m => m.Name.Contains("neck pocket", StringComparison.Ordinal));
        Assert.Equal(bolted.Part("body").Outline.Area, body.Outline.Area, 1e-9);
        Assert.DoesNotContain(through.Findings, f => f.Code.StartsWith("POCKET", StringComparison.Ordinal) || f.Code.StartsWith("TENON", StringComparison.Ordinal) || f.Code.StartsWith("SCREW", StringComparison.Ordinal) || f.Code is "MOVE-01" or "MOVE-02");
    }

    [Theory]
    [InlineData("THROUGH-01")]
    [InlineData("THROUGH-02")]
    [InlineData("THROUGH-03")]
    [InlineData("THROUGH-04")]
    [InlineData("THROUGH-05")]
    [InlineData("THROUGH-06")]
    [InlineData("THROUGH-07")]
    public void A_spoilt_figure_is_found(string code) => Fires.OnlyWhenSpoilt(code, code == "THROUGH-03" ? Core(90, new(950, 100, 50)) : Sound, code switch
    {
        "THROUGH-01" => Body(b => b with { Bridge = b.Bridge with { Screws = [(22, 20), (22, 43)] } }),
        "THROUGH-02" => Core(64),
        "THROUGH-03" => Core(90, new(900, 100, 50)),
        "THROUGH-04" => Neck(n => n with { Rod = n.Rod with { End = 485 } }),
        "THROUGH-05" => Body(b => b with { Thickness = 7.5 }),
        "THROUGH-06" => Core(310),
        _ => Neck(n => n with { Heel = n.Heel with { Thickness = 52 } }) with { Body = Sound.Body with { Pocket = Sound.Body.Pocket with { Depth = 48 } } },
    });

    [Theory] // A wire way that crosses the glue line square is no bore along it; one that runs beside it, or meets it flat, is.
    [InlineData(30, 90, false)]
    [InlineData(46, 46, true)]
    [InlineData(40, 50, true)]
    public void Wire_ways_are_judged_by_how_they_meet_the_glue_line(double fromY, double toY, bool found)
    {
        var body = Designer.Design(Sound).Part("body") with { Holes = [], HandBores = [new("wire way", new(600, fromY, -20), new(640, toY, -20), 6, "by hand") { ForWires = true }] };
        var figures = Designer.Design(Sound).Figures.Core;
        Assert.Equal(found, Checks.ThroughChecks.Of(Sound, body, Designer.Design(Sound).Part("neck"), figures).Any(f => f.Code == "THROUGH-01"));
    }

    [Theory] // Counted column by column: all of the body, and of the neck what lies outside the body or above its front; the board as it is.
    [InlineData(0)]
    [InlineData(3)]
    public void No_wood_is_counted_twice_and_none_forgotten(double degrees)
    {
        var d = Read(FormattableString.Invariant($"[neck.core]\nangle = \"{degrees} deg\"\n"));
        var design = Designer.Design(d);
        var (body, neck, seat) = (new PartShape(design.Part("body")), new PartShape(design.Part("neck")), NeckSeat.Of(d));
        double once = 0, inside = 0, slanting = Math.Cos(double.DegreesToRadians(degrees));
        var grid = Grid.Over(neck.Part.Bounds.Plan, 0.5);
        for (var i = 0; i < grid.Count; i++)
        {
            var p = grid.Centre(i % grid.Columns, i / grid.Columns);
            if (neck.At(p) is not { IsEmpty: false } c) continue;
            double At(double z) => seat.Z(p.X, d.Neck.Heel.Thickness + z);
            var (low, high) = (At(c.Bottom), At(c.Top));
            if (body.Part.Outline.Contains(new(seat.X(p.X, d.Neck.Heel.Thickness), p.Y))) (inside, low) = (inside + grid.Cell * grid.Cell * Math.Clamp(0 - low, 0, high - low), Math.Min(Math.Max(low, 0), high));
            once += grid.Cell * grid.Cell * (high - low) / slanting;
        }
        var woods = design.Figures.WoodBill!.Lines;
        Assert.Equal(["bass wing", "treble wing", "neck and core", "fretboard"], woods.Select(l => l.Part));
        var expected = PartVolume.Of(design.Part("body")).Volume + once;
        Assert.True(inside > 40_000, "the heel lies in the body");
        Assert.InRange(woods.Take(3).Sum(l => l.Finished) / expected, 0.998, 1.002);
        Assert.Equal(PartVolume.Of(design.Part("fretboard")).Volume, woods[3].Finished, 1e-6);
    }

    [Fact] // Tail, headstock and widths by the parts' own points; 44.45 mm of body and 3.175 mm of neck over it.
    public void The_blank_reaches_from_the_headstocks_tip_to_the_tail()
    {
        var design = Designer.Design(Read(""));
        var (neck, blank) = (design.Part("neck").Bounds, design.Figures.Core!.Blank);
        var tail = design.Part("body").Outline.Loops[0].Points.Where(p => Math.Abs(p.Y) <= 28).Max(p => p.X);
        Assert.Equal(tail - neck.X0, blank.Length, 0.05);
        Assert.Equal(Math.Max(neck.Y1, 28) - Math.Min(neck.Y0, -28), blank.Width, 1e-6);
        Assert.Equal(44.45 + 3.175, blank.Thickness, 1e-6);
        Assert.Equal(design.Part("body").Bounds.Width, 56 + design.Figures.Core.Bass.Blank.Width + design.Figures.Core.Treble.Blank.Width, 1e-6);
    }

    [Fact] // A bare body with sharp edges: the chord of its outline at the glue line times its thickness.
    public void A_bare_bodys_glue_face_is_its_chord_times_its_thickness()
    {
        var bare = Designer.Design(Body(b => b with { Pickups = [], Controls = null, Jack = null, WireWays = [], StrapButtons = [], FrontEdge = null, BackEdge = null, Bridge = b.Bridge with { Screws = [], StringThroughAt = null } }));
        var xs = new List<double>();
        foreach (var (line, glue) in ((double, double)[])[(-45, bare.Figures.Core!.Bass.Glue), (45, bare.Figures.Core.Treble.Glue)])
        {
            bare.Part("body").Outline.Crossings(line, xs);
            Assert.Equal(xs.Chunk(2).Sum(c => c[1] - c[0]) * 44.45, glue, 2 * 44.45);
        }
    }

    [Fact]
    public void Woods_move_each_by_themselves()
    {
        var m = Designer.Design(Sound).Figures.Movement!;
        Assert.Null(m.Pocket);
        var (core, bass, treble) = (m.Widths.Single(w => w.What.StartsWith("core, glue", StringComparison.Ordinal)), m.Widths.Single(w => w.What == "bass wing, widest"), m.Widths.Single(w => w.What == "treble wing, widest"));
        Assert.Equal(Designer.Design(Sound).Part("body").Bounds.Width, core.Width + bass.Width + treble.Width, 1e-6);
        // Flatsawn both: across by C_T 0.00353 and 0.00256, front to back by C_R 0.00165 and 0.00151 (Wood Handbook, table 13-5).
        var (front, wings) = (m.Widths.Single(w => w.What == "core, front to back"), m.Widths.Single(w => w.What == "wings, front to back"));
        Assert.Equal(90 * 0.00353 / (44.45 * 0.00165), core.Dry!.Value / front.Dry!.Value, 1e-9);
        Assert.Equal(bass.Width * 0.00256 / (44.45 * 0.00151), bass.Dry!.Value / wings.Dry!.Value, 1e-9);
    }

    [Fact]
    public void Other_woods_are_offered_for_the_wings_and_the_core_stays()
    {
        var balance = Designer.Design(Sound).Figures.Balance!;
        var wings = balance.Things.Where(t => t.Name.EndsWith("wing", StringComparison.Ordinal)).Sum(t => t.Mass);
        var basswood = balance.Changes.Single(c => c.What == "wings of basswood");
        var (light, own) = (WoodWeights.DensityOf(Sound, "basswood")!.Value, WoodWeights.DensityOf(Sound, "red-alder")!.Value);
        Assert.Equal(balance.Whole.Mass - wings * (1 - light / own), basswood.Mass, 1e-9);
    }

    [Theory]
    [InlineData("angle")]
    [InlineData("above")]
    [InlineData("bridge")]
    public void What_is_solved_for_brings_the_saddles_to_the_middle_and_leaves_the_rest(string solve)
    {
        var d = Read($"[action]\nsolve = \"{solve}\"\n");
        var design = Designer.Design(d);
        var (bridge, heights) = (design.Definition.Body.Bridge, design.Figures.Heights!);
        var saddles = heights.Strings.Select(s => s.SaddleHeight).ToArray();
        Assert.Equal(bridge.BaseHeight + bridge.SaddleLowest + bridge.SaddleRise / 2, (saddles.Min() + saddles.Max()) / 2, 1e-9);
        Assert.Equal(0, heights.Wedge);
        // A neck that leans turns about its glue plane at the heel's end: there it stands as high as before.
        if (solve != "above") Assert.Equal(3.175, heights.BoardOverBody, 1e-9);
        if (solve == "above") Assert.NotEqual(3.175, heights.BoardOverBody, 0.01);
        Assert.Contains(design.Findings, f => f.Code == "HEIGHT-06");
    }

    [Fact]
    public void Saddles_out_of_range_are_mended_without_pocket_or_shim()
    {
        var high = Fires.OnlyWhenSpoilt("HEIGHT-01", Sound, Body(b => b with { Bridge = b.Bridge with { SaddleRise = 3.5, SaddleLowest = 14 } }));
        Assert.DoesNotContain("pocket", high.Remedy, StringComparison.Ordinal);
        Assert.DoesNotContain("shim", high.Remedy, StringComparison.Ordinal);
        Assert.DoesNotContain("heel", high.Remedy, StringComparison.Ordinal);
        Assert.Contains("let the neck's glue plane stand", high.Remedy, StringComparison.Ordinal);
        Assert.Contains("lean the neck back", high.Remedy, StringComparison.Ordinal);
    }

    [Fact] // No pocket's mouth lets a drill lie level between two pickups: the way is ploughed in the glue line, as the default has it.
    public void A_wire_way_runs_in_the_glue_line()
    {
        var design = Designer.Design(Read(""));
        var way = design.Part("body").HandBores.Single(b => b.Name == "wire way neck pickup to bridge pickup");
        Assert.Equal((28, 28, GlueUp.Halves), (way.A.Y, way.B.Y, way.Before));
        Assert.DoesNotContain(design.Findings, f => f.Code.StartsWith("WIRE", StringComparison.Ordinal));
        Assert.Contains(Designer.Design(Read("") with { Neck = Read("").Neck with { Core = new(84) } }).Findings, f => f.Code == "WIRE-06");
    }

    [Theory]
    [InlineData(Minimal + "[body.pocket]\ndepth = 16\n", "6: `body.pocket` has no meaning here")]
    [InlineData(Minimal + "[body]\npieces = 1\n", "7: `body.pieces` has no meaning here")]
    [InlineData(Minimal + "[body.top]\nwood = \"black-walnut\"\n", "6: `body.top` has no meaning here")]
    [InlineData(Minimal + "[neck.heel]\ntenon_width = 40\n", "7: `neck.heel.tenon_width` has no meaning here")]
    [InlineData(Minimal + "[neck.heel]\ncorner_radius = 8\n", "7: `neck.heel.corner_radius` has no meaning here")]
    [InlineData(Minimal + "[neck.heel.screws]\nlength = 40\n", "6: `neck.heel.screws` has no meaning here")]
    [InlineData(Minimal + "[neck.core]\nwidth = 50\n", "7: the core is 50 mm wide, the neck at its heel 56 mm")]
    [InlineData(Minimal + "[neck.core]\nboard_length = 1000\n", "7: only part of the board on hand is stated")]
    [InlineData(Minimal + "[action]\nsolve = \"shim\"\n", "7: a through-neck has no pocket, and its heel's thickness lifts nothing")]
    [InlineData(Minimal + "[neck.core]\nangle = \"2 deg\"\n[action]\nsolve = \"angle\"\n", "7: `neck.core.angle` is given, and `action.solve` says it follows from the others")]
    [InlineData("units = \"mm\"\nname = \"a\"\nscale = 635\n[neck.core]\nwidth = 60\n", "4: `neck.core` has no meaning here")]
    [InlineData("units = \"mm\"\nname = \"a\"\nscale = 635\n[action]\nsolve = \"above\"\n", "5: only a through-neck stands at a height of its own over the body")]
    public void What_makes_no_sense_beside_it_is_refused(string text, string told)
    {
        var m = Assert.Single(InstrumentFile.Read(text, "a.toml").Mistakes);
        Assert.Equal(told, $"{m.Line}: {m.Wrong}");
        Assert.All([m.Allowed, m.Remedy], t => Assert.NotEmpty(t));
    }

    [Fact]
    public void A_bought_body_has_a_pocket()
    {
        var text = Repository.ReadExample("school-bought-body.toml");
        var changed = text.Contains("[neck]", StringComparison.Ordinal) ? text.Replace("[neck]", "[neck]\njoint = \"through\"", StringComparison.Ordinal) : text + "\n[neck]\njoint = \"through\"\n";
        Assert.Contains(InstrumentFile.Read(changed, "a.toml").Mistakes, m => m.Wrong == "the neck goes through a body that is bought");
    }

    [Fact]
    public void A_left_handed_one_weighs_the_same() =>
        Assert.Equal(Designer.Design(Sound).Figures.Balance!.Whole, Designer.Design(Sound with { Hand = Hand.Left }).Figures.Balance!.Whole);

    [Fact] // With a scarf joint the headstock is another piece: the core's blank begins at the joint.
    public void A_scarfed_headstock_shortens_the_blank()
    {
        InstrumentDefinition Leaning(string more) => Read("[headstock]\nangle = \"10 deg\"\n" + more);
        var (whole, scarfed) = (Designer.Design(Leaning("scarf = false\n")), Designer.Design(Leaning("scarf = true\n")));
        Assert.True(whole.Figures.Core!.Blank.Length > scarfed.Figures.Core!.Blank.Length);
        Assert.Equal(scarfed.Figures.Scarf!.ShaftPiece, scarfed.Figures.Core.Blank.Length, 1e-6);
    }
}
