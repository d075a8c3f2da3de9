using Solidbody.Instrument.Files;
using Solidbody.Instrument.Tests.Drawn;

namespace Solidbody.Instrument.Tests.Files;

public class ExampleTests
{
    [Theory, InlineData("school-six.toml"), InlineData("school-six-left.toml"), InlineData("school-bass.toml"), InlineData("school-drawn.toml"), InlineData("school-bought-neck.toml"), InlineData("school-bought-body.toml")]
    public void The_examples_read_without_a_mistake(string file)
    {
        var result = InstrumentFile.Read(Repository.ReadExample(file), file, Shelf.OfTheSchool);

        Assert.Empty(result.Mistakes);
    }

    [Theory, InlineData("school-six.toml"), InlineData("school-six-left.toml"), InlineData("school-bass.toml"), InlineData("school-drawn.toml"), InlineData("school-bought-neck.toml"), InlineData("school-bought-body.toml")]
    public void The_examples_fit_together(string file)
    {
        var design = Designer.Design(InstrumentFile.Read(Repository.ReadExample(file), file, Shelf.OfTheSchool).Good);

        Assert.Empty(design.Findings.Where(f => f.Severity != Solidbody.Findings.Severity.Notes).Select(f => f.ToString()));
    }

    [Fact]
    public void The_schools_six_string_is_what_its_file_says()
    {
        var six = InstrumentFile.Read(Repository.ReadExample("school-six.toml"), "school-six.toml").Good;

        Assert.Equal((Hand.Right, 6, 635.0, 22), (six.Hand, six.Strings, six.Scale, six.Frets));
        Assert.Equal((44.45, 2, 15.875), (six.Body.Thickness, six.Body.Pieces, six.Body.Pocket.Depth));
        Assert.Equal(0.5842, six.Fretboard.SlotWidth);
        Assert.Equal(304.8, six.Fretboard.RadiusAtLastFret);
        Assert.Equal(56.0, six.Fretboard.WidthAtEnd);
    }

    [Fact]
    public void The_left_handed_example_differs_from_the_right_handed_one_only_by_its_hand()
    {
        var right = InstrumentFile.Read(Repository.ReadExample("school-six.toml"), "r").Good;
        var left = InstrumentFile.Read(Repository.ReadExample("school-six-left.toml"), "l").Good;

        Assert.Equal(Hand.Left, left.Hand);
        Assert.Equal(Records.Text(right), Records.Text(left with { Hand = Hand.Right, Name = right.Name }));
    }
}
