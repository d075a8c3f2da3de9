using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Checks;

/// <summary>Whether the parts fit together and are strong enough: every check, in a stable order. Parts are right-handed here.</summary>
internal static class Fit
{
    public static ImmutableArray<Finding> Check(InstrumentDefinition d, ImmutableArray<Part> parts, NeckBack back, HeadstockOutline headstock)
    {
        var (body, neck, board) = (parts[0], parts[1], parts[2]);
        return
        [
            .. HeadChecks.Of(d, neck, headstock),
            .. NeckChecks.Of(d, neck, back, headstock),
            .. RodAndBarChecks.Of(d, neck, back),
            .. BoardChecks.Of(d, board),
            .. FretChecks.Of(d),
            .. NutChecks.Of(d),
            .. StringChecks.Of(d),
            .. OverhangChecks.Of(d, board),
            .. PocketChecks.Of(d, body),
            .. BodyChecks.Of(d, body),
        ];
    }
}
