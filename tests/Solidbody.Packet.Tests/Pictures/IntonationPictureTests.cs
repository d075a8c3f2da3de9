using System.Text;
using System.Xml.Linq;
using Solidbody.Instrument;
using Solidbody.Instrument.Files;
using Solidbody.Packet.Pictures;

namespace Solidbody.Packet.Tests.Pictures;

public class IntonationPictureTests
{
    private static readonly XNamespace Drawn = "http://www.w3.org/2000/svg";

    [Theory, InlineData("school-six.toml"), InlineData("school-bass.toml"), InlineData("school-eight.toml")]
    public void Every_note_has_its_ring_and_its_dot_within_the_paper(string example)
    {
        var design = Designer.Design(InstrumentFile.Read(Repository.ReadExample(example), example).Good);
        var table = design.Figures.Intonation!;
        var text = IntonationPicture.Svg(table, design.Definition);
        Look.At($"{example}-intonation.svg", Encoding.UTF8.GetBytes(text));
        var svg = XDocument.Parse(text).Root!;
        var box = svg.Attribute("viewBox")!.Value.Split(' ').Select(v => double.Parse(v, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        var marks = svg.Elements(Drawn + "circle").ToList();

        // Two marks a note, and the two of the key.
        Assert.Equal(2 * (table.Strings.Sum(s => s.After.Length) + 1), marks.Count);
        Assert.All(marks, m => Assert.True(Number(m, "cx") > 0 && Number(m, "cx") < box[2] && Number(m, "cy") > 0 && Number(m, "cy") < box[3]));
        // The highest string on top, as on the drawings; a ring above its dot is a note that was sharper.
        var (string1, frets) = (table.Strings[^1], design.Definition.Frets);
        var (rings, dots) = (marks.Skip(2).Take(frets).ToList(), marks.Skip(2 + frets).Take(frets).ToList());
        for (var i = 0; i < frets; i++) Assert.Equal(string1.Before[i] > string1.After[i], Number(rings[i], "cy") < Number(dots[i], "cy"));
    }

    private static double Number(XElement e, string name) => double.Parse(e.Attribute(name)!.Value, System.Globalization.CultureInfo.InvariantCulture);
}
