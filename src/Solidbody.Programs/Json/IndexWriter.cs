using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Programs.Json;

/// <summary>Writes a packet's index key by key, in the order of docs/packet.md.</summary>
internal sealed class IndexWriter
{
    /// <summary>Decimals kept: lengths to 1e-6 mm (<see cref="Tolerances.Geometry"/>), as speeds and angles; factors of the placement; minutes.</summary>
    private const int Lengths = 6, Factors = 12, Minutes = 4;

    private readonly Utf8JsonWriter _json;

    private IndexWriter(Utf8JsonWriter json) => _json = json;

    public static string Write(PacketIndex index)
    {
        if (index.FormatVersion != PacketFile.FormatVersion)
            throw new ArgumentException($"Format version is {index.FormatVersion}, but {PacketFile.FormatVersion} is the one that can be written.", nameof(index));
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, new() { Indented = true, IndentSize = 2, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
            new IndexWriter(json).Index(index);
        return Encoding.UTF8.GetString(bytes.WrittenSpan) + "\n";
    }

    private void Index(PacketIndex index)
    {
        _json.WriteStartObject();
        _json.WriteNumber("formatVersion", index.FormatVersion);
        _json.WriteString("toolVersion", index.ToolVersion);
        _json.WriteString("instrument", index.Instrument);
        _json.WriteString("shop", index.Shop);
        List("sources", index.Sources, source =>
        {
            File(source.Key);
            _json.WriteString("sha256", source.Value);
        });
        List("setUps", index.SetUps, SetUp);
        List("parts", index.Parts, Part);
        List("findings", index.Findings, Finding);
        _json.WriteEndObject();
    }

    private void SetUp(SetUp setUp)
    {
        _json.WriteString("name", setUp.Name);
        _json.WriteString("part", setUp.Part);
        _json.WriteString("title", setUp.Title);
        _json.WriteNumber("order", setUp.Order);
        Box("blank", setUp.Blank);
        Placement(setUp.Placement);
        _json.WriteString("zero", setUp.Zero);
        Number("clearanceHeight", setUp.ClearanceHeight);
        _json.WriteNumber("bedHeight", 0);
        Number("bedAllowance", setUp.BedAllowance);
        Box("travel", setUp.Travel);
        Row("bed", ("x0", setUp.Bed.X0), ("y0", setUp.Bed.Y0), ("x1", setUp.Bed.X1), ("y1", setUp.Bed.Y1));
        _json.WriteString("holdDown", setUp.HoldDown);
        List("keepOuts", setUp.KeepOuts, keepOut =>
        {
            _json.WriteString("name", keepOut.Name);
            Box("box", keepOut.Box);
        });
        List("registration", setUp.Registration, hole =>
        {
            _json.WriteString("name", hole.Name);
            Number("x", hole.Centre.X);
            Number("y", hole.Centre.Y);
            Number("diameter", hole.Diameter);
            Number("depth", hole.Depth);
        });
        List("tabs", setUp.Tabs, tab =>
        {
            Number("x", tab.At.X);
            Number("y", tab.At.Y);
            Number("length", tab.Length);
            Number("z0", tab.Z0);
            Number("z1", tab.Z1);
        });
        if (setUp.Skin is { } skin) Row("skin", ("z0", skin.Z0), ("z1", skin.Z1));
        else _json.WriteNull("skin");
        List("programs", setUp.Programs, program => Program(program, setUp));
        Texts("before", setUp.Before);
        Texts("after", setUp.After);
        List("checks", setUp.Checks, check =>
        {
            _json.WriteString("what", check.What);
            if (check.Nominal is { } nominal) Number("nominal", nominal);
            else _json.WriteNull("nominal");
            Number("tolerance", check.Tolerance);
        });
    }

    private void Program(ProgramEntry program, SetUp setUp)
    {
        File(program.File);
        _json.WriteString("name", program.Name);
        _json.WriteString("part", setUp.Part);
        _json.WriteString("setUp", setUp.Name);
        _json.WriteStartObject("cutter");
        Cutter(program.Cutter);
        _json.WriteEndObject();
        Number("spindleTurnsPerMinute", program.SpindleSpeed * 60);
        Number("feedMmPerMinute", program.Feed * 60);
        Number("minutes", program.Seconds / 60, Minutes);
        Box("boundingBox", program.Bounds);
        List("operations", program.Operations, operation =>
        {
            _json.WriteString("name", operation.Name);
            _json.WriteNumber("line", operation.Line);
            Number("minutes", operation.Seconds / 60, Minutes);
            Number("boundMinutes", operation.BoundSeconds / 60, Minutes);
        });
    }

    private void Cutter(Cutter cutter)
    {
        _json.WriteString("name", cutter.Name);
        _json.WriteString("kind", PacketWords.CutterKinds.First(k => k.Kind == cutter.Kind).Word);
        Number("diameter", cutter.Diameter);
        Number("fluteLength", cutter.FluteLength);
        Number("overallLength", cutter.OverallLength);
        Number("shankDiameter", cutter.ShankDiameter);
        _json.WriteNumber("flutes", cutter.Flutes);
        Number("stickOut", cutter.StickOut);
        Number("coneAngleDegrees", cutter.Angle * 180 / Math.PI);
        Number("tipRadius", cutter.TipRadius);
        Number("edgeRadius", cutter.EdgeRadius);
        _json.WriteString("material", cutter.Material);
        _json.WriteBoolean("plunges", cutter.Plunges);
    }

    private void Part(PartResult part)
    {
        _json.WriteString("part", part.Part);
        Number("deepestGouge", part.DeepestGouge);
        _json.WriteString("deepestGougeAt", part.DeepestGougeAt);
        Number("mostLeftover", part.MostLeftover);
        _json.WriteString("mostLeftoverAt", part.MostLeftoverAt);
        List("measures", part.Measures, measure =>
        {
            _json.WriteString("name", measure.Name);
            Number("expected", measure.Expected);
            Number("measured", measure.Measured);
            Number("tolerance", measure.Tolerance);
        });
    }

    private void Finding(Finding finding)
    {
        _json.WriteString("code", finding.Code);
        _json.WriteString("severity", PacketWords.Severities.First(s => s.Severity == finding.Severity).Word);
        _json.WriteString("title", finding.Title);
        _json.WriteString("place", finding.Place);
        _json.WriteString("figure", finding.Figure);
        _json.WriteString("limit", finding.Limit);
        _json.WriteString("source", finding.Source);
        _json.WriteString("remedy", finding.Remedy);
        if (finding.OverriddenBecause is { } reason) _json.WriteString("overriddenBecause", reason);
    }

    private void File(string name)
    {
        if (!PacketPath.IsInside(name)) throw new ArgumentException($"File name '{name}' is not {PacketPath.Rule}.", nameof(name));
        _json.WriteString("file", name);
    }

    private void List<T>(string key, IEnumerable<T> items, Action<T> members)
    {
        _json.WriteStartArray(key);
        foreach (var item in items)
        {
            _json.WriteStartObject();
            members(item);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    private void Texts(string key, IEnumerable<string> texts)
    {
        _json.WriteStartArray(key);
        foreach (var text in texts) _json.WriteStringValue(text);
        _json.WriteEndArray();
    }

    private void Box(string key, Box3 box) => Row(key, ("x0", box.X0), ("y0", box.Y0), ("z0", box.Z0), ("x1", box.X1), ("y1", box.Y1), ("z1", box.Z1));

    /// <summary>A small object on one line.</summary>
    private void Row(string key, params ReadOnlySpan<(string Key, double Value)> members)
    {
        var text = new StringBuilder("{ ");
        foreach (var (name, value) in members)
            text.Append(text.Length > 2 ? ", " : "").Append(CultureInfo.InvariantCulture, $"\"{name}\": {Rounded(key, value, Lengths):R}");
        _json.WritePropertyName(key);
        _json.WriteRawValue(text.Append(" }").ToString());
    }

    /// <summary>The 4×4 matrix, one row a line, indented as a member of a set-up. Its last column is a length.</summary>
    private void Placement(Placement placement)
    {
        var matrix = placement.ToMatrix();
        var text = new StringBuilder("[");
        for (var row = 0; row < 16; row += 4)
            text.Append(row == 0 ? "\n        " : ",\n        ").Append(CultureInfo.InvariantCulture,
                $"[{Factor(matrix[row]):R}, {Factor(matrix[row + 1]):R}, {Factor(matrix[row + 2]):R}, {Rounded("placement", matrix[row + 3], Lengths):R}]");
        _json.WritePropertyName("placement");
        _json.WriteRawValue(text.Append("\n      ]").ToString());

        static double Factor(double value) => Rounded("placement", value, Factors);
    }

    private void Number(string key, double value, int decimals = Lengths) => _json.WriteNumber(key, Rounded(key, value, decimals));

    private static double Rounded(string key, double value, int decimals) => double.IsFinite(value)
        ? Math.Round(value, decimals) + 0.0 // −0 becomes 0
        : throw new ArgumentException($"'{key}' is {value}; a packet's numbers are finite.", nameof(value));
}
