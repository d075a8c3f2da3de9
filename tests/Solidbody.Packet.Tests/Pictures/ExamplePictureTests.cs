using System.Text;
using System.Xml.Linq;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Instrument.Files;
using Solidbody.Packet.Pictures;

namespace Solidbody.Packet.Tests.Pictures;

public class ExamplePictureTests
{
    [Theory, InlineData("school-six.toml"), InlineData("school-bass.toml")]
    public void Every_part_of_an_example_is_drawn_and_stays_small(string file)
    {
        var design = Designer.Design(InstrumentFile.Read(Repository.ReadExample(file), file).Good);
        Assert.Equal(3, design.Parts.Length);
        foreach (var part in design.Parts)
        {
            var svg = Encoding.UTF8.GetBytes(PartPicture.Svg(part, design.Definition.Name));
            Look.At($"{Path.GetFileNameWithoutExtension(file)}-{part.Name}.svg", svg);
            Assert.True(svg.Length < 1_000_000, $"{part.Name} has {svg.Length} bytes.");
            Assert.Equal("svg", XDocument.Parse(Encoding.UTF8.GetString(svg)).Root!.Name.LocalName);
        }
    }

    [Fact]
    public void The_same_part_gives_the_same_picture()
    {
        var part = Scenes.Body().Part;
        Assert.Equal(PartPicture.Svg(part, "School six"), PartPicture.Svg(part, "School six"));
    }

    [Fact]
    public void A_map_of_another_size_than_its_grid_is_refused() =>
        Assert.Throws<ArgumentException>(() => DeviationPicture.Svg(Scenes.Body().Part, Side.Front, new Grid(0, 0, 1, 4, 4), new float[15], 0.05, 0.1));
}
