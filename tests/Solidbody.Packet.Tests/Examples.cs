using System.Collections.Immutable;
using Solidbody.Instrument;
using Solidbody.Instrument.Files;
using Solidbody.Machining.Planning;
using Solidbody.Packet.Sheets;
using Solidbody.Programs;
using Solidbody.Shop.Files;

namespace Solidbody.Packet.Tests;

/// <summary>The examples' set-ups as the planner lays them out, ready to be printed. Their programs are listed, not made: the sheet asks for no motion.</summary>
internal static class Examples
{
    private static readonly Lazy<ImmutableArray<SheetInput>> SixSheets = new(() => Plan("school-six.toml", shop => shop));
    private static readonly Lazy<ImmutableArray<SheetInput>> LeftSheets = new(() => Plan("school-six-left.toml", shop => shop));
    private static readonly Lazy<ImmutableArray<SheetInput>> BassSheets = new(() => Plan("school-bass.toml", Larger));

    public static SheetInput Sheet(string name)
    {
        var (instrument, order) = (name[..^2], name[^1] - '1');
        return (instrument switch { "six" => SixSheets, "left" => LeftSheets, _ => BassSheets }).Value[order];
    }

    public static Design Six { get; } = Designer.Design(InstrumentFile.Read(Repository.ReadExample("school-six.toml"), "school-six.toml").Good);

    /// <summary>A bed a bass neck finds room on.</summary>
    private static string Larger(string shop) => shop.Replace("= 600", "= 800", StringComparison.Ordinal).Replace("= 640", "= 840", StringComparison.Ordinal);

    private static ImmutableArray<SheetInput> Plan(string file, Func<string, string> changed)
    {
        var design = Designer.Design(InstrumentFile.Read(Repository.ReadExample(file), file).Good);
        var shop = ShopFile.Read(changed(Repository.ReadExample("school-shop.toml")), "school-shop.toml").Good;
        var planned = Planner.Plan(design, shop).SetUps;
        var number = 1;
        return
        [
            .. planned.Select((p, i) => new SheetInput
            {
                SetUp = p.SetUp with { Programs = [.. Runs(p.Operations).Select(run => Entry(p.SetUp, run, number++))] },
                Part = design.Part(p.SetUp.Part), Instrument = design.Definition.Name, Shop = shop.Name, SetUps = planned.Length,
                Sheet = i + 1, Sheets = planned.Length, Proof = "proved, b2 9e 55",
                Previous = i > 0 ? planned[i - 1].SetUp.Title : null, Next = i + 1 < planned.Length ? planned[i + 1].SetUp.Title : null,
                FacesCut = [.. planned.Take(i).Where(s => s.SetUp.Part == p.SetUp.Part).Select(s => s.SetUp.Placement.Up)],
                IsLastOfBlank = !planned.Skip(i + 1).Any(s => s.SetUp.Part == p.SetUp.Part),
            }),
        ];
    }

    /// <summary>Neighbouring operations of one cutter.</summary>
    private static List<List<Operation>> Runs(ImmutableArray<Operation> operations)
    {
        var runs = new List<List<Operation>>();
        foreach (var operation in operations)
            if (runs.Count > 0 && runs[^1][0].Cutter == operation.Cutter) runs[^1].Add(operation);
            else runs.Add([operation]);
        return runs;
    }

    private static ProgramEntry Entry(SetUp setUp, List<Operation> run, int number)
    {
        var name = $"{number:00}-{setUp.Name}-{run[0].Cutter.Name.ToLowerInvariant().Replace('.', '-')}";
        return new()
        {
            File = $"programs/{name}.nc",
            Name = name,
            Cutter = run[0].Cutter,
            SpindleSpeed = run[0].Feeds.SpindleSpeed,
            Feed = 50,
            Seconds = 1234,
            Bounds = new(-200, -200, -12, 500, 500, 60),
            Operations = [.. run.Select((o, i) => new OperationEntry(o.Name, 10 + i, 60, 30))],
        };
    }
}
