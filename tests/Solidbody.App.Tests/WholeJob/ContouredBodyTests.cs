using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument;
using Solidbody.Instrument.Files;
using Solidbody.Machining.Making;
using Solidbody.Machining.Planning;
using Solidbody.Proof;
using Solidbody.Shop.Files;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>Bodies with contours, and with rooms that meet from both faces, from the file to the proof.</summary>
public sealed class ContouredBodyTests
{
    public static TheoryData<string> Choices =>
    [
        "body.arm_contour.fitted = true\nbody.belly_contour.fitted = true",
        "body.tremolo.fitted = true",
        "hand = \"left\"\nbody.tremolo.fitted = true\nbody.arm_contour.fitted = true\n[[body.pickups]]\nname = \"bridge pickup\"\ncentre = 596\nsize = \"double\"",
    ];

    [Theory, MemberData(nameof(Choices))]
    public void They_are_made_and_proved(string choice)
    {
        var shop = ShopFile.Read(File.ReadAllText(Path.Combine(Repository.Root, "examples", "school-shop.toml")), "shop.toml").Good;
        var design = Designer.Design(InstrumentFile.Read($"units = \"mm\"\nname = \"any\"\nscale = 635\n{choice}\n", "any.toml").Good);
        var body = design with { Parts = [design.Part("body")] };
        var plan = Planner.Plan(body, shop);
        var made = ProgramMaker.Make(plan, shop, null, TestContext.Current.CancellationToken);
        var proof = Prover.Prove(body, made.SetUps, made.Texts, ProofSettings.For(shop.Machine) with { Cell = Job.Coarse }, null, TestContext.Current.CancellationToken);
        ImmutableArray<Finding> all = [.. design.Findings, .. plan.Findings, .. made.Findings, .. proof.Findings];
        Assert.Empty(all.Where(f => f.Severity == Severity.Stops).Select(f => $"{f.Code} {f.Place}: {f.Figure}"));
    }
}
