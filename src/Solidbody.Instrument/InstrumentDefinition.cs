using System.Collections.Immutable;

namespace Solidbody.Instrument;

/// <summary>Which hand frets: a left-handed instrument is the mirrored design.</summary>
public enum Hand { Right, Left }

/// <summary>Everything the instrument file says, defaults filled in. Lengths mm, angles radians. Values are checked one by one by the reader; how they fit together is for the findings.</summary>
public sealed record InstrumentDefinition
{
    public required string Name { get; init; }
    public Hand Hand { get; init; } = Hand.Right;
    public int Strings { get; init; } = 6;
    /// <summary>Nut to the saddles' scale line.</summary>
    public required double Scale { get; init; }
    public int Frets { get; init; } = 22;
    public required NutDefinition Nut { get; init; }
    public required FretboardDefinition Fretboard { get; init; }
    public required NeckDefinition Neck { get; init; }
    public required HeadstockDefinition Headstock { get; init; }
    public required BodyDefinition Body { get; init; }
}

/// <param name="Width">Board width at the nut.</param>
/// <param name="Thickness">Along x: the nut stands on x ∈ [−thickness, 0].</param>
/// <param name="StringSpread">First to last string, centre to centre.</param>
public sealed record NutDefinition(double Width, double Thickness, double StringSpread);

/// <summary>How the fretboard is prepared for its frets.</summary>
public enum FretCut { Slots, ScribedLines }

public sealed record FretboardDefinition
{
    public required string Wood { get; init; }
    /// <summary>On the centre line.</summary>
    public required double Thickness { get; init; }
    /// <summary>Radius of the playing face at the nut, and at the last fret (the same for a plain radius).</summary>
    public required double RadiusAtNut { get; init; }
    public required double RadiusAtLastFret { get; init; }
    /// <summary>Board beyond the last fret.</summary>
    public required double BeyondLastFret { get; init; }
    /// <summary>Board outside the outer strings at the last fret and nut decide the taper: width at the board's end follows from the bridge spread unless given.</summary>
    public required double WidthAtEnd { get; init; }
    /// <summary>Slots the router saws, or shallow lines to saw by hand.</summary>
    public FretCut FretCut { get; init; } = FretCut.Slots;
    public required double SlotWidth { get; init; }
    public required double SlotDepth { get; init; }
    public required DotsDefinition Dots { get; init; }
}

/// <param name="Frets">Single dots lie half way to the fret before; a number listed in <paramref name="Doubles"/> has two.</param>
public sealed record DotsDefinition(ImmutableArray<int> Frets, ImmutableArray<int> Doubles, double Diameter, double Depth, double DoubleSpacing);

public sealed record NeckDefinition
{
    public required string Wood { get; init; }
    /// <summary>With the fretboard, on the centre line.</summary>
    public required double ThicknessAtFret1 { get; init; }
    public required double ThicknessAtFret12 { get; init; }
    /// <summary>Fuller between frets 1 and 12 by this much in the middle; 0 is a straight taper.</summary>
    public double Bow { get; init; }
    /// <summary>Section family: C, D, U, V or asymmetric.</summary>
    public required string Profile { get; init; }
    /// <summary>Upright neck wood at the board's edge.</summary>
    public required double Lip { get; init; }
    public required HeelDefinition Heel { get; init; }
    public required RodDefinition Rod { get; init; }
    public required double VoluteHeight { get; init; }
}

/// <param name="Thickness">Neck wood at the heel, without board.</param>
/// <param name="BlendCentre">Length of the blend into the shaft on the centre line.</param>
/// <param name="BlendEdgeExtra">How much longer at the edges.</param>
/// <param name="CornerRadius">Plan radius of the heel's two end corners.</param>
/// <param name="Length">Straight heel that lies in the body's pocket.</param>
public sealed record HeelDefinition(double Thickness, double BlendCentre, double BlendEdgeExtra, double CornerRadius, double Length, ScrewPattern Screws);

/// <param name="AlongX">Between the two rows.</param>
/// <param name="AlongY">Between the two in a row.</param>
/// <param name="FromEnd">Rear row to the heel's end.</param>
/// <param name="Pilot">Hole in the neck.</param>
/// <param name="PilotDepth">From the heel's back face.</param>
/// <param name="Clearance">Hole through the body.</param>
/// <param name="Recess">Ferrule recess in the body's back: diameter; 0 is none.</param>
/// <param name="RecessDepth">Depth of that.</param>
public sealed record ScrewPattern(double AlongX, double AlongY, double FromEnd, double Pilot, double PilotDepth, double Clearance, double Recess, double RecessDepth);

/// <param name="Width">Channel.</param>
/// <param name="Depth">From the glue plane.</param>
/// <param name="Start">x of the end toward the head (negative is beyond the nut).</param>
/// <param name="End">x of the end toward the heel.</param>
/// <param name="AccessLength">Wider pocket for the adjuster behind the nut, along x; 0 is none.</param>
/// <param name="AccessWidth">Its width.</param>
/// <param name="LeastCover">Least wood allowed under the channel.</param>
public sealed record RodDefinition(double Width, double Depth, double Start, double End, double AccessLength, double AccessWidth, double LeastCover);

public sealed record HeadstockDefinition
{
    public required int TunersBass { get; init; }
    public required int TunersTreble { get; init; }
    public required double Thickness { get; init; }
    /// <summary>Face below the glue plane.</summary>
    public required double Drop { get; init; }
    public required double TunerHole { get; init; }
    /// <summary>String post radius: the string touches its inner side.</summary>
    public required double PostRadius { get; init; }
    public required double FirstPost { get; init; }
    public required double TunerPitch { get; init; }
    public required double Splay { get; init; }
    public required double EdgeDistance { get; init; }
    public required double EdgeLead { get; init; }
    public required double EdgeTrail { get; init; }
    public required double NeckBlend { get; init; }
    public required double Guard { get; init; }
    public required double Swell { get; init; }
    public required double Dip { get; init; }
    public required double TipLength { get; init; }
    public required double TipLean { get; init; }
    public required double TipRadius { get; init; }
    public required double TipLeg { get; init; }
    public required double OgeeBass { get; init; }
    public required double OgeeTreble { get; init; }
}

public sealed record BodyDefinition
{
    public required string Wood { get; init; }
    public required double Thickness { get; init; }
    /// <summary>Pieces side by side: 1, or 2 joined on the centre line.</summary>
    public required int Pieces { get; init; }
    public required OutlineDefinition Outline { get; init; }
    public required NeckPocketDefinition Pocket { get; init; }
    public ImmutableArray<PickupDefinition> Pickups { get; init; } = [];
    public required BridgeDefinition Bridge { get; init; }
    public ControlsDefinition? Controls { get; init; }
    public JackDefinition? Jack { get; init; }
    public ImmutableArray<WireWayDefinition> WireWays { get; init; } = [];
    /// <summary>Rounded edges; 0 is a sharp edge.</summary>
    public required double FrontEdgeRadius { get; init; }
    public required double BackEdgeRadius { get; init; }
}

/// <param name="Length">Along x, from the body's shoulder line to the heel's end: the heel's own length.</param>
/// <param name="Depth">From the body's front.</param>
/// <param name="Clearance">A side, between heel and wall; the end wall too.</param>
/// <param name="CornerRadius">Inside corners.</param>
public sealed record NeckPocketDefinition(double Length, double Depth, double Clearance, double CornerRadius);

/// <param name="Name">Such as <c>bridge pickup</c>.</param>
/// <param name="CentreX">From the nut.</param>
/// <param name="AlongX">Cavity.</param>
/// <param name="AlongY">Cavity.</param>
/// <param name="Depth">From the front.</param>
/// <param name="CornerRadius">Inside corners.</param>
/// <param name="Turn">Slant, radians: positive moves the treble end toward the bridge... counter-clockwise seen from the front, right-handed.</param>
public sealed record PickupDefinition(string Name, double CentreX, double AlongX, double AlongY, double Depth, double CornerRadius, double Turn);

public sealed record BridgeDefinition
{
    public required double StringSpread { get; init; }
    /// <summary>Screw pilots: positions from the scale line (x) and centre line (y), right-handed.</summary>
    public required ImmutableArray<(double X, double Y)> Screws { get; init; }
    public required double ScrewPilot { get; init; }
    public required double ScrewDepth { get; init; }
    /// <summary>String-through holes: distance behind the scale line; null when strings do not pass the body.</summary>
    public double? StringThroughAt { get; init; }
    public required double StringHole { get; init; }
    public required double Ferrule { get; init; }
    public required double FerruleDepth { get; init; }
    /// <summary>Plate from the scale line: front edge, rear edge, half width. For checks and drawings.</summary>
    public required double PlateFrom { get; init; }
    public required double PlateTo { get; init; }
    public required double PlateHalfWidth { get; init; }
}

/// <param name="Angle">Of its long side from +x, radians, right-handed seen from the front.</param>
/// <param name="Floor">Wood left between floor and front.</param>
/// <param name="LedgeWidth">Cover ledge all round.</param>
/// <param name="LedgeDepth">From the back.</param>
/// <param name="Shafts">Control shafts and switch: from the cavity's middle along and across it, with hole diameter.</param>
public sealed record ControlsDefinition(double CentreX, double CentreY, double Length, double Width, double Angle, double CornerRadius, double Floor,
    double LedgeWidth, double LedgeDepth, ImmutableArray<ShaftDefinition> Shafts);

public sealed record ShaftDefinition(string Name, double Along, double Across, double Diameter);

/// <summary>Side bore for the jack: from the outline inward to the control cavity.</summary>
/// <param name="X">Where the bore meets the outline, from the nut; treble side.</param>
/// <param name="Angle">Direction inward in the plan, radians from +x.</param>
public sealed record JackDefinition(double X, double Angle, double Diameter);

/// <summary>A way for wires between two rooms, by their names: a pickup's name, <c>neck pocket</c>, <c>controls</c>, <c>bridge</c> (ground).</summary>
public sealed record WireWayDefinition(string From, string To, double Diameter);

/// <summary>The body's outline family and its measures, as docs/shapes.md names them; mm unless stated.</summary>
public sealed record OutlineDefinition
{
    public required double BodyLength { get; init; }
    public required double LowerBoutWidth { get; init; }
    public required double LowerBoutAt { get; init; }
    public double LowerBoutSkew { get; init; }
    public double LowerBoutOffset { get; init; }
    public double TailOffset { get; init; }
    public double TailSquareness { get; init; }
    public required double WaistWidth { get; init; }
    public required double WaistAt { get; init; }
    public double WaistSkew { get; init; }
    public double WaistOffset { get; init; }
    public required double UpperBoutWidth { get; init; }
    public required double UpperBoutAt { get; init; }
    public double UpperBoutSkew { get; init; }
    public double UpperBoutOffset { get; init; }
    public required ShoulderDefinition Treble { get; init; }
    public required ShoulderDefinition Bass { get; init; }
}

/// <summary>How one side of the body meets the neck: with a horn and a cutaway, or rounded.</summary>
public abstract record ShoulderDefinition
{
    public sealed record Horned(double HornReach, double HornTipRadius, double CutawayWidth, double CutawayRadius, double CutawayFret, double ShoulderCornerRadius, double ShoulderMargin) : ShoulderDefinition;
    public sealed record Rounded(double ShoulderMeet, double ShoulderSlope) : ShoulderDefinition;
}
