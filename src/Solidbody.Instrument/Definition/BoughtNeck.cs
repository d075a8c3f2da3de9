namespace Solidbody.Instrument;

/// <summary>A neck that exists, as it was measured, mm: the body is made for it.</summary>
/// <param name="NutToHeelEnd">From the nut's fretboard-side face.</param>
/// <param name="NutToFret12">To the crown of fret 12; half the neck's own scale.</param>
/// <param name="LastFretToHeelEnd">From the last fret's crown; negative where the board hangs over the heel's end by more than lies beyond the fret.</param>
/// <param name="HeelWidth">At the heel's end.</param>
/// <param name="HeelWidthAtFront">Where it leaves the body.</param>
/// <param name="HeelLength">What lies in the pocket.</param>
/// <param name="HeelCorner">Plan radius of the heel's two end corners; 0 is sharp.</param>
public sealed record BoughtNeck(double NutToHeelEnd, double NutToFret12, double LastFretToHeelEnd, double HeelWidth, double HeelWidthAtFront, double HeelLength, double HeelCorner)
{
    /// <summary>Half width of the heel at x from the nut; its sides are straight.</summary>
    public double HalfWidth(double x) => HeelWidth / 2 + HalfWidthGain * (x - NutToHeelEnd);
    public double HalfWidthGain => (HeelWidth - HeelWidthAtFront) / 2 / HeelLength;
}
