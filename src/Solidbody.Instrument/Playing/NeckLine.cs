using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Playing;

/// <summary>The fret tops along the centre line with strings at pitch, above the plane they were dressed in: the free neck bends up toward the nut, the heel stays flat, the last frets may fall away.</summary>
/// <param name="Free">Free neck: from the nut to where the heel enters the body, mm.</param>
/// <param name="Relief">Hollow of the free neck at its middle, mm.</param>
/// <param name="FallFrom">Where the fall begins, mm.</param>
/// <param name="LastFret">mm from the nut.</param>
/// <param name="FallAway">At the last fret, mm.</param>
/// <remarks>The strings bend the free neck as an even moment would: z = 4 r (1 − x/f)², whose hollow under its own chord is r at the middle.
/// W. C. Young, Roark's Formulas for Stress and Strain, cantilever with an end moment: sagitta M L²/8EI, tip M L²/2EI (from memory).</remarks>
public sealed record NeckLine(double Free, double Relief, double FallFrom, double LastFret, double FallAway)
{
    /// <summary>Where the body does not reach so far, the last six frets fall.</summary>
    private const int MostFalling = 6;

    public static NeckLine Of(InstrumentDefinition d)
    {
        ArgumentNullException.ThrowIfNull(d);
        var free = NeckJoint.Of(d).ShoulderX;
        return new(free, d.Action.Relief, Math.Min(free, FretTable.Position(d.Scale, d.Frets - MostFalling)), FretTable.Position(d.Scale, d.Frets), d.Action.FallAway);
    }

    public double Height(double x)
    {
        var bent = Math.Max(0, 1 - x / Free);
        return 4 * Relief * bent * bent - FallAway * Math.Max(0, x - FallFrom) / (LastFret - FallFrom);
    }
}
