using System.Text;
using Solidbody.Drawings;
using Solidbody.Instrument.Files;
using Solidbody.Instrument.Tests.Files;

namespace Solidbody.Instrument.Tests.Drawn;

/// <summary>Drawings that tests lay beside an instrument file.</summary>
internal sealed class Shelf : IDrawings
{
    private readonly Dictionary<string, DrawingFile> files = [];

    public FoundDrawing Find(string name) => files.TryGetValue(name, out var file) ? new(file) : new(null, $"there is no file {name}", "check its name");

    public Shelf With(string name, string text)
    {
        files[name] = new(name, Encoding.UTF8.GetBytes(text));
        return this;
    }

    /// <summary>The pupils' drawing as an SVG, as an old DXF of arcs without a unit, and as a later one of a spline in inches.</summary>
    public static Shelf OfTheSchool => new Shelf()
        .With("school-drawn.svg", Repository.ReadExample("school-drawn.svg"))
        .With("drawn-r12.dxf", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "drawn-r12.dxf")))
        .With("drawn-inches.dxf", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "drawn-inches.dxf")));

    public const string Svg = "drawing = \"school-drawn.svg\"\npick = \"body\"\nturn = \"90 deg\"\ncentre_line = 165\n";

    public static Solidbody.Findings.Result<InstrumentDefinition> Read(string outline, IDrawings? drawings = null, string rest = "") =>
        InstrumentFile.Read($"units = \"mm\"\nname = \"a\"\nscale = 635\n{rest}\n[body.outline]\n{outline}", "a.toml", drawings ?? OfTheSchool);

    public static DrawnOutline Drawn(string outline)
    {
        var read = Read(outline);
        Assert.True(read.IsGood, string.Join("\n", read.Mistakes));
        return read.Good.Body.Drawn!;
    }
}
