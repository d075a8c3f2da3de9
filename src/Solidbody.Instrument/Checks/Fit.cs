using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Checks;

/// <summary>Whether the parts fit together, and are strong enough.</summary>
internal static class Fit
{
    public static ImmutableArray<Finding> Check(InstrumentDefinition d, ImmutableArray<Part> parts, BodyOutline outline, NeckBack back, HeadstockOutline headstock) =>
        WireWays.Of(d, parts[0].Outline, parts[0].Pockets).Findings;
}
