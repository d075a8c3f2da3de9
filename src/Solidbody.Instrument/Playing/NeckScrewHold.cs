using Solidbody.Instrument.Bodies;
using Solidbody.Materials;

namespace Solidbody.Instrument.Playing;

/// <summary>How a bolt-on neck's screws hold. Null figures hang on what the file does not say.</summary>
/// <param name="Thread">Of the shortest bite in the heel, mm.</param>
/// <param name="Tip">From the deepest tip to the glue plane, mm.</param>
/// <param name="Ultimate">What pulls one screw out, N.</param>
/// <param name="Most">Pull on the screws that carry most, N each.</param>
public sealed record NeckScrewHold(double Thread, double Tip, double? Ultimate, double? Most)
{
    /// <summary>How many times over the screws hold.</summary>
    public double? Safety => Ultimate / Most;

    /// <summary>Strings over the fret tops where heel and body meet, mm; common practice, no source.</summary>
    private const double StringHeight = 2.5;

    /// <returns>Null without a stated screw.</returns>
    /// <remarks>The strings' pull T, h above the heel's back, lifts the heel's front: the heel turns about its end edge, and screws at a from it share T h = Σ Fᵢ aᵢ with Fᵢ in the ratio of aᵢ: F = T h a / Σ a².</remarks>
    public static NeckScrewHold? Of(InstrumentDefinition d, double? pull)
    {
        ArgumentNullException.ThrowIfNull(d);
        var screws = d.Neck.Heel.Screws;
        if (d.Neck.Joint != JointKind.BoltOn || screws.Length is not { } length) return null;
        var (joint, seat) = (NeckJoint.Of(d), NeckSeat.Of(d));
        var places = HeelScrews.Of(screws, joint);
        // From the head's seat to the heel's back: plate, wood under the pocket, shim and wedge.
        var under = screws.Recess > 0 ? -screws.RecessDepth : screws.Plate?.Thickness ?? 0;
        var bites = places.Select(p => length - under - d.Body.Thickness - seat.Z(p.X, 0)).ToArray();
        var arms = places.Select(p => joint.HeelEnd - p.X).ToArray();
        return new(bites.Min(), d.Neck.Heel.Thickness - bites.Max(),
            d.WoodOf(d.Neck.Wood)?.Gravity is { } g ? WoodScrews.UltimateWithdrawal(g.Value, screws.Diameter, Math.Max(0, bites.Min())) : null,
            pull * (NeckSeat.FretTops(d) + StringHeight) * arms.Max() / arms.Sum(a => a * a));
    }
}
