namespace Solidbody.Instrument;

/// <summary>What the parts weigh that are bought, kg. Defaults are a guitar's, common practice, no source: weigh your own.</summary>
public sealed record WeightsDefinition
{
    /// <summary>Each.</summary>
    public double Tuner { get; init; } = 0.032;
    public double Bridge { get; init; } = 0.25;
    /// <summary>Each.</summary>
    public double Pickup { get; init; } = 0.15;
    /// <summary>Each.</summary>
    public double String { get; init; } = 0.005;
    /// <summary>Potentiometer or switch with its knob, each.</summary>
    public double Control { get; init; } = 0.05;
    public double Jack { get; init; } = 0.025;
    /// <summary>Of the controls, with its screws.</summary>
    public double Cover { get; init; } = 0.03;
    /// <summary>With its screw, each.</summary>
    public double StrapButton { get; init; } = 0.012;
    /// <summary>Neck screws and the plate or ferrules under their heads.</summary>
    public double NeckScrews { get; init; } = 0.08;
    public double Rod { get; init; } = 0.11;
    /// <summary>Each.</summary>
    public double Fret { get; init; } = 0.0012;
    public double Nut { get; init; } = 0.002;
    /// <summary>Lacquer or oil, on the body.</summary>
    public double Finish { get; init; } = 0.05;
}

/// <summary>How it hangs on the player. Defaults: common practice, no source.</summary>
public sealed record HangingDefinition
{
    /// <summary>Strap from button to button over the shoulder, mm.</summary>
    public double Strap { get; init; } = 1200;
    /// <summary>Friction of the strap on the shoulder.</summary>
    public double Grip { get; init; } = 0.3;
    /// <summary>Angle of the neck above the level at which it is played, radians.</summary>
    public double Angle { get; init; } = double.DegreesToRadians(20);
}
