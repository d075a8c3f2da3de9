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
        "body.arm_contour.fitted = true\nbody.belly_contour.fitted = true\nbody.edges.front_chamfer = 4\nbody.edges.back_chamfer = 3\nbody.edges.back_chamfer_angle = \"35 deg\"",
        "body.arm_contour.fitted = true\nbody.belly_contour.fitted = true\nbody.edges.front_chamfer = 4\nbody.edges.back_radius = 4",
        "body.tremolo.fitted = true",
        "hand = \"left\"\nbody.tremolo.fitted = true\nbody.arm_contour.fitted = true\n[[body.pickups]]\nname = \"bridge pickup\"\ncentre = 596\nsize = \"double\"",
    ];

    /// <summary>Cuts a chamfer of 45° in one pass; others are followed by a ball-end.</summary>
    private const string Cone = """
        [[cutters]]
        name = "V45"
        kind = "tapered ball-end"
        diameter = 16
        angle = "45 deg"
        tip_radius = 0.5
        flute_length = 9
        overall_length = 50
        shank = 8
        flutes = 2
        stick_out = 25

        """;

    [Theory, MemberData(nameof(Choices))]
    public void They_are_made_and_proved(string choice)
    {
        var rack = File.ReadAllText(Path.Combine(Repository.Root, "examples", "school-shop.toml")).Replace("[hold_downs]", Cone + "[hold_downs]", StringComparison.Ordinal);
        var shop = ShopFile.Read(rack, "shop.toml").Good;
        var design = Designer.Design(InstrumentFile.Read($"units = \"mm\"\nname = \"any\"\nscale = 635\n{choice}\n", "any.toml").Good);
        var body = design with { Parts = [design.Part("body")] };
        var plan = Planner.Plan(body, shop);
        var made = ProgramMaker.Make(plan, shop, null, TestContext.Current.CancellationToken);
        var proof = Prover.Prove(body, made.SetUps, made.Texts, ProofSettings.For(shop.Machine) with { Cell = Job.Coarse }, null, TestContext.Current.CancellationToken);
        ImmutableArray<Finding> all = [.. design.Findings, .. plan.Findings, .. made.Findings, .. proof.Findings];
        Assert.Empty(all.Where(f => f.Severity == Severity.Stops).Select(f => $"{f.Code} {f.Place}: {f.Figure}"));
    }
}
