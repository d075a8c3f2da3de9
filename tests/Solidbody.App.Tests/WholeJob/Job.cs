using System.Collections.Immutable;
using Solidbody.Drawings;
using Solidbody.Findings;
using Solidbody.Machining.Making;
using Solidbody.Programs;
using Solidbody.Proof;
using Solidbody.Shop;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>One run of the main job, in process, from two texts to the proof.</summary>
internal sealed record Job(SourceFiles Files, ShopDefinition Shop, WorkedOut Worked, MadePrograms Made, ProofResult Proof)
{
    /// <summary>The school workshop's six-string, made and proved once for every test that looks at it.</summary>
    public static Job Example => Six.Value;
    /// <summary>The same for its left-handed player.</summary>
    public static Job LeftHanded => Left.Value;

    private static readonly Lazy<Job> Six = new(() => Of("school-six.toml"));
    private static readonly Lazy<Job> Left = new(() => Of("school-six-left.toml"));

    public static string ExamplePath(string name) => Path.Combine(Repository.Root, "examples", name);
    public static IDrawings ExampleDrawings { get; } = new DrawingsBeside(ExamplePath("any.toml"));
    public static string ExampleText(string name) => File.ReadAllText(ExamplePath(name));

    private static Job Of(string instrument) => Of(ExampleText(instrument), ExampleText("school-shop.toml"));

    /// <summary>Runs the job up to its end, or to the first arrow that stops; later results are then empty.</summary>
    public static Job Of(string instrumentText, string shopText, double? cell = null)
    {
        var files = new SourceFiles("instrument.toml", instrumentText, "shop.toml", shopText, ExampleDrawings);
        var read = MainJob.Read(files);
        Assert.True(read.IsGood, string.Join("\n", read.Mistakes));
        var shop = read.Shop!;
        var worked = MainJob.WorkOut(read.Instrument!, shop);
        var made = Stops(worked.Findings) ? new([], ImmutableSortedDictionary<string, string>.Empty, []) : MainJob.MakePrograms(worked.Plan, shop, null, Cancel);
        var proof = Stops(worked.Findings) || Stops(made.Findings) ? new([], [], [])
            : Prover.Prove(worked.Design, made.SetUps, made.Texts, ProofSettings.For(shop.Machine) with { Cell = cell }, null, Cancel);
        return new(files, shop, worked, made, proof);
    }

    public ImmutableArray<Finding> Findings => [.. Worked.Findings, .. Made.Findings, .. Proof.Findings];
    public IEnumerable<Finding> Stopping => Findings.Where(f => f.Severity == Severity.Stops);

    /// <summary>The packet's files, as the main job would write them.</summary>
    public ImmutableSortedDictionary<string, byte[]> Packet() => MainJob.Print(Files, Worked.Design, Shop, Made, Proof, Findings, null, Cancel);

    /// <summary>Side of a column, mm, where a proof only has to find one damage: what is past a limit is looked at again, finely.</summary>
    public const double Coarse = 0.3;

    /// <summary>Proves one part again, coarsely, its set-ups or texts changed.</summary>
    public ProofResult ProveAgain(string part, Func<SetUp, SetUp>? change = null, IReadOnlyDictionary<string, string>? texts = null)
    {
        var setUps = Made.SetUps.Where(s => s.Part == part).Select(change ?? (s => s)).ToImmutableArray();
        var own = setUps.SelectMany(s => s.Programs).ToDictionary(p => p.File, p => (texts ?? Made.Texts)[p.File]);
        return Prover.Prove(Worked.Design with { Parts = [Worked.Design.Part(part)] }, setUps, own, ProofSettings.For(Shop.Machine) with { Cell = Coarse }, null, Cancel);
    }

    /// <summary>The program of a set-up that does an operation, with its motions as read back from its text.</summary>
    public (SetUp SetUp, ProgramEntry Entry, ReadProgram Read) ProgramWith(string setUp, string operation)
    {
        var own = Made.SetUps.Single(s => s.Name == setUp);
        var entry = own.Programs.FirstOrDefault(p => p.Operations.Any(o => o.Name == operation)) ?? own.Programs.First(p => p.Operations.Any(o => o.Name.Contains(operation, StringComparison.Ordinal)));
        return (own, entry, ProgramReader.Read(Made.Texts[entry.File], entry.File).Good);
    }

    private static bool Stops(IEnumerable<Finding> findings) => findings.Any(f => f.Severity == Severity.Stops);
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;
}
