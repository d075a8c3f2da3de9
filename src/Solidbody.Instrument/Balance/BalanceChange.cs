using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Materials;

namespace Solidbody.Instrument.Balance;

/// <summary>What one change would make of weight and balance.</summary>
/// <param name="What">For people.</param>
/// <param name="Mass">Of the whole then, kg.</param>
/// <param name="CentreX">Of gravity then, from the nut, mm.</param>
/// <param name="Hangs">From the strap then; null where it is not worked out.</param>
/// <param name="HighestBy">By how much the highest angle the strap holds the neck at grows, radians; a row of 100 g says so for 100 g at that place.</param>
public sealed record BalanceChange(string What, double Mass, double CentreX, HangingPose? Hangs, double? HighestBy)
{
    /// <summary>Woods of a light, a middling and a heavy body, to compare with.</summary>
    private static readonly ImmutableArray<string> OtherBodies = ["basswood", "mahogany", "white-ash", "sugar-maple"];
    /// <summary>kg added or taken; mm a button is moved.</summary>
    private const double Weight = 0.1, Shift = 25;

    /// <param name="ofBody">Those of the things that are of the body's wood.</param>
    internal static ImmutableArray<BalanceChange> All(InstrumentDefinition d, ImmutableArray<Weighed> ofBody, ImmutableArray<Weighed> things, Setting setting)
    {
        var now = setting.Hang(Weighed.Together("now", things));
        BalanceChange Of(string what, IEnumerable<Weighed> then, Setting? moved = null)
        {
            var whole = Weighed.Together(what, [.. then]);
            var pose = (moved ?? setting).Hang(whole);
            return new(what, whole.Mass, whole.Centre.X, pose, pose?.Highest - now?.Highest);
        }
        BalanceChange With(string what, double mass, Point2 at) => Of(what, things.Add(new(what, mass, new(at.X, at.Y, 0))));

        var changes = ImmutableArray.CreateBuilder<BalanceChange>();
        foreach (var key in OtherBodies.Where(k => k != d.Body.Wood))
            if (Woods.Find(key) is { } other && WoodWeights.DensityOf(d, key) is { } density)
                changes.Add(Of($"{(d.Neck.Joint == JointKind.Through ? "wings" : "body")} of {other.Title}", things.Select(t => ofBody.Contains(t) ? t with { Mass = t.Mass * density / WoodWeights.DensityOf(d, d.Body.Wood)!.Value } : t)));
        changes.Add(With("100 g more at the tuners", Weight, new(-d.Headstock.FirstPost - d.Headstock.TunerPitch, 0)));
        changes.Add(With("100 g of holes behind the bridge", -Weight, new(d.Scale + d.Body.Bridge.PlateTo, 0)));
        if (setting is not { Horn: { } horn, Tail: { } tail }) return changes.ToImmutable();
        changes.Add(With("100 g of holes at the horn", -Weight, horn));
        changes.Add(With("100 g more at the tail button", Weight, tail));
        changes.Add(Of("horn button 25 mm toward the nut", things, setting with { Horn = horn - new Point2(Shift, 0) }));
        changes.Add(Of("tail button 25 mm to the bass side", things, setting with { Tail = tail - new Point2(0, Shift) }));
        return changes.ToImmutable();
    }
}
