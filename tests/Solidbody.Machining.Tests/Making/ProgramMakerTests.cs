using Solidbody.Machining.Making;
using Solidbody.Machining.Planning;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Making;

public class ProgramMakerTests
{
    private static readonly MadePrograms Made = ProgramMaker.Make(Planner.Plan(SampleParts.Design, Samples.Shop), Samples.Shop, null, CancellationToken.None);

    private static IEnumerable<(SetUp SetUp, ProgramEntry Entry, ReadProgram Read)> Programs() =>
        from setUp in Made.SetUps from entry in setUp.Programs select (setUp, entry, ProgramReader.Read(Made.Texts[entry.File], entry.File).Good);

    [Fact]
    public void Every_set_up_has_programs_and_every_program_a_text()
    {
        Assert.All(Made.SetUps, s => Assert.NotEmpty(s.Programs));
        Assert.Equal(Made.Texts.Keys.Order(StringComparer.Ordinal), Made.SetUps.SelectMany(s => s.Programs).Select(p => p.File).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Numbers_run_in_the_order_of_the_work() =>
        Assert.Equal(Enumerable.Range(1, Made.Texts.Count), Made.SetUps.SelectMany(s => s.Programs).Select(p => int.Parse(p.File["programs/".Length..][..2], System.Globalization.CultureInfo.InvariantCulture)));

    [Fact]
    public void Everything_a_text_says_stays_inside_the_travel() => Assert.All(Programs(), p =>
    {
        var travel = p.SetUp.Travel;
        foreach (var m in p.Read.Motions.Where(m => m.Kind != MotionKind.Rapid))
            Assert.True(travel.Plan.Contains(m.To.Plan) && m.To.Z >= travel.Z0 - 1e-6 && m.To.Z <= travel.Z1, $"{p.Entry.File} line {m.Line}: {m.To} outside {travel}");
    });

    [Fact]
    public void The_entrys_bounds_hold_every_cut_of_the_text() => Assert.All(Programs(), p =>
    {
        var bounds = p.Entry.Bounds.Plan.Grown(0.002);
        foreach (var m in p.Read.Motions.Where(m => m.Kind != MotionKind.Rapid)) Assert.True(bounds.Contains(m.To.Plan) && m.To.Z >= p.Entry.Bounds.Z0 - 0.002);
    });

    [Fact]
    public void Below_the_bed_allowance_only_dowel_holes_go() => Assert.All(Programs(), p =>
    {
        foreach (var m in p.Read.Motions.Where(m => m.To.Z < -p.SetUp.BedAllowance - 0.001))
            Assert.Contains(p.SetUp.Registration, h => p.SetUp.Placement.ToWork(new(h.Centre.X, h.Centre.Y, 0)).Plan.DistanceTo(m.To.Plan) < h.Diameter / 2 && m.To.Z >= -h.Depth - 0.001);
    });

    [Fact] // Only the outline, which waits for every other cutter, may bring one back.
    public void A_cutter_comes_back_only_for_the_outline() => Assert.All(Made.SetUps, s =>
    {
        var before = s.Programs.Where(p => !p.Operations.All(o => o.Name.StartsWith("outline", StringComparison.Ordinal))).ToList();
        Assert.Equal(before.Count, before.Select(p => p.Cutter.Name).Distinct().Count());
    });

    [Fact]
    public void The_z_axis_keeps_up_with_every_feed() => Assert.All(Programs(), p =>
    {
        foreach (var m in p.Read.Motions.Where(m => m.Kind != MotionKind.Rapid && m.Length > 0.05))
            Assert.True(Math.Abs(m.To.Z - m.From.Z) / m.Length * m.Feed <= Samples.Machine.FeedMostZ * 1.05);
    });

    [Fact]
    public void Cutters_stay_clear_of_screws() => Assert.All(Programs(), p =>
    {
        foreach (var m in p.Read.Motions.Where(m => m.To.Z < p.SetUp.ClearanceHeight - 0.001))
            foreach (var screw in p.SetUp.KeepOuts)
                Assert.False(screw.Box.Plan.Grown(p.Entry.Cutter.Radius).Contains(m.To.Plan), $"{p.Entry.File} line {m.Line} at {m.To} meets {screw}");
    });

    [Fact]
    public void A_part_point_comes_out_where_the_placement_says()
    {
        // Tuner holes are bored about their own middles: the text's arcs turn about the placed centres.
        var (setUp, _, read) = Programs().First(p => p.SetUp.Name == "neck-front" && p.Entry.Operations.Any(o => o.Name.StartsWith("tuner", StringComparison.Ordinal)));
        foreach (var hole in SampleParts.Neck.Holes)
        {
            var at = setUp.Placement.ToWork(new(hole.Centre.X, hole.Centre.Y, 0)).Plan;
            Assert.Contains(read.Motions, m => m.IsArc && m.Centre.DistanceTo(at) < 0.005);
        }
    }

    [Fact]
    public void Made_again_the_texts_are_the_same_to_the_byte()
    {
        var again = ProgramMaker.Make(Planner.Plan(SampleParts.Design with { Parts = [SampleParts.Body] }, Samples.Shop), Samples.Shop, null, CancellationToken.None);
        Assert.NotEmpty(again.Texts);
        Assert.All(again.Texts, t => Assert.Equal(Made.Texts[t.Key], t.Value));
    }

    [Fact]
    public void A_cancelled_making_stops()
    {
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => ProgramMaker.Make(Planner.Plan(SampleParts.Design, Samples.Shop), Samples.Shop, null, cancel.Token));
    }
}
