using Solidbody.Geometry;

namespace Solidbody.Machining.Planning;

/// <summary>What the tabs of a part bear, and what the cut that frees it asks of them.</summary>
/// <param name="Push">Greatest side force of the cutter, N.</param>
/// <param name="Lift">What of it lifts the part, N: an up-spiral pulls chips and wood up; a down-spiral presses down.</param>
/// <param name="BearsPush">Side force at which all tabs together split, N.</param>
/// <param name="BearsLift">Lift at which all tabs together break, N.</param>
internal readonly record struct TabHold(double Push, double Lift, double BearsPush, double BearsLift)
{
    /// <summary>Lift over side force of an up-spiral: tan 30° of its helix, of which chips and friction take half. Common practice, no source.</summary>
    private const double SpiralLift = 0.3;

    /// <summary>The least share in hand: what is borne over what is asked.</summary>
    public double Safety => Math.Min(BearsPush / Push, Lift > 0 ? BearsLift / Lift : double.PositiveInfinity);

    /// <summary>Bending over tension that splits: the farthest fibre of a bent bar bears more than a pulled one. Common practice, no source.</summary>
    private const double BendingOverTension = 1.5;

    /// <param name="tabs">How many, in the set-up that frees the part.</param>
    /// <param name="length">Of each along the outline, mm; its sloping ends count for half.</param>
    /// <param name="thickness">Of each, mm.</param>
    /// <param name="cutter">Whose groove they bridge.</param>
    /// <param name="force">Its greatest side force in the freeing cut, N.</param>
    /// <param name="tension">Of the wood, square to the grain, N/mm².</param>
    /// <remarks>
    /// Tabs stand on long grain and reach across it to the waste. Sideways one bears its section L·t in tension across the grain. Upward it is a beam over the groove w,
    /// held at both ends: M = V·w/2, section modulus L·t²/6, so V = 1.5·σ·L·t²/(3·w). All share, since the part itself is stiff.
    /// </remarks>
    public static TabHold Of(int tabs, double length, double thickness, Cutter cutter, double force, double tension)
    {
        var lift = cutter.Kind == CutterKind.UpSpiral ? SpiralLift * force : 0;
        var foot = length + thickness;
        return new(force, lift, tabs * tension * foot * thickness, tabs * BendingOverTension * tension * foot * thickness * thickness / (3 * cutter.Diameter));
    }
}
