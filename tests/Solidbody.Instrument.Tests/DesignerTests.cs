using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Tests;

public class DesignerTests
{
    [Fact]
    public void The_band_guitar_has_three_parts_and_nothing_wrong()
    {
        var design = Designer.Design(Workshop.Guitar);
        Assert.Equal(["body", "neck", "fretboard"], design.Parts.Select(p => p.Name));
        Assert.Empty(design.Findings.Where(f => f.Severity != Severity.Notes).Select(f => f.ToString()));
    }

    [Theory]
    [InlineData("body"), InlineData("neck"), InlineData("fretboard")]
    public void Sampling_gives_the_same_columns_as_asking_one_by_one(string name)
    {
        var part = Designer.Design(Workshop.Guitar).Part(name);
        var shape = new PartShape(part);
        var grid = Grid.Over(part.Bounds.Plan.Grown(3), 0.93);
        var columns = new DesignColumn[grid.Count];
        shape.Sample(grid, columns);
        for (var row = 0; row < grid.Rows; row++)
            for (var c = 0; c < grid.Columns; c++)
                Assert.Equal(shape.At(grid.Centre(c, row)), columns[row * grid.Columns + c]);
    }

    [Theory]
    [InlineData(Hand.Right), InlineData(Hand.Left)]
    public void Every_measure_agrees_with_the_design_itself(Hand hand)
    {
        foreach (var part in Designer.Design(Workshop.Guitar with { Hand = hand }).Parts)
        {
            var shape = new PartShape(part);
            foreach (var m in part.Measures) Assert.True(Math.Abs(Calipers.Take(shape, m.Caliper) - m.Expected) < 0.02, $"{part.Name}, {m.Name}: {Calipers.Take(shape, m.Caliper)}, not {m.Expected} ({m.Caliper})");
        }
    }
}
