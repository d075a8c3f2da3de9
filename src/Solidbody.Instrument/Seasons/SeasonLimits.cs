namespace Solidbody.Instrument.Seasons;

/// <summary>What movement may do, mm. Common practice, no source.</summary>
internal static class SeasonLimits
{
    /// <summary>Play of a neck in its pocket, both sides together: beyond it the neck shifts under the strings' pull.</summary>
    public const double LoosePocket = 0.6;
    /// <summary>A fret's end that stands out this far is felt by the hand.</summary>
    public const double FretEnd = 0.1;
    /// <summary>Most a top may cup its body over the width: more shows along a straightedge and pulls at the glue.</summary>
    public const double TopCup = 1.5;
    /// <summary>Gap round a cover plate where the file does not describe it; usual 0.2 to 0.3.</summary>
    public const double CoverGap = 0.25;
}
