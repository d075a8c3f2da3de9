using System.Collections.Immutable;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Files;

/// <summary>One of our own outline families (docs/instrument-file.md), drawn for one scale and number of frets; mm unless stated.</summary>
/// <param name="Word">As the file names it.</param>
/// <param name="Scale">The scale and frets it is drawn for.</param>
/// <param name="Outline">All measures at that scale; the cutaways' frets are carried over to another instrument by their distance from the heel's end.</param>
/// <param name="BehindScale">Body wanted behind the scale line: a body grows longer rather than have less.</param>
/// <param name="Pickups">How many it has room for.</param>
/// <param name="BridgePickupBeforeScale">Bridge pickup's centre to the scale line.</param>
/// <param name="PickupSpacing">Centre to centre, where it is fixed (basses).</param>
/// <param name="ControlsBeforeTail">Middle of the control cavity to the rearmost point.</param>
/// <param name="ControlsAngle">Degrees.</param>
sealed record OutlineFamily(string Word, double Scale, int Frets, OutlineDefinition Outline, double BehindScale,
    int Pickups, double BridgePickupBeforeScale, double PickupSpacing,
    double ControlsBeforeTail, double ControlsY, double ControlsLength, double ControlsWidth, double ControlsAngle)
{
    public bool IsBass => Scale >= InstrumentBasis.BassScale;

    /// <summary>How far the bottom of a cutaway lies in front of the heel's end, mm, for the cutaway's fret in the family's own drawing.</summary>
    public double CutawayBeforeHeel(double cutawayFret)
    {
        var drawn = new InstrumentBasis(Hand.Right, 6, Scale, Frets);
        return drawn.LastFret + HeelBeyondLastFret - drawn.AtFret(cutawayFret);
    }

    /// <summary>How much wider than drawn the body is for a heel, mm: both sides keep their form and move out, or in, with the neck. In steps of 4 mm, so that
    /// a heel much like the drawing's has the drawing's body.</summary>
    public double WidthFor(double heelWidth) => 4 * Math.Round((heelWidth - (IsBass ? BassHeel : GuitarHeel)) / 4);

    /// <summary>How much wider than the family's a drawn outline is at the lower bout of its treble side, for both sides together, mm.</summary>
    public double WidthOf(DrawnOutline drawn) => 2 * (LoopStations.Of(drawn.Loop, +1).LowerBout.Y - Outline.LowerBoutWidth / 2 - Outline.LowerBoutOffset);

    /// <summary>Width of the heel in the drawings.</summary>
    const double GuitarHeel = 56, BassHeel = 63;

    /// <summary>Heel's end beyond the last fret in the drawings.</summary>
    const double HeelBeyondLastFret = 6;

    public static OutlineFamily Of(string word) => All.First(f => f.Word == word);

    static ShoulderDefinition.Horned Horn(double reach, double tip, double cutaway, double radius, double fret, double margin = 9.5) =>
        new(reach, tip, cutaway, radius, fret, ShoulderCornerRadius: 7, margin);

    public static ImmutableArray<OutlineFamily> All { get; } =
    [
        new("symmetric", 635, 22, new OutlineDefinition
        {
            BodyLength = 452, TailSquareness = 0.1,
            LowerBoutWidth = 330, LowerBoutAt = 0.275,
            WaistWidth = 226, WaistAt = 0.575,
            UpperBoutWidth = 292, UpperBoutAt = 0.815,
            Treble = Horn(62, 11, 54, 13, 19.5), Bass = Horn(62, 11, 54, 13, 19.5),
        }, BehindScale: 100, Pickups: 2, BridgePickupBeforeScale: 38, PickupSpacing: 0,
            ControlsBeforeTail: 85.8, ControlsY: 96, ControlsLength: 106, ControlsWidth: 44, ControlsAngle: -24),

        new("offset", 635, 22, new OutlineDefinition
        {
            BodyLength = 464, TailOffset = 31,
            LowerBoutWidth = 330, LowerBoutAt = 0.285, LowerBoutSkew = 44, LowerBoutOffset = 3,
            WaistWidth = 234, WaistAt = 0.57, WaistSkew = 50, WaistOffset = 5,
            UpperBoutWidth = 284, UpperBoutAt = 0.805, UpperBoutSkew = 30, UpperBoutOffset = -5,
            Treble = Horn(40, 11, 45, 13, 20.2), Bass = Horn(84, 12, 55, 13, 19.2, margin: 10),
        }, BehindScale: 100, Pickups: 2, BridgePickupBeforeScale: 38, PickupSpacing: 0,
            ControlsBeforeTail: 83.8, ControlsY: 98, ControlsLength: 112, ControlsWidth: 44, ControlsAngle: -27),

        new("single", 635, 22, new OutlineDefinition
        {
            BodyLength = 416, TailOffset = 6, TailSquareness = 0.1,
            LowerBoutWidth = 330, LowerBoutAt = 0.298, LowerBoutSkew = 4,
            WaistWidth = 234, WaistAt = 0.575, WaistSkew = -14,
            UpperBoutWidth = 264, UpperBoutAt = 0.765, UpperBoutSkew = -34, UpperBoutOffset = 1,
            Treble = Horn(32, 12, 38, 15, 20.5), Bass = new ShoulderDefinition.Rounded(18, 0.2),
        }, BehindScale: 100, Pickups: 2, BridgePickupBeforeScale: 41, PickupSpacing: 0,
            ControlsBeforeTail: 83.8, ControlsY: 95, ControlsLength: 104, ControlsWidth: 46, ControlsAngle: -28),

        new("bass", 863.6, 21, new OutlineDefinition
        {
            BodyLength = 506, TailOffset = 28,
            LowerBoutWidth = 338, LowerBoutAt = 0.275, LowerBoutSkew = 38,
            WaistWidth = 240, WaistAt = 0.575, WaistSkew = 48, WaistOffset = 4,
            UpperBoutWidth = 296, UpperBoutAt = 0.805, UpperBoutSkew = 40, UpperBoutOffset = -5,
            Treble = Horn(48, 12, 46, 14, 19.4), Bass = Horn(102, 13, 57, 14, 18.4, margin: 10),
        }, BehindScale: 61, Pickups: 2, BridgePickupBeforeScale: 73.6, PickupSpacing: 74,
            ControlsBeforeTail: 102.9, ControlsY: 109, ControlsLength: 120, ControlsWidth: 44, ControlsAngle: -12),

        new("travel", 609.6, 22, new OutlineDefinition
        {
            BodyLength = 326,
            LowerBoutWidth = 248, LowerBoutAt = 0.285,
            WaistWidth = 198, WaistAt = 0.565, WaistSkew = -8,
            UpperBoutWidth = 220, UpperBoutAt = 0.745, UpperBoutSkew = -24,
            Treble = Horn(22, 10.5, 28.5, 11.5, 20.5), Bass = new ShoulderDefinition.Rounded(26, 0.18),
        }, BehindScale: 60, Pickups: 1, BridgePickupBeforeScale: 44.6, PickupSpacing: 0,
            ControlsBeforeTail: 69.5, ControlsY: 70, ControlsLength: 74, ControlsWidth: 34, ControlsAngle: -16),
    ];
}
