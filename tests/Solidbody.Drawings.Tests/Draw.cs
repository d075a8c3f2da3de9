using System.Globalization;
using System.Text;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Drawings.Tests;

/// <summary>Drawings written in a line, and what reading them gives.</summary>
internal static class Draw
{
    public static DrawingFile File(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));

    /// <summary>A page on which one unit is one millimetre.</summary>
    public static string Page(string shapes) => $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1000mm\" height=\"1000mm\" viewBox=\"0 0 1000 1000\">\n{shapes}\n</svg>";

    public static Result<Drawing> Svg(string shapes, DrawingWish? wish = null) => DrawingReader.Read(File("a.svg", Page(shapes)), wish ?? new());

    public static Result<Drawing> Path(string d) => Svg($"<path d=\"{d}\"/>");

    /// <summary>A DXF in millimetres; groups are written code, value, code, value.</summary>
    public static Result<Drawing> Dxf(string entities, DrawingWish? wish = null, string blocks = "") => DrawingReader.Read(File("a.dxf", DxfText(entities, "4", blocks)), wish ?? new());

    public static string DxfText(string entities, string? units, string blocks = "") => Groups(
        $"0 SECTION 2 HEADER {(units is null ? "" : $"9 $INSUNITS 70 {units} ")}0 ENDSEC 0 SECTION 2 BLOCKS {blocks} 0 ENDSEC 0 SECTION 2 ENTITIES {entities} 0 ENDSEC 0 EOF");

    /// <summary>Words on lines of their own.</summary>
    public static string Groups(string words) => string.Join('\n', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)) + "\n";

    public static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    public static Loop Only(this Result<Drawing> read)
    {
        Assert.True(read.IsGood, string.Join("\n", read.Mistakes));
        return Assert.Single(read.Good.Loops).Loop;
    }

    /// <summary>Chords cut off at most the flattening tolerance times the length.</summary>
    public static void HasArea(this Loop loop, double expected) => Assert.InRange(loop.SignedArea, expected - Tolerances.Flattening * loop.Perimeter, expected + Tolerances.Flattening * loop.Perimeter);

    public static Mistake Mistake(this Result<Drawing> read, string says)
    {
        Assert.False(read.IsGood);
        Assert.Null(read.Value);
        var found = read.Mistakes.FirstOrDefault(m => m.Wrong.Contains(says, StringComparison.Ordinal));
        Assert.True(found is not null, $"\"{says}\" is not among:\n{string.Join("\n", read.Mistakes)}");
        Assert.All([found.File, found.Wrong, found.Allowed, found.Remedy], text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.True(found.Line >= 1 && found.Column >= 1);
        return found;
    }
}
