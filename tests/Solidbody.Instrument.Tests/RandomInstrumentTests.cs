using System.Globalization;
using CsCheck;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests;

/// <summary>Laws over instruments of any size: what the file's defaults make of a scale, strings and frets, and spoilt spreads, radii and thicknesses.</summary>
public class RandomInstrumentTests
{
    private static readonly Gen<InstrumentDefinition> Any = Gen.Select(
            Gen.Select(Gen.Double[22 * 25.4, 36 * 25.4], Gen.Double[-30, 45], Gen.Int[0, 12], Gen.Int[4, 9], Gen.Int[20, 29], Gen.Bool, Gen.Bool),
            Gen.Double[0.94, 1.04], Gen.Double[200, 600], Gen.Double[-1, 1.5], Gen.Int[0, 4])
        .Select((size, spread, radius, thicker, profile) =>
        {
            // Two in five are single scales; of the rest the lowest string's scale is up to 45 mm longer. A zero fret, blind slots: one in two.
            var (scale, fan, square, strings, frets, zero, blind) = size;
            var half = Math.Round(Math.Max(0, fan) / 2, 3);
            var text = string.Create(CultureInfo.InvariantCulture, $"""
                units = "mm"
                name = "any"
                scale_bass = {Math.Round(scale, 3) + half}
                scale_treble = {Math.Round(scale, 3) - half}
                perpendicular_fret = {square}
                strings = {strings}
                frets = {frets}
                nut.zero_fret = {(zero ? "true" : "false")}
                fretboard.blind_slots = {(blind ? "true" : "false")}
                fretboard.end = "{(square % 2 == 0 ? "square" : "along-last-fret")}"
                """);
            var d = InstrumentFile.Read(text, "any.toml").Good;
            return d with
            {
                Nut = d.Nut with { StringSpread = d.Nut.StringSpread * spread },
                Fretboard = d.Fretboard with { RadiusAtNut = radius, RadiusAtLastFret = radius * 1.4 },
                Neck = d.Neck with { ThicknessAtFret1 = d.Neck.ThicknessAtFret1 + thicker, Profile = Solidbody.Instrument.Necks.NeckProfile.All[profile].Name },
                Body = d.Body with { Bridge = d.Body.Bridge with { StringSpread = d.Body.Bridge.StringSpread * spread } },
            };
        });

    [Fact]
    public void A_design_has_its_parts_or_says_what_stops_it() =>
        Any.Sample(d => { var design = Designer.Design(d); return design.Parts.Length == 3 || design.Findings.Any(f => f.Severity == Severity.Stops); }, iter: 30);

    [Fact]
    public void Left_is_the_mirror_of_right() => Any.Sample(d =>
    {
        var (right, left) = (Designer.Design(d with { Hand = Hand.Right }), Designer.Design(d with { Hand = Hand.Left }));
        Assert.Equal(right.Parts.Length, left.Parts.Length);
        foreach (var (r, l) in right.Parts.Zip(left.Parts))
        {
            var (shapeR, shapeL) = (new PartShape(r), new PartShape(l));
            var grid = Grid.Over(r.Bounds.Plan, 7.31);
            for (var row = 0; row < grid.Rows; row++)
                for (var c = 0; c < grid.Columns; c++)
                {
                    var p = grid.Centre(c, row);
                    Assert.True(Same(shapeR.At(p), shapeL.At(Mirror.Of(p))), $"{r.Name} at {p}: {shapeR.At(p)} and {shapeL.At(Mirror.Of(p))}");
                }
        }
    }, iter: 4);

    private static bool Same(DesignColumn a, DesignColumn b) => a.IsEmpty && b.IsEmpty || Math.Abs(a.Top - b.Top) < 1e-9 && Math.Abs(a.Bottom - b.Bottom) < 1e-9;

    [Fact]
    public void Sampling_equals_asking_and_holds_no_nonsense() => Any.Sample(d =>
    {
        foreach (var part in Designer.Design(d).Parts)
        {
            var shape = new PartShape(part);
            var grid = Grid.Over(part.Bounds.Plan, 3.17);
            var columns = new DesignColumn[grid.Count];
            shape.Sample(grid, columns);
            for (var i = 0; i < columns.Length; i++)
            {
                var c = columns[i];
                Assert.Equal(shape.At(grid.Centre(i % grid.Columns, i / grid.Columns)), c);
                Assert.False(double.IsNaN(c.Top) || double.IsNaN(c.Bottom));
                Assert.True(c.IsEmpty || c.Top <= part.Bounds.Z1 + 1e-9 && c.Bottom >= part.Bounds.Z0 - 2e-3, $"{part.Name}: {c} in {part.Bounds}");
            }
        }
    }, iter: 4);

    [Fact]
    public void Every_measure_agrees_with_the_design_itself() => Any.Select(Gen.Bool, (d, left) => d with { Hand = left ? Hand.Left : Hand.Right }).Sample(d =>
    {
        var design = Designer.Design(d);
        if (design.Findings.Any(f => f.Severity == Severity.Stops)) return;
        foreach (var part in design.Parts)
        {
            var shape = new PartShape(part);
            foreach (var m in part.Measures) Assert.True(Math.Abs(Calipers.Take(shape, m.Caliper) - m.Expected) < 0.03, $"{d}: {part.Name}, {m.Name}: {Calipers.Take(shape, m.Caliper)}, not {m.Expected} ({m.Caliper})");
        }
    }, iter: 5);

    [Fact]
    public void Every_slot_lies_on_the_board_and_ends_where_it_should() => Any.Sample(d =>
    {
        foreach (var board in Designer.Design(d).Parts.Where(p => p.Name == "fretboard"))
        {
            Assert.Equal(d.Frets + (d.Nut.ZeroFretSetBack is null ? 0 : 1), board.Slots.Length);
            var (box, blind) = (board.Outline.Bounds, d.Fretboard.BlindSlotsInside);
            foreach (var slot in board.Slots)
                foreach (var end in (Point2[])[slot.A, slot.B])
                {
                    var inside = -board.Outline.SignedDistance(end);
                    // A blind slot's round end stops at its distance from the nearest edge; a slot that runs out has left the board sideways, not over an end.
                    if (blind is { } distance) Assert.True(inside - slot.Width / 2 > Math.Min(distance, 1) - 1e-9, $"{slot.Name} ends {inside} inside");
                    else Assert.True(inside < 0 && end.X > box.X0 && end.X < box.X1, $"{slot.Name} ends {inside} inside at {end}");
                }
            foreach (var (before, slot) in board.Slots.Zip(board.Slots.Skip(1)))
                Assert.True(slot.A.X > before.A.X + slot.Width && slot.B.X > before.B.X + slot.Width, $"{slot.Name} meets the slot before");
        }
    }, iter: 60);
}
