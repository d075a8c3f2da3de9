using System.Collections.Immutable;
using Solidbody.Drawings;
using Solidbody.Findings;
using Solidbody.Instrument;
using Solidbody.Instrument.Files;
using Solidbody.Machining.Making;
using Solidbody.Machining.Planning;
using Solidbody.Packet;
using Solidbody.Programs;
using Solidbody.Proof;
using Solidbody.Shop;
using Solidbody.Shop.Files;

namespace Solidbody.App;

/// <summary>The two files a person writes, as text.</summary>
/// <param name="Drawings">Where the drawings lie that the instrument file names; null where it can name none.</param>
public sealed record SourceFiles(string InstrumentName, string InstrumentText, string ShopName, string ShopText, IDrawings? Drawings = null);

/// <summary>The definitions both files hold, or every mistake in either.</summary>
public sealed record SourceDefinitions(InstrumentDefinition? Instrument, ShopDefinition? Shop, ImmutableArray<Mistake> Mistakes)
{
    public bool IsGood => Mistakes.IsEmpty;
}

/// <summary>An instrument worked out for a shop, without programs.</summary>
/// <param name="Findings">Of design and plan; those the person overrode carry their reason.</param>
public sealed record WorkedOut(Design Design, Plan Plan, ImmutableArray<Finding> Findings)
{
    /// <summary>Where no part could be drawn there is nothing to go on with: overrides have no say.</summary>
    public static WorkedOut Of(Design design, Plan plan)
    {
        ImmutableArray<Finding> findings = [.. design.Findings, .. plan.Findings];
        return new(design, plan, design.Parts.IsEmpty ? findings : Overriding.Of(findings, design.Definition.Overrides));
    }
}

/// <summary>The main job, arrow by arrow: every command, and later every page, goes this way.</summary>
public static class MainJob
{
    public static SourceDefinitions Read(SourceFiles files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var instrument = InstrumentFile.Read(files.InstrumentText, files.InstrumentName, files.Drawings);
        var shop = ShopFile.Read(files.ShopText, files.ShopName);
        return new(instrument.Value, shop.Value, [.. instrument.Mistakes, .. shop.Mistakes]);
    }

    /// <summary>Parts, fit and plan: everything that can be said before a toolpath is made.</summary>
    public static WorkedOut WorkOut(InstrumentDefinition instrument, ShopDefinition shop)
    {
        var design = Designer.Design(instrument);
        return WorkedOut.Of(design, Planner.Plan(design, shop));
    }

    public static MadePrograms MakePrograms(Plan plan, ShopDefinition shop, IProgress<string>? progress, CancellationToken cancel) =>
        ProgramMaker.Make(plan, shop, progress, cancel);

    /// <summary>Cuts the blanks by the texts and compares; sees set-ups and texts, never the plan.</summary>
    public static ProofResult Prove(Design design, ShopDefinition shop, ImmutableArray<SetUp> setUps, IReadOnlyDictionary<string, string> texts,
        IProgress<string>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return Prover.Prove(design, setUps, texts, ProofSettings.For(shop), progress is null ? null : new Told(progress), cancel);
    }

    /// <summary>The packet's files: programs, sheets, pictures, sources, index.</summary>
    public static ImmutableSortedDictionary<string, byte[]> Print(SourceFiles files, Design design, ShopDefinition shop, MadePrograms made, ProofResult proof,
        ImmutableArray<Finding> findings, IProgress<string>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(shop);
        ArgumentNullException.ThrowIfNull(made);
        var input = new PacketInput
        {
            Design = design,
            ShopName = shop.Name,
            InstrumentText = files.InstrumentText,
            ShopText = files.ShopText,
            SetUps = made.SetUps,
            Texts = made.Texts,
            Proof = proof,
            Findings = findings,
        };
        return PacketMaker.Make(input, progress, cancel);
    }

    private sealed class Told(IProgress<string> progress) : IProgress<ProofProgress>
    {
        public void Report(ProofProgress value) => progress.Report(value.Stage);
    }
}
