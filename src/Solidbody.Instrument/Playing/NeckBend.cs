using System.Collections.Immutable;
using Solidbody.Instrument.Beams;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Checks;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Playing;

/// <summary>How the strings bend the neck, what the rod must do against it, how much the wood bears. Lengths mm, forces N.</summary>
/// <remarks>Cut the neck and the strings square across at x: what is on the nut's side is held by the strings' pull T at their height and by the section. So the section is pressed by ΣT and bent by
/// ΣT·(height of the string above the neutral axis), from the nut to the heel, whatever nut and tuners do. The heel is held fast where it enters the body. The lever is that of the neck with the relief asked for;
/// what further bending changes it by is left out (about a hundredth of it for each 0.1 mm).</remarks>
public sealed record NeckBend
{
    /// <summary>Slices from the nut to the body, evenly.</summary>
    public required ImmutableArray<NeckSlice> Slices { get; init; }
    /// <summary>Bending moment of the strings at each, N mm.</summary>
    public required ImmutableArray<double> Moment { get; init; }
    /// <summary>Lift of each with the rod slack, mm.</summary>
    public required ImmutableArray<double> Lift { get; init; }
    /// <summary>Hollow of the free neck at its middle with the rod slack, at once; and after years slack.</summary>
    public required double Relief { get; init; }
    public required double ReliefLater { get; init; }
    /// <summary>Hollow asked for.</summary>
    public required double Wanted { get; init; }
    public required RodWork Rod { get; init; }
    /// <summary>Least wood under the rod's channel.</summary>
    public required double RodCover { get; init; }
    /// <summary>The hardest worked places.</summary>
    public required ImmutableArray<WoodLoad> Loads { get; init; }
    /// <summary>What another tuning does to the relief.</summary>
    public required ImmutableArray<RetunedRelief> Retuned { get; init; }

    /// <summary>A bent board that stays loaded for years bends this much more: k_def of solid timber indoors (EN 1995-1-1, table 3.2, service class 1; from memory). US practice has 0.5 (NDS 3.5.2, from memory).</summary>
    public const double Creep = 0.6;
    private const int Steps = 40;

    /// <summary>The slice behind the nut is this far beyond the edge of the adjuster's room, mm.</summary>
    private const double IntoRoom = 1;

    /// <summary>Null without strings, or where the stiffness of neck or board is not known.</summary>
    /// <param name="neck">The part, right-handed.</param>
    public static NeckBend? Of(InstrumentDefinition d, Part neck, ImmutableArray<StringTension> strings, ImmutableArray<Retuning> retunings)
    {
        ArgumentNullException.ThrowIfNull(d);
        ArgumentNullException.ThrowIfNull(neck);
        if (strings.IsDefaultOrEmpty || neck.Back is not NeckBack back) return null;
        if (d.WoodOf(d.Neck.Wood)?.Stiffness is not { } neckModulus || d.WoodOf(d.Fretboard.Wood)?.Stiffness is not { } boardModulus) return null;

        var free = NeckJoint.Of(d).ShoulderX;
        var cut = new NeckSlices(d, back, neckModulus.Value, boardModulus.Value);
        ImmutableArray<NeckSlice> slices = [.. Enumerable.Range(0, Steps + 1).Select(k => cut.At(free * k / Steps))];
        var heights = StringLevels(d);
        BentLine Bent(Func<NeckSlice, double> curvature) => new([.. slices.Select(s => s.X)], [.. slices.Select(curvature)]);
        double Hollow(BentLine line) => line.Hollow(0, free, free / 2);

        // A newton of one string hollows the neck by this much, rod slack and rod tight: hollows add.
        var slack = strings.Select((_, i) => Hollow(Bent(s => (heights(i, s.X) - s.Slack.Axis) / s.Slack.BendingStiffness))).ToArray();
        var tight = strings.Select((_, i) => Hollow(Bent(s => (heights(i, s.X) - s.Tight.Axis) / s.Tight.BendingStiffness))).ToArray();
        double MomentAt(NeckSlice s, double x) => strings.Select((t, i) => t.Pull.Tension * (heights(i, x) - s.Slack.Axis)).Sum();
        double By(ImmutableArray<StringTension> pulls, double[] hollow) => pulls.Select((t, i) => t.Pull.Tension * hollow[i]).Sum();

        var relief = By(strings, slack);
        var line = Bent(s => MomentAt(s, s.X) / s.Slack.BendingStiffness);
        var push = strings.Sum(s => s.Pull.Tension);
        var behind = cut.BehindNut(new(neck), (NeckMaker.AccessSpan(d)?.To ?? FretLayout.Of(d).NutBack.Middle) - IntoRoom);
        return new()
        {
            Slices = slices,
            Moment = [.. slices.Select(s => MomentAt(s, s.X))],
            Lift = [.. slices.Select(s => line.At(s.X))],
            Relief = relief,
            ReliefLater = relief * (1 + Creep),
            Wanted = d.Action.Relief,
            Rod = RodWork.Of(d.Neck.Rod, cut, slices, Bent, Hollow, relief, d.Action.Relief),
            RodCover = NeckChecks.LeastCover(d, back).Cover,
            Loads =
            [
                .. WoodLoad.Of(d.WoodOf(d.Neck.Wood)!, d.WoodOf(d.Fretboard.Wood)!, slices, push, s => MomentAt(s, s.X)),
                WoodLoad.Of(d.WoodOf(d.Neck.Wood)!, HeadGrain.Of(d, neck), behind, push, MomentAt(behind, 0)),
            ],
            Retuned = [.. retunings.Select(r => new RetunedRelief(r.Name, By(r.Strings, slack), By(r.Strings, tight) - By(strings, tight)))],
        };
    }

    /// <summary>Middle of a string above the glue plane of the neck as it is bent, at x.</summary>
    private static Func<int, double, double> StringLevels(InstrumentDefinition d)
    {
        var (strings, lays, bent) = (Strings.Of(d), StringLay.Of(d), NeckLine.Of(d) with { FallAway = 0 });
        var frets = d.Fretboard.Thickness + d.Fretboard.FretHeight;
        return (i, x) => frets + lays[i].Nut + (lays[i].Saddle - lays[i].Nut) * (x - strings.Nut(i).X) / lays[i].Length + d.Tuning!.Strings[i].Gauge / 2 - bent.Height(x);
    }
}

/// <param name="Relief">With the rod slack, mm.</param>
/// <param name="Change">Of the relief when the rod is left as it is, mm.</param>
public sealed record RetunedRelief(string Name, double Relief, double Change);
