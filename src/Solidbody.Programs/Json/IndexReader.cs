using System.Collections.Immutable;
using System.Text.Json;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Programs.Json;

/// <summary>Reads a packet's index key by key, in the order of docs/packet.md.</summary>
internal sealed class IndexReader(MistakeList mistakes)
{
    /// <summary>The least length of a thing that has a size, and the greatest of anything here, mm.</summary>
    private const double Least = 1e-3, Most = 1e5;
    private readonly HashSet<string> _files = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _setUps = new(StringComparer.Ordinal);

    public PacketIndex Read(JsonValue root) => ObjectReader.Read(root, "the index", mistakes, index => new PacketIndex
    {
        FormatVersion = index.Whole("formatVersion", PacketFile.FormatVersion, PacketFile.FormatVersion),
        ToolVersion = index.Text("toolVersion"),
        Instrument = index.Text("instrument"),
        Shop = index.Text("shop"),
        Sources = Sources(index),
        SetUps = index.Objects("setUps", SetUp),
        Parts = index.Objects("parts", Part),
        Findings = index.Objects("findings", Finding),
    });

    private ImmutableSortedDictionary<string, string> Sources(ObjectReader index)
    {
        var sources = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var (file, sum) in index.Objects("sources", source => (File(source), source.Text("sha256", IsSha256, "64 digits 0-9 a-f"))))
            if (file is not null) sources[file] = sum;
        return sources.ToImmutable();
    }

    private SetUp SetUp(ObjectReader setUp)
    {
        var name = setUp.Text("name", t => t.Length > 0 && _setUps.Add(t), "a name of its own for each set-up");
        var part = setUp.Text("part");
        var read = new SetUp
        {
            Name = name,
            Part = part,
            Title = setUp.Text("title"),
            Order = setUp.Whole("order", 1, 1000),
            Blank = setUp.Object("blank", Box),
            Placement = Placement(setUp),
            Zero = setUp.Text("zero"),
            ClearanceHeight = setUp.Number("clearanceHeight", 0, Most),
            BedAllowance = setUp.Number("bedAllowance", 0, Most),
            Travel = setUp.Object("travel", Box),
            Bed = setUp.Object("bed", Rectangle),
            HoldDown = setUp.Text("holdDown"),
            KeepOuts = setUp.Objects("keepOuts", k => new KeepOut(k.Text("name"), k.Object("box", Box))),
            Registration = setUp.Objects("registration", h => new RegistrationHole(h.Text("name"), new(Length(h, "x"), Length(h, "y")), Size(h, "diameter"), h.Number("depth", 0, Most))),
            Tabs = setUp.Objects("tabs", Tab),
            Skin = setUp.ObjectOrNull("skin", Skin),
            Programs = setUp.Objects("programs", p => Program(p, name, part)),
            Before = setUp.Texts("before"),
            After = setUp.Texts("after"),
            Checks = setUp.Objects("checks", c => new SheetCheck(c.Text("what"), c.NumberOrNull("nominal"), c.Number("tolerance", 0, Most))),
        };
        setUp.Number("bedHeight", 0, 0);
        return read;
    }

    private ProgramEntry Program(ObjectReader program, string setUp, string part)
    {
        program.Text("setUp", t => t == setUp, $"the set-up it stands in, '{setUp}'");
        program.Text("part", t => t == part, $"its set-up's part, '{part}'");
        return new()
        {
            File = File(program),
            Name = program.Text("name"),
            Cutter = program.Object("cutter", Cutter),
            SpindleSpeed = program.Number("spindleTurnsPerMinute", 1, 100_000) / 60,
            Feed = program.Number("feedMmPerMinute", 0, 100_000) / 60,
            Seconds = program.Number("minutes", 0, 100_000) * 60,
            Bounds = program.Object("boundingBox", Box),
            Operations = program.Objects("operations", Operation),
        };
    }

    private static OperationEntry Operation(ObjectReader operation)
    {
        var read = new OperationEntry(operation.Text("name"), operation.Whole("line", 1, 100_000_000),
            operation.Number("minutes", 0, 100_000) * 60, operation.Number("boundMinutes", 0, 100_000) * 60);
        if (read.BoundSeconds > read.Seconds) operation.Tell("boundMinutes", "'boundMinutes' is more than 'minutes'", "at most the minutes planned");
        return read;
    }

    private static Cutter Cutter(ObjectReader cutter)
    {
        var read = new Cutter
        {
            Name = cutter.Text("name"),
            Kind = cutter.Word("kind", PacketWords.CutterKinds),
            Diameter = Size(cutter, "diameter"),
            FluteLength = Size(cutter, "fluteLength"),
            OverallLength = Size(cutter, "overallLength"),
            ShankDiameter = Size(cutter, "shankDiameter"),
            Flutes = cutter.Whole("flutes", 1, 20),
            StickOut = Size(cutter, "stickOut"),
            Angle = cutter.Number("coneAngleDegrees", 0, 180) * Math.PI / 180,
            TipRadius = cutter.Number("tipRadius", 0, Most),
            EdgeRadius = cutter.Number("edgeRadius", 0, Most),
            Material = cutter.Text("material"),
            Plunges = cutter.Flag("plunges"),
        };
        if (read.TipRadius > read.Radius + Tolerances.Geometry) cutter.Tell("tipRadius", "'tipRadius' is larger than the cutter", "at most half the diameter");
        if (read.Kind == CutterKind.TaperedBallEnd && !(read.Angle > 0 && read.Angle < Math.PI / 2))
            cutter.Tell("coneAngleDegrees", "a tapered ball-end without a cone", "above 0 and below 90 degrees, from the axis to the side");
        return read;
    }

    private static PartResult Part(ObjectReader part) => new()
    {
        Part = part.Text("part"),
        DeepestGouge = part.Number("deepestGouge", 0, Most),
        DeepestGougeAt = part.Text("deepestGougeAt"),
        MostLeftover = part.Number("mostLeftover", 0, Most),
        MostLeftoverAt = part.Text("mostLeftoverAt"),
        Measures = part.Objects("measures", m => new MeasureResult(m.Text("name"), m.Number("expected"), m.Number("measured"), m.Number("tolerance", 0, Most))),
    };

    private static Finding Finding(ObjectReader finding) => new(finding.Text("code"), finding.Word("severity", PacketWords.Severities), finding.Text("place"),
        finding.Text("figure"), finding.Text("limit"), finding.Text("source"), finding.Text("remedy"))
    { Title = finding.Text("title"), OverriddenBecause = finding.TextIfGiven("overriddenBecause") };

    private static Tab Tab(ObjectReader tab)
    {
        var read = new Tab(new(Length(tab, "x"), Length(tab, "y")), tab.Number("length", 0, Most), Length(tab, "z0"), Length(tab, "z1"));
        if (read.Z0 > read.Z1) tab.Tell("z1", "'z1' lies below 'z0'", "z0 ≤ z1");
        return read;
    }

    private static Skin Skin(ObjectReader skin)
    {
        var read = new Skin(Length(skin, "z0"), Length(skin, "z1"));
        if (read.Z0 > read.Z1) skin.Tell("z1", "'z1' lies below 'z0'", "z0 ≤ z1");
        return read;
    }

    private static Box3 Box(ObjectReader box)
    {
        var read = new Box3(Length(box, "x0"), Length(box, "y0"), Length(box, "z0"), Length(box, "x1"), Length(box, "y1"), Length(box, "z1"));
        if (read.X0 > read.X1 || read.Y0 > read.Y1 || read.Z0 > read.Z1) box.Tell("x0", "a box turned inside out", "x0 ≤ x1, y0 ≤ y1, z0 ≤ z1");
        return read;
    }

    private static Box2 Rectangle(ObjectReader box)
    {
        var read = new Box2(Length(box, "x0"), Length(box, "y0"), Length(box, "x1"), Length(box, "y1"));
        if (read.IsEmpty) box.Tell("x0", "a rectangle turned inside out", "x0 ≤ x1, y0 ≤ y1");
        return read;
    }

    private static Placement Placement(ObjectReader setUp)
    {
        var rows = setUp.Items("placement", row => row.Kind == JsonTokenType.StartArray ? row.Items : []);
        var numbers = rows.Where(r => r.Count == 4 && r.All(v => v.Kind == JsonTokenType.Number)).SelectMany(r => r).Select(v => v.Number).ToArray();
        try
        {
            if (rows.Length == 4 && numbers.Length == 16) return Geometry.Placement.FromMatrix(numbers);
        }
        catch (ArgumentException) { } // told below, with its place
        setUp.Tell("placement", "'placement' is not a level placement", "4 rows of 4 numbers: a turn about Z, a flip or none, a shift; no stretch, tilt or mirror");
        return default;
    }

    /// <summary>A file name inside the packet that no other entry has.</summary>
    private string File(ObjectReader entry)
    {
        var file = entry.Text("file", PacketPath.IsInside, PacketPath.Rule);
        if (file.Length > 0 && !_files.Add(file)) entry.Tell("file", $"file '{file}' stands twice", "each file once");
        return file;
    }

    private static double Length(ObjectReader owner, string key) => owner.Number(key, -Most, Most);

    private static double Size(ObjectReader owner, string key) => owner.Number(key, Least, Most);

    private static bool IsSha256(string text) => text.Length == 64 && text.All(c => c is >= '0' and <= '9' or >= 'a' and <= 'f');
}
