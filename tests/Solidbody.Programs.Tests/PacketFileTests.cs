using System.Text.RegularExpressions;
using CsCheck;
using NJsonSchema;
using Solidbody.Geometry;

namespace Solidbody.Programs.Tests;

/// <summary>packet.json: what is written is read, what is wrong is told with its place, and the schema and the page say the same as the code.</summary>
public partial class PacketFileTests
{
    private static readonly PacketIndex Example = Packets.Example;
    private static readonly string ExampleText = PacketFile.Write(Example);
    private static string Doc(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", name));

    [Fact]
    public void What_is_written_is_read_back() => Packets.Indexes.Sample(index =>
    {
        var read = PacketFile.Read(PacketFile.Write(index), "packet.json");
        Assert.True(read.IsGood, string.Join('\n', read.Mistakes));
        AssertSame(index, read.Good);
    }, iter: 300);

    /// <summary>Texts and counts alike; numbers within the rounding that docs/packet.md states.</summary>
    private static void AssertSame(PacketIndex a, PacketIndex b)
    {
        Assert.Equal((a.Instrument, a.Shop, a.ToolVersion, a.FormatVersion), (b.Instrument, b.Shop, b.ToolVersion, b.FormatVersion));
        Assert.Equal(a.Sources, b.Sources);
        Assert.Equal(a.Findings, b.Findings);
        Assert.Equal(a.SetUps.Length, b.SetUps.Length);
        foreach (var (s, t) in a.SetUps.Zip(b.SetUps))
        {
            Assert.Equal((s.Name, s.Part, s.Title, s.Order, s.Zero, s.HoldDown), (t.Name, t.Part, t.Title, t.Order, t.Zero, t.HoldDown));
            Assert.Equal(s.Before.AsEnumerable(), t.Before);
            Assert.Equal(s.After.AsEnumerable(), t.After);
            Assert.All(s.Placement.ToMatrix().Zip(t.Placement.ToMatrix()), pair => Assert.Equal(pair.First, pair.Second, 1e-6));
            Assert.Equal(s.Placement.Up, t.Placement.Up);
            Assert.Equal(s.Programs.Select(p => (p.File, p.Name, p.Cutter.Name, p.Cutter.Kind, p.Cutter.Material, p.Cutter.Plunges, p.Cutter.Flutes)), t.Programs.Select(p => (p.File, p.Name, p.Cutter.Name, p.Cutter.Kind, p.Cutter.Material, p.Cutter.Plunges, p.Cutter.Flutes)));
            Assert.Equal(s.Checks.Select(c => (c.What, c.Nominal is null)), t.Checks.Select(c => (c.What, c.Nominal is null)));
        }
        var (numbers, again) = (Numbers(a).ToArray(), Numbers(b).ToArray());
        Assert.Equal(numbers.Length, again.Length);
        for (var i = 0; i < numbers.Length; i++) Assert.Equal(numbers[i], again[i], 1e-6);
    }

    /// <summary>Every number of an index; those kept more coarsely (seconds: 1e-4 min) scaled so that 1e-6 is their rounding too.</summary>
    private static IEnumerable<double> Numbers(PacketIndex index)
    {
        foreach (var s in index.SetUps)
        {
            double[] own = [.. Of(s.Blank), .. Of(s.Travel), s.Bed.X0, s.Bed.Y0, s.Bed.X1, s.Bed.Y1, s.ClearanceHeight, s.BedAllowance];
            foreach (var number in own
                .Concat(s.KeepOuts.SelectMany(k => Of(k.Box)))
                .Concat(s.Registration.SelectMany(h => new[] { h.Centre.X, h.Centre.Y, h.Diameter, h.Depth }))
                .Concat(s.Tabs.SelectMany(t => new[] { t.At.X, t.At.Y, t.Length, t.Z0, t.Z1 }))
                .Concat(s.Checks.SelectMany(c => new[] { c.Nominal ?? 0, c.Tolerance }))
                .Concat(s.Programs.SelectMany(p => Of(p.Bounds).Concat([p.SpindleSpeed, p.Feed, p.Seconds / 6000])))
                .Concat(s.Programs.Select(p => p.Cutter).SelectMany(c => new[] { c.Diameter, c.FluteLength, c.OverallLength, c.ShankDiameter, c.StickOut, c.Angle, c.TipRadius, c.EdgeRadius })))
                yield return number;
        }
        foreach (var p in index.Parts)
            foreach (var number in p.Measures.SelectMany(m => new[] { m.Expected, m.Measured, m.Tolerance }).Concat([p.DeepestGouge, p.MostLeftover]))
                yield return number;
    }

    private static double[] Of(Box3 b) => [b.X0, b.Y0, b.Z0, b.X1, b.Y1, b.Z1];

    [Fact]
    public void Writing_what_was_read_gives_the_same_text_but_for_the_last_digit_of_the_placement() => Packets.Indexes.Sample(index =>
    {
        var text = PacketFile.Write(index);
        var again = PacketFile.Write(PacketFile.Read(text, "packet.json").Good);
        Assert.Equal(WithoutPlacement().Replace(text, ""), WithoutPlacement().Replace(again, ""));
        Assert.Equal(text, PacketFile.Write(index));
        Assert.DoesNotContain("\r", text, StringComparison.Ordinal);
    }, iter: 100);

    [GeneratedRegex("\"placement\": \\[.*?\\n      \\]", RegexOptions.Singleline)]
    private static partial Regex WithoutPlacement();

    [Fact] // NJsonSchema 11 reads draft-07's keywords used here (type, properties, required, additionalProperties, enum, pattern, bounds).
    public async Task The_schema_takes_what_is_written_and_refuses_what_is_not()
    {
        var schema = await JsonSchema.FromJsonAsync(Doc("packet.schema.json"), TestContext.Current.CancellationToken);
        Assert.Empty(schema.Validate(ExampleText));
        Packets.Indexes.Sample(index => Assert.Empty(schema.Validate(PacketFile.Write(index))), iter: 5);
        foreach (var (right, wrong) in Wrongs)
            Assert.True(schema.Validate(Spoil(right, wrong)).Count > 0, $"{right} -> {wrong}");
    }

    /// <summary>Replacements, each of which makes the example wrong, for schema and reader alike.</summary>
    private static readonly (string Right, string Wrong)[] Wrongs =
    [
        ("\"formatVersion\": 1", "\"formatVersion\": 2"),
        ("\"formatVersion\": 1", "\"formatVersion\": \"1\""),
        ("\"bedHeight\": 0", "\"bedHeight\": 1"),
        ("\"bedHeight\": 0,", ""),
        ("\"bedHeight\": 0", "\"bedHeight\": 0, \"bedheight\": 0"),
        ("\"minutes\": ", "\"minutes\": -"),
        ("\"boundMinutes\": ", "\"boundMinutes\": -"),
        ("\"line\": 9", "\"line\": 0"),
        ("\"spindleTurnsPerMinute\"", "\"spindleSpeed\""),
        ("\"file\": \"programs/", "\"file\": \"../programs/"),
        ("\"file\": \"programs/", "\"file\": \"/programs/"),
        ("\"file\": \"programs/", "\"file\": \"c:/programs/"),
        ("\"file\": \"programs/", "\"file\": \"a\\\\programs/"),
        ("\"file\": \"programs/", "\"file\": \"a/../../"),
        ("\"sha256\": \"a", "\"sha256\": \"A"),
        ("\"sha256\": \"a", "\"sha256\": \""),
        ("\"severity\": \"", "\"severity\": \"x"),
        ("\"kind\": \"", "\"kind\": \"my"),
        ("\"placement\": [", "\"placement\": [[1, 0, 0, 0],"),
        ("\"order\": 1", "\"order\": 0"),
        ("\"order\": 1", "\"order\": 1.5"),
        ("\"plunges\": ", "\"plunges\": null, \"was\": "),
        ("\"diameter\": ", "\"diameter\": -"),
        ("\"before\": [", "\"before\": [1,"),
    ];

    private static string Spoil(string right, string wrong)
    {
        var at = ExampleText.IndexOf(right, StringComparison.Ordinal);
        Assert.True(at >= 0, right);
        return ExampleText[..at] + wrong + ExampleText[(at + right.Length)..];
    }

    [Fact]
    public void Every_wrong_document_is_refused_with_its_line() => Assert.All(Wrongs, pair =>
    {
        var read = PacketFile.Read(Spoil(pair.Right, pair.Wrong), "packet.json");
        Assert.Null(read.Value);
        Assert.NotEmpty(read.Mistakes);
        var line = ExampleText[..ExampleText.IndexOf(pair.Right, StringComparison.Ordinal)].Count(c => c == '\n') + 1;
        Assert.All(read.Mistakes, m => Assert.InRange(m.Line, 1, line));
        Assert.Contains(read.Mistakes, m => m.Line == line || m.Wrong.Contains("missing", StringComparison.Ordinal));
    });

    public static TheoryData<string, int, int, string> Broken => new()
    {
        { "", 1, 1, "not JSON" },
        { "{", 1, 2, "not JSON" },
        { "{}\n{}", 2, 1, "not JSON" },
        { "{\n  \"formatVersion\": 1,,\n}", 2, 22, "not JSON" },
        { "{ \"é\": 01 }", 1, 9, "not JSON" },
        { "[]", 1, 1, "'the index' is a list" },
        { "null", 1, 1, "'the index' is null" },
        { "{ \"é\": 1, \"x\": 2 }", 1, 3, "key 'formatVersion' is missing" },
        { "{\n  \"shop\": \"\\ud800\"\n}", 2, 11, "not Unicode" },
        { "\u0000\u0001", 1, 1, "not JSON" },
    };

    [Theory, MemberData(nameof(Broken))]
    public void What_is_no_index_is_told_where(string text, int line, int column, string says)
    {
        var read = PacketFile.Read(text, "packet.json");
        Assert.Null(read.Value);
        if (says.Contains("missing", StringComparison.Ordinal))
        {
            Assert.Contains(read.Mistakes, m => m.Wrong == says);
            Assert.Contains(read.Mistakes, m => m is { Line: 1, Column: 11, Wrong: "unknown key 'x'" });
            return;
        }
        var mistake = Assert.Single(read.Mistakes);
        Assert.Equal((line, column), (mistake.Line, mistake.Column));
        Assert.Contains(says, mistake.Wrong, StringComparison.Ordinal);
        Assert.DoesNotContain("LineNumber", mistake.Wrong, StringComparison.Ordinal);
    }

    [Theory] // Things a schema cannot say.
    [InlineData("\"boundMinutes\": 1\n", "\"boundMinutes\": 2\n", "'boundMinutes' is more than 'minutes'")]
    [InlineData("\"file\": \"programs/0-1.nc\"", "\"file\": \"programs/0-0.nc\"", "stands twice")]
    [InlineData("\"name\": \"set-up-1\"", "\"name\": \"set-up-0\"", "'name' is the text \"set-up-0\"")]
    [InlineData("\"setUp\": \"set-up-0\"", "\"setUp\": \"set-up-1\"", "'setUp' is the text \"set-up-1\"")]
    [InlineData("\"placement\": [\n        [", "\"placement\": [\n        [1", "not a level placement")]
    [InlineData("\"blank\": { \"x0\": ", "\"blank\": { \"x0\": 90000, \"y0\": 0, \"z0\": 0, \"x1\": 0, \"y1\": 0, \"z1\": 0 }, \"was\": { \"x0\": ", "turned inside out")]
    [InlineData("\"order\": 1", "\"order\": 1, \"order\": 1", "stands twice")]
    [InlineData("\"clearanceHeight\": ", "\"clearanceHeight\": 1e999, \"was\": ", "too large")]
    public void Contradictions_are_told(string right, string wrong, string says) =>
        Assert.Contains(PacketFile.Read(Spoil(right, wrong), "packet.json").Mistakes, m => m.Wrong.Contains(says, StringComparison.Ordinal));

    [Fact]
    public void A_text_changed_anywhere_is_read_or_told() =>
        Gen.Select(Gen.Int[0, ExampleText.Length - 1], Gen.Int[0, 2], Gen.Char["{}[],:\"0129.-eEtfn\\\u0000é \n"]).Array[1, 3].Sample(changes =>
        {
            var text = ExampleText;
            foreach (var (at, kind, c) in changes)
            {
                var place = Math.Min(at, text.Length - 1);
                text = text[..place] + (kind == 1 ? "" : c) + text[(kind == 0 ? place + 1 : Math.Min(place + kind, text.Length))..];
            }
            var read = PacketFile.Read(text, "packet.json");
            Assert.Equal(read.IsGood, read.Value is not null);
            Assert.All(read.Mistakes, m => Assert.True(m.Line >= 1 && m.Column >= 1));
        }, iter: 1000);

    [Theory]
    [InlineData("programs/a.nc", true)]
    [InlineData("our shop.toml", true)]
    [InlineData("", false)]
    [InlineData(".", false)]
    [InlineData("..", false)]
    [InlineData("a/../b", false)]
    [InlineData("/etc", false)]
    [InlineData("a//b", false)]
    [InlineData("a/", false)]
    [InlineData("c:x", false)]
    [InlineData("a\\b", false)]
    [InlineData("a\nb", false)]
    [InlineData("a./b", false)]
    [InlineData(" a", false)]
    public void Only_names_inside_the_folder_are_files(string path, bool inside) => Assert.Equal(inside, PacketPath.IsInside(path));

    [Fact]
    public void What_cannot_be_an_index_is_not_written()
    {
        Assert.Throws<ArgumentException>(() => PacketFile.Write(Example with { FormatVersion = 2 }));
        Assert.Throws<ArgumentException>(() => PacketFile.Write(Example with { SetUps = [Example.SetUps[0] with { ClearanceHeight = double.NaN }] }));
        Assert.Throws<ArgumentException>(() => PacketFile.Write(Example with { Sources = Example.Sources.Add("../x", "") }));
    }

    [Fact]
    public void The_page_and_the_schema_name_every_key_that_is_written()
    {
        var keys = Keys().Matches(ExampleText).Select(m => m.Groups[1].Value).Distinct().ToArray();
        Assert.True(keys.Length > 60, string.Join(' ', keys));
        var (page, schema) = (Doc("packet.md"), Doc("packet.schema.json"));
        Assert.All(keys, key =>
        {
            Assert.Contains($"`{key}`", page, StringComparison.Ordinal);
            Assert.Contains($"\"{key}\": {{", schema, StringComparison.Ordinal);
        });
    }

    [GeneratedRegex("(?:^ *|[{,] )\"([A-Za-z0-9]+)\": ", RegexOptions.Multiline)]
    private static partial Regex Keys();
}
