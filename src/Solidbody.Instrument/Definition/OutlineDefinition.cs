namespace Solidbody.Instrument;

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
