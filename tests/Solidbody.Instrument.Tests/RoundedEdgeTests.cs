namespace Solidbody.Instrument.Tests;

/// <summary>What a rounded edge takes off a face.</summary>
public class RoundedEdgeTests
{
    [Fact] // Samples of our own shapes (docs/shapes.md), data/shapes.json: radius 6.35 mm.
    public void A_rounded_edge_takes_off_what_the_table_says()
    {
        var edges = Shape.All.GetProperty("edges");
        foreach (var s in edges.GetProperty("samples").GetProperty("roundover").EnumerateArray())
            Assert.Equal(s.Number("depth"), PartShape.TakenAt(s.Number("distance"), edges.Number("roundoverRadius")), 1e-5);
    }
}
