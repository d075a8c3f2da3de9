using System.Collections.Immutable;
using Solidbody.Instrument.Beams;
using Solidbody.Materials;

namespace Solidbody.Instrument.Playing;

/// <summary>What the rod must do to bring the neck from the hollow the strings give it to the one asked for. Negative: it must bend the neck forward.</summary>
/// <param name="Moment">Counter-moment along the rod at once, N mm.</param>
/// <param name="MomentLater">After years, the rod set anew as the wood gives way: wood bent to the hollow asked for then resists with less, and the rod holds what it held no more.</param>
/// <param name="Lever">By which its pull bends the neck, mm: between its two bars, or from the neutral axis to its one.</param>
/// <param name="Capacity">Pull it bears, N.</param>
/// <param name="Stated">Whether its maker states that.</param>
public sealed record RodWork(RodKind Kind, double Moment, double MomentLater, double Lever, double Capacity, bool Stated)
{
    /// <summary>N.</summary>
    public double Pull => Moment / Lever;
    public double PullLater => MomentLater / Lever;

    /// <param name="bent">The neck's line for a curvature.</param>
    /// <param name="hollow">Its hollow.</param>
    /// <param name="relief">Hollow the strings give with the rod slack, mm.</param>
    /// <param name="wanted">Hollow asked for.</param>
    /// <remarks>The hollow is the wood's own moment over its stiffness, which falls by 1 + creep in years: of the strings' moment the wood holds the part wanted / relief,
    /// later wanted / ((1 + creep) relief); the rod holds the rest. Two bars bend each other: an even moment between the rod's ends. One bar pulls at its level: pull × distance from the neutral axis, which changes along the neck; its lever is the even one that does as much.</remarks>
    internal static RodWork Of(RodDefinition rod, NeckSlices cut, ImmutableArray<NeckSlice> slices, Func<Func<NeckSlice, double>, BentLine> bent, Func<BentLine, double> hollow, double relief, double wanted)
    {
        bool Along(NeckSlice s) => s.X >= rod.Start && s.X <= rod.End;
        var perMoment = hollow(bent(s => Along(s) ? 1 / s.Slack.BendingStiffness : 0));
        var lever = rod.Kind == RodKind.DoubleAction ? cut.PairSpacing
            : hollow(bent(s => Along(s) ? (s.Slack.Axis - cut.RodLevel) / s.Slack.BendingStiffness : 0)) / perMoment;
        var stated = rod.Capacity > 0;
        return new(rod.Kind, (relief - wanted) / perMoment, (relief - wanted / (1 + NeckBend.Creep)) / perMoment, lever, stated ? rod.Capacity : NeckIron.RodCapacity(rod.Diameter), stated);
    }
}
