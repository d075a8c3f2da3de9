using Solidbody.Instrument.Fretboards;

namespace Solidbody.Instrument.Bodies;

/// <summary>Where neck and body meet, mm: what the body's outline, the pocket and the heel share.</summary>
/// <param name="Scale">Nut to scale line.</param>
/// <param name="HeelEnd">x of the heel's end: the fretboard's end, unless the board hangs over.</param>
/// <param name="PocketLength">Shoulder line to the heel's end.</param>
/// <param name="HeelWidth">Width of the heel at its end.</param>
/// <param name="Clearance">Between heel and pocket wall, a side and at the end.</param>
/// <param name="PocketCorner">Inside corner radius of the pocket: at least the stated one, and enough for the heel's own.</param>
public sealed record NeckJoint(double Scale, double HeelEnd, double PocketLength, double HeelWidth, double Clearance = 0, double PocketCorner = 0)
{
    /// <summary>x of the body's foremost line between the cutaways: where the heel leaves the body.</summary>
    public double ShoulderX => HeelEnd - PocketLength;
    /// <summary>Corner radius of the heel: the pocket's, less the clearance, so that the corners run parallel.</summary>
    public double HeelCorner => PocketCorner - Clearance;

    /// <summary>Two end corners need the heel's width, and some flat between them.</summary>
    public double MostCorner => Math.Min(HeelWidth, PocketLength) / 2.2;

    public static NeckJoint Of(InstrumentDefinition d)
    {
        var layout = FretLayout.Of(d);
        return new(d.Scale, layout.HeelEnd, d.Body.Pocket.Length, 2 * layout.HalfWidth(layout.HeelEnd), d.Body.Pocket.Clearance,
            // A heel that exists keeps its corners; our own is made to the pocket's.
            d.BoughtNeck is null ? Math.Max(d.Body.Pocket.CornerRadius, d.Neck.Heel.CornerRadius + d.Body.Pocket.Clearance) : d.Body.Pocket.CornerRadius);
    }
}
