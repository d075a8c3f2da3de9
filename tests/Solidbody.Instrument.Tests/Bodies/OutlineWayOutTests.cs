using CsCheck;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Tests.Bodies;

/// <summary>Laws of the ranges that OUTLINE-01 names: inside them the rule holds, just outside them something breaks.</summary>
public class OutlineWayOutTests
{
    /// <summary>The ends are this tight, in the measure's own unit.</summary>
    private const double Tight = 1e-3;

    private static readonly NeckJoint Joint = NeckJoint.Of(Workshop.Guitar);

    /// <summary>The workshop's guitar with three measures anywhere in their ranges: most are broken somewhere.</summary>
    private static readonly Gen<OutlineDefinition> Spoilt = Gen.Select(Gen.Int[0, OutlineMeasure.All.Length - 1].Array[3], Gen.Double[0, 1].Array[3])
        .Select((which, where) => which.Zip(where).Aggregate(Workshop.Guitar.Body.Outline, (o, w) => Set(o, OutlineMeasure.All[w.First], w.Second)));

    private static OutlineDefinition Set(OutlineDefinition o, OutlineMeasure m, double share) => m.With(o, m.Least + share * (m.Most - m.Least));

    [Fact]
    public void The_middle_of_a_range_mends_the_rule_and_breaks_no_other_and_its_ends_are_tight()
    {
        var (broken, mended) = (0, 0);
        Spoilt.Sample(o =>
        {
            var now = BodyOutline.Rules(o, Joint);
            foreach (var i in Enumerable.Range(0, now.Length).Where(i => !now[i].Holds))
            {
                var ways = OutlineWayOut.Of(o, i, m => BodyOutline.Rules(m, Joint));
                Interlocked.Increment(ref broken);
                if (!ways.IsEmpty) Interlocked.Increment(ref mended);
                foreach (var way in ways)
                {
                    var start = way.First is { } f ? f.Measure.With(o, f.Value) : o;
                    bool Helps(double v)
                    {
                        var then = BodyOutline.Rules(way.Measure.With(start, v), Joint);
                        return then.Index().All(r => r.Item.Holds || r.Index != i && !now[r.Index].Holds);
                    }
                    Assert.True(Helps((way.Low + way.High) / 2), $"{now[i].What}: {way.Say()}");
                    Assert.True(way.Low <= way.Measure.Least || !Helps(way.Low - Tight), $"{way.Say()} could begin sooner");
                    Assert.True(way.High >= way.Measure.Most || !Helps(way.High + Tight), $"{way.Say()} could go on");
                }
            }
        }, iter: 40);
        Assert.True(broken > 20 && mended > broken / 2, $"{mended} of {broken} broken rules were given a way out");
    }

    [Fact]
    public void The_finding_names_the_key_and_its_range()
    {
        var spoilt = Workshop.Guitar with { Body = Workshop.Guitar.Body with { Outline = Workshop.Guitar.Body.Outline with { UpperBoutAt = 0.9 } } };
        var found = Fires.OnlyWhenSpoilt("OUTLINE-01", Workshop.Guitar, spoilt);
        Assert.Matches(@"`upper_bout_at` 0\.\d+ to 0\.\d+", found.Remedy);
    }

    /// <summary>Worked out by hand: the waist is to lie 8 mm inside the lower bout, so with equal offsets its width ends 16 mm below the bout's.</summary>
    [Fact]
    public void A_linear_rule_gives_the_range_in_closed_form()
    {
        var o = Shape.Outline("symmetric") with { WaistWidth = 318 };
        var now = BodyOutline.Rules(o, Joint);
        var i = now.Index().First(r => r.Item.What == "waist inside the lower bout").Index;
        var way = Assert.Single(OutlineWayOut.Of(o with { UpperBoutWidth = 400 }, i, m => BodyOutline.Rules(m, Joint)), w => w.Measure.Key == "waist_width");
        Assert.True(way.High <= o.LowerBoutWidth - 16 + 1e-9, way.Say());
    }
}
