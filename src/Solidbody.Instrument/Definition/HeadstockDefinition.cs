namespace Solidbody.Instrument;

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
    /// <summary>How far the headstock leans back, radians; 0 is parallel. An angled headstock has no drop.</summary>
    public double Angle { get; init; }
    /// <summary>The joint of an angled headstock that is glued on; null when the neck is one piece.</summary>
    public ScarfDefinition? Scarf { get; init; }
    /// <summary>Hole of a string post above the headstock's face.</summary>
    public double PostHeight { get; init; } = 7;
    /// <summary>Turns of string round its post, each below the one before.</summary>
    public double Windings { get; init; } = 2;
    /// <summary>Whether string trees are fitted where the strings need them.</summary>
    public bool Trees { get; init; } = true;
    /// <summary>A string under its tree, above the headstock's face.</summary>
    public double TreeHeight { get; init; } = 4;
}
