using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Balance;

/// <summary>What the instrument weighs, where its centre of gravity lies, and how it hangs and sits. All in the right-handed instrument: its mirror image does the same.</summary>
/// <param name="Things">Each wood of each part, and everything bought.</param>
/// <param name="Whole">All together.</param>
/// <param name="Hangs">From the strap; null without two buttons or where the strap does not reach.</param>
/// <param name="Sits">On the thigh.</param>
/// <param name="Changes">What other woods, places and weights would make of it.</param>
public sealed record WeightBalance(ImmutableArray<Weighed> Things, Weighed Whole, HangingPose? Hangs, Knee Sits, ImmutableArray<BalanceChange> Changes)
{
    /// <summary>Standard gravity, m/s²; exact by definition.</summary>
    public const double Gravity = 9.80665;

    /// <returns>Null where a wood's density is not known.</returns>
    /// <param name="d">The definition.</param>
    /// <param name="woods">Of all its parts, right-handed.</param>
    public static WeightBalance? Of(InstrumentDefinition d, ImmutableArray<PartWood> woods)
    {
        ArgumentNullException.ThrowIfNull(d);
        if (woods.FirstOrDefault(p => p.Part.Name == "body")?.Part is not { } body || WoodWeights.Of(d, woods) is not { } wood) return null;
        ImmutableArray<Weighed> ofBody = [.. wood.Zip(woods).Where(w => w.Second.Part.Name == "body" && w.Second.Name != PartWood.Top).Select(w => w.First)];
        ImmutableArray<Weighed> things = [.. wood, .. HardwareWeights.Of(d, body, Weighed.Together("body", ofBody).Centre).Where(t => t.Mass > 0)];
        var setting = Setting.Of(d, body);
        var whole = Weighed.Together("whole instrument", things);
        return new(things, whole, setting.Hang(whole), Knee.Of(body.Outline.Loops[0], whole, d.Hanging.Angle), BalanceChange.All(d, ofBody, things, setting));
    }
}

/// <summary>How it hangs, let go at the angle it is played at.</summary>
/// <param name="Angle">Of the neck above the level, as it is played, radians.</param>
/// <param name="RestsAt">Where it comes to rest: the same where the strap grips, ±90° where nothing stops it.</param>
/// <param name="Lowest">Lowest angle near there at which the strap grips.</param>
/// <param name="Highest">Highest.</param>
/// <param name="PullRatio">Tension of the strap at the horn over that at the tail, as played; null where the centre of gravity lies outside the buttons.</param>
/// <param name="MostRatio">Most that ratio may be, by the strap's grip.</param>
/// <param name="HandForce">Upward force the left hand must give at the nut to keep it there, N; 0 where the strap grips.</param>
public sealed record HangingPose(double Angle, double RestsAt, double Lowest, double Highest, double? PullRatio, double? MostRatio, double HandForce);

/// <summary>What does not change when weights do: buttons, strap, angle.</summary>
internal sealed record Setting(Point2? Horn, Point2? Tail, HangingDefinition Hanging)
{
    public static Setting Of(InstrumentDefinition d, Part body)
    {
        var feet = StrapButtons.Of(d.Body, body.Outline).Select(b => b.Foot.Plan).OrderBy(p => p.X).ToArray();
        return feet.Length < 2 ? new(null, null, d.Hanging) : new(feet[0], feet[^1], d.Hanging);
    }

    public HangingPose? Hang(Weighed whole)
    {
        if (Horn is not { } horn || Tail is not { } tail || !(Hanging.Strap > horn.DistanceTo(tail))) return null;
        var (hang, angle) = (new Hanging(horn, tail, whole.Centre.Plan, Hanging.Strap, Hanging.Grip), Hanging.Angle);
        var (lowest, highest) = hang.Held(angle);
        return new(angle, hang.RestsAt(angle), lowest, highest, hang.PullRatio(angle), hang.MostRatio(angle), whole.Mass * WeightBalance.Gravity * hang.HandShare(angle, new(0, 0)));
    }
}
