using CsCheck;
using Solidbody.Instrument;
using Solidbody.Instrument.Files;
using Solidbody.Machining.Making;
using Solidbody.Machining.Planning;
using Solidbody.Programs;

namespace Solidbody.Machining.Tests.Planning;

/// <summary>Laws of every plan, over instruments from file texts and machines of any size.</summary>
public class AnyInstrumentTests
{
    private static readonly Gen<string> Text = Gen.Select(Gen.Int[4, 8], Gen.Int[220, 360], Gen.Bool, (strings, scale, left) =>
        FormattableString.Invariant($"units = \"mm\"\nname = \"any\"\nhand = \"{(left ? "left" : "right")}\"\nstrings = {strings}\nscale = \"{scale / 10.0} in\"\n"))
        .Where(text => Designer.Design(InstrumentFile.Read(text, "any.toml").Good).Parts.Length == 3);   // an outline that cannot be drawn has no plan

    private static Plan PlanOf(string text, double travel)
    {
        var machine = Samples.Machine with { TravelX = travel, TravelY = travel, BedX = travel + 40, BedY = travel + 40 };
        return Planner.Plan(Designer.Design(InstrumentFile.Read(text, "any.toml").Good), Samples.Shop with { Machine = machine });
    }

    [Fact]
    public void A_part_turned_over_lies_on_the_same_dowels_and_all_of_it_is_marked_on_the_bed() => Gen.Select(Text, Gen.Double[500, 1400]).Sample((text, travel) =>
    {
        foreach (var part in PlanOf(text, travel).SetUps.GroupBy(s => s.SetUp.Part))
        {
            var setUps = part.Select(s => s.SetUp).ToList();
            if (part.Key == "fretboard") { Assert.Single(setUps); continue; }
            Assert.Equal(2, setUps.Count);
            foreach (var hole in setUps[0].Registration)
                Assert.True(At(setUps[0], hole).DistanceTo(At(setUps[1], setUps[1].Registration.Single(h => h.Name == hole.Name))) < 1e-9);
            Assert.Equal(2, setUps[0].Registration.Length);
            Assert.Equal(setUps[0].Travel.Plan, setUps[1].Travel.Plan);
        }
    }, iter: 6);

    // The finest passes take nearly all the time and no more room: here they are five times as far apart.
    [Fact]
    public void Every_program_stays_inside_the_travel_of_a_machine_the_plan_fits_and_takes_no_less_than_its_bound() => Gen.Select(Text, Gen.Double[560, 1000]).Sample((text, travel) =>
    {
        var plan = PlanOf(text, travel);
        var tooShort = plan.Findings.Where(f => f.Code is "BED-01" or "BED-02").Select(f => f.Place).ToHashSet();
        var coarse = plan with { SetUps = [.. plan.SetUps.Where(s => !tooShort.Contains(s.SetUp.Part) && !tooShort.Contains(s.SetUp.Name)).Select(s => s with { Operations = [.. s.Operations.Select(Coarse)] })] };
        foreach (var setUp in ProgramMaker.Make(coarse, Samples.Shop, null, CancellationToken.None).SetUps)
            foreach (var program in setUp.Programs)
            {
                var (b, t) = (program.Bounds, setUp.Travel);
                Assert.True(b.X0 >= t.X0 - 1e-6 && b.X1 <= t.X1 + 1e-6 && b.Y0 >= t.Y0 - 1e-6 && b.Y1 <= t.Y1 + 1e-6 && b.Z0 >= t.Z0 - 1e-6 && b.Z1 <= t.Z1 + 1e-6,
                    $"{program.Name}: {b} outside {t}");
                // What no path could do better, this one does not either; and what is said of operations makes up the program.
                Assert.All(program.Operations, o => Assert.True(o.BoundSeconds > 0 && o.BoundSeconds <= o.Seconds, $"{program.Name}, {o.Name}: {o.BoundSeconds} of {o.Seconds} s"));
                Assert.InRange(program.Seconds - program.Operations.Sum(o => o.Seconds), 0, 60);
                Assert.Equal(program.Operations.Select(o => o.Line).Order(), program.Operations.Select(o => o.Line));
            }
    }, iter: 2);

    private static Operation Coarse(Operation o) => o.Work is Work.FinishFace f ? o with { Work = f with { Scallop = 25 * f.Scallop } } : o;

    private static Geometry.Point2 At(SetUp setUp, RegistrationHole hole) => setUp.Placement.ToWork(new(hole.Centre.X, hole.Centre.Y, 0)).Plan;
}
