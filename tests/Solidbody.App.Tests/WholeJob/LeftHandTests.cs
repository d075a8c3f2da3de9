using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>The left-handed example is the right-handed one in a mirror: the wood is, the figures are, the way a cutter bites is not.</summary>
public sealed class LeftHandTests
{
    private static readonly (Job Right, Job Left) Both = (Job.Example, Job.LeftHanded);

    [Fact]
    public void Nothing_stops_the_left_handed_example() => Assert.Empty(Both.Left.Stopping);

    [Fact]
    public void The_same_is_measured_on_both()
    {
        foreach (var (right, left) in Both.Right.Proof.Parts.Zip(Both.Left.Proof.Parts))
        {
            Assert.Equal(right.Measures.Select(m => m.Name), left.Measures.Select(m => m.Name));
            // Twice the resolution of the text and the chords of its arcs, on either side.
            Assert.All(right.Measures.Zip(left.Measures), m => Assert.Equal(m.First.Measured, m.Second.Measured, 0.02));
        }
    }

    [Fact]
    public void As_much_wood_is_left_on_both()
    {
        foreach (var (right, left) in Both.Right.Proof.Proofs.Zip(Both.Left.Proof.Proofs))
            Assert.Equal(1, left.Field.Volume / right.Field.Volume, 2e-3);
    }

    /// <summary>With a spindle that turns clockwise, a cutter that climbs has the wood on its right: round an outline it runs clockwise
    /// (Machinery's Handbook, "climb milling", from memory).</summary>
    [Theory]
    [InlineData("body-back")]
    [InlineData("neck-back")]
    [InlineData("fretboard")]
    public void Round_an_outline_both_climb(string setUp) => Assert.All((Job[])[Both.Right, Both.Left], job =>
    {
        var (placed, entry, _) = job.ProgramWith(setUp, "outline, finish");
        var cuts = ProgramEdit.Cuts(job.Made.Texts[entry.File], "outline, finish");
        var middle = placed.Placement.ToWork(new((placed.Blank.X0 + placed.Blank.X1) / 2, 0, 0)).Plan;
        Assert.True(TwiceArea(cuts, middle) < 0, $"{entry.File} runs counter-clockwise");
    });

    /// <summary>Twice the area the cutter's way goes round, counter-clockwise positive.</summary>
    private static double TwiceArea(IEnumerable<Motion> cuts, Point2 middle) => cuts.Sum(m => (m.From.Plan - middle).Cross(m.To.Plan - middle));
}
