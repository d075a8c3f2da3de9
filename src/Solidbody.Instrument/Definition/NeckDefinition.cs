using Solidbody.Instrument.Necks;
using Solidbody.Materials;

namespace Solidbody.Instrument;

/// <summary>How neck and body are joined: screwed through the body, glued into it, or in one piece with the body's middle.</summary>
public enum JointKind { BoltOn, Set, Through }

public sealed record NeckDefinition
{
    public JointKind Joint { get; init; } = JointKind.BoltOn;
    public required string Wood { get; init; }
    /// <summary>How its blank is sawn.</summary>
    public Grain Grain { get; init; } = Grain.Flat;
    /// <summary>With the fretboard, on the centre line.</summary>
    public required double ThicknessAtFret1 { get; init; }
    public required double ThicknessAtFret12 { get; init; }
    /// <summary>Fuller between frets 1 and 12 by this much in the middle; 0 is a straight taper.</summary>
    public double Bow { get; init; }
    /// <summary>Section family: C, D, U, V or asymmetric.</summary>
    public required string Profile { get; init; }
    /// <summary>The section's own measures at fret 1; null takes the family's.</summary>
    public NeckProfile? Section { get; init; }
    /// <summary>The section at fret 12, into which the first one turns; null keeps the first.</summary>
    public NeckProfile? SectionAt12 { get; init; }
    /// <summary>Upright neck wood at the board's edge.</summary>
    public required double Lip { get; init; }
    public required HeelDefinition Heel { get; init; }
    public required RodDefinition Rod { get; init; }
    public required double VoluteHeight { get; init; }
    /// <summary>The volute's crest, from the nut toward the tip.</summary>
    public double VoluteAt { get; init; } = HeadBlend.Usual.VoluteAt;
    /// <summary>From where it begins to where it ends.</summary>
    public double VoluteLength { get; init; } = 2 * HeadBlend.Usual.VoluteHalfLength;
    public BarsDefinition Bars { get; init; } = BarsDefinition.None;
    /// <summary>The body's middle, of the neck's own wood; null unless the neck goes through.</summary>
    public CoreDefinition? Core { get; init; }
}

/// <param name="Thickness">Neck wood at the heel, without board.</param>
/// <param name="BlendCentre">Length of the blend into the shaft on the centre line.</param>
/// <param name="BlendEdgeExtra">How much longer at the edges.</param>
/// <param name="CornerRadius">Plan radius of the heel's two end corners; 0 of a through-neck, which has none.</param>
/// <param name="Length">Straight heel that lies in the body's pocket; of a through-neck from the shoulder line to where the core takes over.</param>
public sealed record HeelDefinition(double Thickness, double BlendCentre, double BlendEdgeExtra, double CornerRadius, double Length, ScrewPattern Screws)
{
    /// <summary>A set neck's tenon, parallel; null is as wide as the board over it.</summary>
    public double? TenonWidth { get; init; }
}

/// <param name="AlongX">Between the two rows.</param>
/// <param name="AlongY">Between the two in a row.</param>
/// <param name="FromEnd">Rear row to the heel's end.</param>
/// <param name="Pilot">Hole in the neck.</param>
/// <param name="PilotDepth">From the heel's back face.</param>
/// <param name="Clearance">Hole through the body.</param>
/// <param name="Recess">Ferrule recess in the body's back: diameter; 0 is none.</param>
/// <param name="RecessDepth">Depth of that.</param>
public sealed record ScrewPattern(double AlongX, double AlongY, double FromEnd, double Pilot, double PilotDepth, double Clearance, double Recess, double RecessDepth)
{
    /// <summary>Of a screw, from under its head; null when the file does not say.</summary>
    public double? Length { get; init; }
    /// <summary>Of its shank.</summary>
    public double Diameter { get; init; } = WoodScrews.Diameter(8);
    /// <summary>On the body's back; null with ferrules.</summary>
    public NeckPlateDefinition? Plate { get; init; }

    /// <summary>Of a neck that is not screwed.</summary>
    public static ScrewPattern None { get; } = new(0, 0, 0, 0, 0, 0, 0, 0);
}

/// <summary>The plate under the neck's screws, its middle on the pattern's.</summary>
public sealed record NeckPlateDefinition(double Length, double Width, double Thickness);

/// <param name="Width">Channel.</param>
/// <param name="Depth">From the glue plane.</param>
/// <param name="Start">x of the end toward the head (negative is beyond the nut).</param>
/// <param name="End">x of the end toward the heel.</param>
/// <param name="AccessLength">Wider pocket for the adjuster behind the nut, along x; 0 is none.</param>
/// <param name="AccessWidth">Its width.</param>
/// <param name="LeastCover">Least wood allowed under the channel.</param>
public sealed record RodDefinition(double Width, double Depth, double Start, double End, double AccessLength, double AccessWidth, double LeastCover)
{
    public RodKind Kind { get; init; } = RodKind.DoubleAction;
    /// <summary>Of its steel bar, or of each of its two.</summary>
    public double Diameter { get; init; } = 4.8;
    /// <summary>Greatest pull its maker states, N; 0 is not stated.</summary>
    public double Capacity { get; init; }
}

/// <summary>What a truss rod can do: two bars that bend each other, and so the neck, either way; or one bar that pulls, and can only bend the neck back.</summary>
public enum RodKind { DoubleAction, SingleAction }

/// <summary>Stiff bars glued in channels on both sides of the rod, mm.</summary>
/// <param name="Count">0, or 2: one on each side.</param>
/// <param name="Width">Of a bar and its channel.</param>
/// <param name="Height">Of a bar.</param>
/// <param name="Below">Top of a bar below the glue plane.</param>
/// <param name="Offset">Middle of a bar to the centre line.</param>
/// <param name="Start">x of the channels' ends toward the nut.</param>
/// <param name="End">x of the channels' ends toward the heel.</param>
/// <param name="Modulus">Along the bar, N/mm².</param>
public sealed record BarsDefinition(int Count, double Width, double Height, double Below, double Offset, double Start, double End, double Modulus)
{
    public static BarsDefinition None { get; } = new(0, 0, 0, 0, 0, 0, 0, 0);

    /// <summary>Of the channels, from the glue plane; the bars lie on their floors.</summary>
    public double Depth => Below + Height;
    /// <summary>Middles of the bars, bass side first.</summary>
    public IEnumerable<double> Sides => Count == 0 ? [] : [-Offset, Offset];
}
