using System.Collections.Immutable;
using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

/// <summary>What must hold before any part can be drawn.</summary>
internal static class Foundations
{
    public static ImmutableArray<Finding> Check(InstrumentDefinition d) => [];
}
