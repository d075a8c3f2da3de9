namespace Solidbody.Instrument;

/// <summary>Which measure of the chain from nut to saddle is left free, to follow from all the others.</summary>
public enum FreeMeasure { Saddle, Angle, Depth, Heel, Shim, Bridge, Above }

public static class FreeMeasures
{
    /// <summary>Whether a neck so joined has this measure: a through-neck has no pocket; only it stands a stated height over the body's front.</summary>
    public static bool IsOf(this FreeMeasure measure, JointKind joint) => measure switch
    {
        FreeMeasure.Depth or FreeMeasure.Heel or FreeMeasure.Shim => joint != JointKind.Through,
        FreeMeasure.Above => joint == JointKind.Through,
        _ => true,
    };
}

/// <summary>How the strings shall lie over the frets. Heights are from a fret's top to the string's underside, mm. Common practice, no source.</summary>
public sealed record ActionDefinition
{
    /// <summary>Hollow of the fret tops half way along the free neck, strings at pitch.</summary>
    public double Relief { get; init; } = 0.2;
    /// <summary>Lowest and highest string over fret 12; those between evenly.</summary>
    public double At12Bass { get; init; } = 2.0;
    public double At12Treble { get; init; } = 1.6;
    /// <summary>Bottom of the nut's slots above the fret tops carried on to the nut.</summary>
    public double NutHeight { get; init; } = 0.4;
    /// <summary>How far the last fret's top is dressed below the line of those over the body.</summary>
    public double FallAway { get; init; }
    public FreeMeasure Free { get; init; } = FreeMeasure.Saddle;
}
