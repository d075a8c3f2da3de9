using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Balance;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Buying;
using Solidbody.Instrument.Checks;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Seasons;
using Solidbody.Instrument.Walls;

namespace Solidbody.Instrument.Playing;

/// <summary>Works out how the instrument plays, holds and hangs: each question in a file of its own, asked here in order.</summary>
internal static class Play
{
    /// <param name="d">The definition.</param>
    /// <param name="parts">Body, neck, fretboard, right-handed.</param>
    public static (Figures Figures, ImmutableArray<Finding> Findings) Of(InstrumentDefinition d, ImmutableArray<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(d);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var lays = StringLay.Of(d);
        var (heights, height) = StringHeight.Of(d, lays);
        var (intonation, intoned) = Intonation.Of(d, lays);
        var strings = StringTension.All(d);
        var retunings = Retuning.All(d, strings);
        var glued = CoreAndWings.Of(d, parts[0], parts[1]);
        var scarf = ScarfJoint.Of(d, parts[1], glued?.Core.Bounds.X1 ?? NeckJoint.Of(d).HeelEnd);
        var woods = glued?.Woods(d, parts, scarf) ?? PartWood.Of(d, parts);
        var (movement, balance, bill) = (Movement.Of(d, woods), WeightBalance.Of(d, woods), WoodBill.Of(d, woods));
        var figures = Figures.None with
        {
            BodyWalls = WallFinder.Of(parts[0]),
            Bindings = BodyBinding.Of(d, parts[0].Outline),
            Covers = CoverChecks.Plates(d, parts[0]),
            Tension = strings,
            Feel = Feel.Of(strings),
            Retunings = retunings,
            Bend = NeckBend.Of(d, parts[1], strings, retunings),
            Scarf = scarf,
            NeckScrews = NeckScrewHold.Of(d, strings.IsEmpty ? null : strings.Sum(s => s.Pull.Tension)),
            TenonGlue = d.Neck.Joint == JointKind.Set ? Tenon.GlueArea(d) : null,
            Core = glued?.Figures(d, parts[0], scarf),
            HeadGrain = HeadGrain.Of(d, parts[1]),
            StringPlaces = StringPlace.All(d),
            FretPlaces = FretPlace.All(d),
            Heights = heights,
            Movement = movement,
            Paths = StringPath.Of(d, lays),
            Intonation = intonation,
            Balance = balance,
            WoodBill = bill,
            Reach = Reach.Of(d, parts[0], parts[1].Back),
        };
        findings.AddRange(WallChecks.Of(d, parts[0], figures.BodyWalls));
        findings.AddRange(CoverChecks.Of(d, figures.Covers));
        findings.AddRange(BindingChecks.Of(d, parts[0], figures.Bindings));
        findings.AddRange(TensionChecks.Of(d, strings, retunings));
        findings.AddRange(StrengthChecks.Of(d, strings, figures.Bend));
        findings.AddRange(height);
        findings.AddRange(WoodChecks.Of(d, woods));
        findings.AddRange(MovementChecks.Of(movement));
        findings.AddRange(JointChecks.Of(d, parts[0], figures.NeckScrews));
        findings.AddRange(ThroughChecks.Of(d, parts[0], parts[1], figures.Core));
        findings.AddRange(ScarfChecks.Of(d, figures.Scarf, figures.HeadGrain));
        findings.AddRange(PathChecks.Of(d, figures.Paths));
        findings.AddRange(intoned);
        findings.AddRange(BalanceChecks.Of(d, balance));
        findings.AddRange(ReachChecks.Of(figures.Reach));
        findings.AddRange(bill.Findings);
        return (figures, findings.ToImmutable());
    }
}
