using System.Collections.Immutable;
using CsCheck;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Machining.Making;
using Solidbody.Machining.Planning;
using Solidbody.Proof;
using Solidbody.Shop;
using Solidbody.Shop.Files;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>Carved zones of planed faces, from the part to the proof, on blocks nobody drew.</summary>
public sealed class CarvedZoneTests
{
    private const double Length = 180, Width = 90, Thickness = 30;
    private static readonly ShopDefinition Shop = ShopFile.Read(AnyInstrument.LargeShop, "shop.toml").Good;

    /// <summary>In front a plane falls away beyond a line, as a headstock does; behind, a corner is taken off in a curve that begins without a slope, as a contour does.</summary>
    private sealed record Fall(double At, double Tan) : IHeight
    {
        public double Z(double x, double y) => Math.Min(0, (x - At) * Tan);
    }

    private sealed record Corner(double At, double Radius) : IHeight
    {
        private double Into(double x, double y) => Math.Max(0, (x + y) / Math.Sqrt(2) - At);
        public double Z(double x, double y) => -Thickness + Into(x, y) * Into(x, y) / (2 * Radius);
    }

    private static Part Block(double at, double degrees, double corner, double turn)
    {
        var front = new Fall(at, Math.Tan(double.DegreesToRadians(degrees)));
        var back = new Corner(corner, 40);
        return new()
        {
            Name = "body",
            Wood = "red-alder",
            Outline = new(Shapes.Rectangle(new(0, 0), Length, Width, 12, turn)),
            Front = front,
            Back = back,
            FrontFinish = FaceFinish.AsPlaned,
            BackFinish = FaceFinish.AsPlaned,
            Bounds = new(-Length / 2 - 5, -Width / 2 - 10, -Thickness, Length / 2 + 5, Width / 2 + 10, 0),
            CarvedZones =
            [
                new("falling face", Side.Front, new(Shapes.Rectangle(new(at - 100, 0), 200, 200))),
                new("corner", Side.Back, new(Shapes.Rectangle((corner + 100) * Point2.Polar(Math.PI / 4), 200, 400, 0, Math.PI / 4))),
            ],
            Pockets = [new("room", Side.Front, new(Shapes.Rectangle(new(at, 0), 30, 24, 6.5)), new LevelHeight(-12))],
            Measures = [new("fall", front.Tan * 30, 0.1, new Caliper.DepthFromTop(new(at - 30, 20), 0))],
        };
    }

    private static ImmutableArray<Finding> Stops(Part part, out ImmutableArray<string> operations)
    {
        var design = new Design(Job.Example.Worked.Design.Definition, [part], []);
        var plan = Planner.Plan(design, Shop);
        operations = [.. plan.SetUps.SelectMany(s => s.Operations).Select(o => o.Name)];
        if (plan.Findings.Any(f => f.Severity == Severity.Stops)) return [.. plan.Findings.Where(f => f.Severity == Severity.Stops)];
        var made = ProgramMaker.Make(plan, Shop, null, TestContext.Current.CancellationToken);
        var proof = Prover.Prove(design, made.SetUps, made.Texts, ProofSettings.For(Shop.Machine) with { Cell = Job.Coarse }, null, TestContext.Current.CancellationToken);
        return [.. made.Findings.Concat(proof.Findings).Where(f => f.Severity == Severity.Stops)];
    }

    public static TheoryData<int> Numbers => [.. Enumerable.Range(8, 5)];
    private static readonly Gen<Part> Any = Gen.Select(Gen.Double[-30, 20], Gen.Double[3, 12], Gen.Double[50, 70], Gen.Double[-0.06, 0.06]).Select(Block);

    [Theory, MemberData(nameof(Numbers))]
    public void A_block_with_carved_zones_is_made_and_proved(int number)
    {
        var stops = Stops(Any.Generate(new PCG(1, (ulong)number), null, out _), out var operations);
        Assert.True(stops.IsEmpty, string.Join("\n", stops.Select(f => $"{f.Code} {f.Place}: {f.Figure}")));
        Assert.Contains("falling face", operations);
        Assert.Contains("corner", operations);
    }

    [Theory] // A step down into the zone, and a zone that rises out of a hollow: neither is carved.
    [InlineData(5)]
    [InlineData(-10)]
    public void A_zone_that_does_not_run_out_is_refused(double beyond)
    {
        var part = Block(0, 8, 60, 0);
        var zone = part.CarvedZones[0] with { Region = new(Shapes.Rectangle(new(beyond - 100, 0), 200, 200)) };
        Assert.Contains(Stops(part with { CarvedZones = [zone, part.CarvedZones[1]], Front = beyond > 0 ? new Hill() : part.Front }, out _), f => f.Code == "PLAN-04");
    }

    private sealed record Hill : IHeight
    {
        public double Z(double x, double y) => x < 5 ? -0.2 * (x - 5) : 0;
    }
}
