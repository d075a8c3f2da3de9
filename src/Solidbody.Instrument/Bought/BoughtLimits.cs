namespace Solidbody.Instrument.Bought;

/// <summary>How far measures of a thing that exists may disagree, mm. Common practice, no source: a steel rule read at both ends to half a millimetre; a scale by a long caliper; play that a veneer fills.</summary>
internal static class BoughtLimits
{
    public const double Measuring = 1, Scale = 0.5, Play = 0.3;
}
