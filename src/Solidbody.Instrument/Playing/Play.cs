using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Checks;
using Solidbody.Instrument.Walls;

namespace Solidbody.Instrument.Playing;

/// <summary>Works out how the instrument plays, holds and hangs: each question in a file of its own, asked here in order.</summary>
internal static class Play
{
    /// <param name="d">The definition.</param>
    /// <param name="parts">Body, neck, fretboard, right-handed.</param>
    public static (Figures Figures, ImmutableArray<Finding> Findings) Of(InstrumentDefinition d, ImmutableArray<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(d);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var figures = Figures.None with { BodyWalls = WallFinder.Of(parts[0]) };
        findings.AddRange(WallChecks.Of(d, parts[0], figures.BodyWalls));
        if (d.Tuning is null) findings.Add(TensionFindings.NotDescribed());
        return (figures, findings.ToImmutable());
    }
}
