using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Programs.Tests;

/// <summary>Random packet indexes, as wild as the format allows.</summary>
internal static class Packets
{
    private static readonly Gen<double> Lengths = Gen.OneOf(Gen.Double[-1000, 1000], Gen.Int[-900, 900].Select(i => (double)i), Gen.Const(-0.0));
    private static readonly Gen<double> Sizes = Gen.Double[0.01, 400];
    private static readonly Gen<double> Amounts = Gen.Double[0, 50];
    private static readonly Gen<string> Texts = Gen.OneOf(Gen.Const(""), Gen.Const("⌀6 “up” \\ \"x\" <é> ½\n"), Gen.Char["abc XYZ/{}[],:\t\\\"'<>&+é⌀"].Array[0, 20].Select(c => new string(c)));

    private static readonly Gen<Box3> Boxes =
        from x in Lengths
        from y in Lengths
        from z in Lengths
        from a in Sizes
        from b in Sizes
        from c in Sizes
        select new Box3(x, y, z, x + a, y + b, z + c);

    private static readonly Gen<Cutter> Cutters =
        from kind in Gen.Enum<CutterKind>()
        from name in Texts
        from sizes in Sizes.Array[5]
        from share in Gen.Double[0, 1]
        from angle in Gen.Double[1, 89]
        from flutes in Gen.Int[1, 4]
        from plunges in Gen.Bool
        select new Cutter
        {
            Name = name,
            Kind = kind,
            Diameter = sizes[0],
            FluteLength = sizes[1],
            OverallLength = sizes[2],
            ShankDiameter = sizes[3],
            StickOut = sizes[4],
            Flutes = flutes,
            Angle = kind switch { CutterKind.TaperedBallEnd => angle, CutterKind.Drill => 2 * angle, _ => 0 } * Math.PI / 180,
            TipRadius = share * sizes[0] / 2,
            EdgeRadius = share,
            Plunges = plunges,
        };

    private static Gen<ImmutableArray<T>> Some<T>(Gen<T> gen) => gen.Array[0, 3].Select(a => a.ToImmutableArray());

    private static readonly Gen<OperationEntry> Operations =
        Gen.Select(Texts, Gen.Int[1, 99999], Gen.Double[0, 9000], Gen.Double[0, 1], (n, l, s, k) => new OperationEntry(n, l, s, k * s));

    private static readonly Gen<ProgramEntry> Programs =
        from name in Texts
        from cutter in Cutters
        from speed in Gen.Double[20, 500]
        from feed in Gen.Double[1, 100]
        from seconds in Gen.Double[0, 9000]
        from box in Boxes
        from operations in Some(Operations)
        select new ProgramEntry { File = "", Name = name, Cutter = cutter, SpindleSpeed = speed, Feed = feed, Seconds = seconds, Bounds = box, Operations = operations };

    private static readonly Gen<SetUp> SetUps =
        from part in Texts
        from title in Texts
        from blank in Boxes
        from up in Gen.Enum<Side>()
        from turn in Gen.Double[-7, 7]
        from origin in Lengths.Array[3]
        from clearance in Amounts
        from allowance in Amounts
        from travel in Boxes
        from bed in Boxes
        from keepOuts in Some(Gen.Select(Texts, Boxes, (n, b) => new KeepOut(n, b)))
        from holes in Some(Gen.Select(Texts, Lengths, Lengths, Sizes, Amounts, (n, x, y, d, h) => new RegistrationHole(n, new(x, y), d, h)))
        from tabs in Some(Gen.Select(Lengths, Lengths, Amounts, Lengths, Amounts, (x, y, l, z, h) => new Tab(new(x, y), l, z, z + h)))
        from programs in Some(Programs)
        from before in Some(Texts)
        from after in Some(Texts)
        from checks in Some(Gen.Select(Texts, Gen.Bool, Lengths, Amounts, (w, has, n, t) => new SheetCheck(w, has ? n : null, t)))
        select new SetUp
        {
            Name = "",
            Part = part,
            Title = title,
            Order = 1,
            Blank = blank,
            Placement = new(up, turn, new(origin[0], origin[1], origin[2])),
            Zero = title,
            ClearanceHeight = clearance,
            BedAllowance = allowance,
            Travel = travel,
            Bed = bed.Plan,
            HoldDown = part,
            KeepOuts = keepOuts,
            Registration = holes,
            Tabs = tabs,
            Skin = tabs.IsEmpty ? new(-clearance, allowance) : null,
            Programs = programs,
            Before = before,
            After = after,
            Checks = checks,
        };

    private static readonly Gen<PartResult> Parts =
        from texts in Texts.Array[3]
        from gouge in Amounts
        from leftover in Amounts
        from measures in Some(Gen.Select(Texts, Lengths, Lengths, Amounts, (n, e, m, t) => new MeasureResult(n, e, m, t)))
        select new PartResult { Part = texts[0], DeepestGouge = gouge, DeepestGougeAt = texts[1], MostLeftover = leftover, MostLeftoverAt = texts[2], Measures = measures };

    private static readonly Gen<Finding> Findings =
        from severity in Gen.Enum<Severity>()
        from t in Texts.Array[7]
        select new Finding(t[0], severity, t[1], t[2], t[3], t[4], t[5]) { Title = t[6], OverriddenBecause = severity == Severity.Stops ? t[0] : null };

    public static readonly Gen<PacketIndex> Indexes =
        from texts in Texts.Array[3]
        from setUps in Some(SetUps)
        from parts in Some(Parts)
        from findings in Some(Findings)
        select new PacketIndex
        {
            Instrument = texts[0],
            Shop = texts[1],
            ToolVersion = texts[2],
            SetUps = [.. setUps.Select(Named)],
            Parts = parts,
            Findings = findings,
            Sources = ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal, [KeyValuePair.Create("instrument.toml", new string('a', 64)), KeyValuePair.Create("our shop.toml", new string('0', 64))]),
        };

    /// <summary>A small index with something in every list.</summary>
    public static PacketIndex Example => new()
    {
        Instrument = "Band room six",
        Shop = "School workshop",
        ToolVersion = "0.1.0",
        Sources = ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal, [KeyValuePair.Create("instrument.toml", new string('a', 64)), KeyValuePair.Create("shop.toml", new string('0', 64))]),
        SetUps = [Laid("body-front", 1, Side.Front), Laid("body-back", 2, Side.Back)],
        Parts = [new() { Part = "body", DeepestGouge = 0.012, DeepestGougeAt = "pocket wall", MostLeftover = 0.02, MostLeftoverAt = "rim", Measures = [new("pocket depth", 16, 16.004, 0.1)] }],
        Findings = [new("POCKET-01", Severity.Warns, "body, neck pocket", "6.00 mm", "6.45 mm", "common practice, no source", "take a thinner cutter") { Title = "channel too narrow" }],
    };

    private static SetUp Laid(string name, int order, Side up)
    {
        var drill = new Cutter { Name = "drill 6", Kind = CutterKind.Drill, Diameter = 6, FluteLength = 50, OverallLength = 90, ShankDiameter = 6, Flutes = 2, StickOut = 60, Angle = 118 * Math.PI / 180, Plunges = true };
        ProgramEntry Entry(int i) => new()
        {
            File = string.Create(CultureInfo.InvariantCulture, $"programs/{order - 1}-{i}.nc"),
            Name = "holes",
            Cutter = drill,
            SpindleSpeed = 100,
            Feed = 5,
            Seconds = 90,
            Bounds = new(0, 0, -8, 400, 0, 60),
            Operations = [new("registration", 9, 80, 60)],
        };
        return new()
        {
            Name = string.Create(CultureInfo.InvariantCulture, $"set-up-{order - 1}"),
            Part = "body",
            Title = name,
            Order = order,
            Blank = new(300, -180, -45, 760, 180, 0),
            Placement = new(up, 0, new(-320, 0, up == Side.Front ? 45 : 0)),
            Zero = "first dowel, spoilboard",
            ClearanceHeight = 60,
            BedAllowance = 0.5,
            Travel = new(-100, -300, -10, 500, 300, 90),
            Bed = new(-100, -300, 500, 300),
            HoldDown = "two screws",
            KeepOuts = [new("screw 1", new(-15, -175, 45, -5, -165, 52))],
            Registration = [new("dowel 1", new(320, 0), 6, 8)],
            Tabs = [new(new(500, 150), 10, -45, -42)],
            Skin = new(-45, -44.5),
            Programs = [Entry(0), Entry(1)],
            Before = ["Mark the centre line."],
            After = ["Turn over."],
            Checks = [new("Thickness", 45, 0.4), new("Dowels go in", null, 0)],
        };
    }

    /// <summary>Names and files of its own for each set-up and program.</summary>
    private static SetUp Named(SetUp setUp, int i) => setUp with
    {
        Name = string.Create(CultureInfo.InvariantCulture, $"set-up-{i}"),
        Order = i + 1,
        Programs = [.. setUp.Programs.Select((p, j) => p with { File = string.Create(CultureInfo.InvariantCulture, $"programs/{i}-{j}.nc") })],
    };
}
