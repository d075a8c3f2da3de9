using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Balance;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Buying;
using Solidbody.Instrument.Checks;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Playing;
using Solidbody.Instrument.Seasons;
using Solidbody.Instrument.Walls;

namespace Solidbody.Instrument.Bought;

/// <summary>What is made when the other half exists already: the body alone, or neck and fretboard alone. What hangs on the other half's wood or section is not worked out.</summary>
/// <param name="Parts">Right-handed.</param>
internal sealed record Alone(ImmutableArray<Part> Parts, Figures Figures, ImmutableArray<Finding> Findings)
{
    /// <summary>A body for a bought neck.</summary>
    public static Alone Body(InstrumentDefinition d, BodyPlan plan, BoughtNeck bought)
    {
        var (body, wires) = BodyMaker.Make(d, plan);
        var (figures, playing) = Shared(d, [body]);
        figures = figures with { BodyWalls = WallFinder.Of(body), Covers = CoverChecks.Plates(d, body), Bindings = BodyBinding.Of(d, body.Outline), Reach = Reach.Of(d, body, null) };
        return new([body], figures,
        [
            // The bought board as measured: nobody makes it, but strings run over it and pickups lie before it.
            .. BoughtNeckChecks.Fit(d, bought), .. StringChecks.Of(d), .. OverhangChecks.Of(d, FretboardMaker.Make(d)),
            .. PocketChecks.Of(d, body), .. BodyChecks.Of(d, body), .. wires,
            .. WallChecks.Of(d, body, figures.BodyWalls), .. CoverChecks.Of(d, figures.Covers), .. BindingChecks.Of(d, body, figures.Bindings), .. ReachChecks.Of(figures.Reach), .. playing,
        ]);
    }

    /// <summary>Neck and fretboard for a bought body.</summary>
    public static Alone Neck(InstrumentDefinition d, NeckProfile profile, BoughtBody bought)
    {
        var (headstock, back) = (NeckMaker.Headstock(d), NeckMaker.Back(d, profile));
        var (neck, board) = (NeckMaker.Make(d, back, headstock), FretboardMaker.Make(d));
        var (figures, playing) = Shared(d, [neck, board]);
        figures = figures with { Bend = NeckBend.Of(d, neck, figures.Tension, figures.Retunings), Scarf = ScarfJoint.Of(d, neck, NeckJoint.Of(d).HeelEnd), HeadGrain = HeadGrain.Of(d, neck), Paths = StringPath.Of(d, StringLay.Of(d)) };
        return new([neck, board], figures,
        [
            .. BoughtBodyChecks.Of(d, bought),
            .. HeadChecks.Of(d, neck, headstock), .. NeckChecks.Of(d, neck, back, headstock), .. RodAndBarChecks.Of(d, neck, back), .. BoardChecks.Of(d, board), .. FretChecks.Of(d), .. NutChecks.Of(d), .. StringChecks.Of(d),
            .. StrengthChecks.Of(d, figures.Tension, figures.Bend), .. ScarfChecks.Of(d, figures.Scarf, figures.HeadGrain), .. PathChecks.Of(d, figures.Paths), .. playing,
        ]);
    }

    /// <summary>What asks only for strings, heights and wood.</summary>
    private static (Figures Figures, ImmutableArray<Finding> Findings) Shared(InstrumentDefinition d, ImmutableArray<Part> parts)
    {
        var lays = StringLay.Of(d);
        var (heights, height) = StringHeight.Of(d, lays);
        var (intonation, intoned) = Intonation.Of(d, lays);
        var woods = PartWood.Of(d, parts);
        var (strings, movement, bill) = (StringTension.All(d), Movement.Of(d, woods), WoodBill.Of(d, woods));
        var figures = Figures.None with
        {
            Tension = strings,
            Feel = Feel.Of(strings),
            Retunings = Retuning.All(d, strings),
            Heights = heights,
            Intonation = intonation,
            Movement = movement,
            WoodBill = bill,
        };
        return (figures, [.. TensionChecks.Of(d, strings, figures.Retunings), .. height, .. intoned, .. WoodChecks.Of(d, woods), .. MovementChecks.Of(movement), .. bill.Findings]);
    }
}
