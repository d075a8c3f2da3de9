using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Checks;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Playing;

namespace Solidbody.Instrument;

/// <summary>From what the instrument file says to parts in closed form, and to what does not fit.</summary>
public static class Designer
{
    /// <summary>Works out body, neck and fretboard.</summary>
    /// <returns>The design. When a finding keeps a part from being drawn at all, there are no parts, and that finding stops.</returns>
    /// <remarks>Built right-handed throughout; a left-handed instrument is mirrored at the very end, so that bass and treble keep their meaning. Pure and deterministic.</remarks>
    public static Design Design(InstrumentDefinition definition)
    {
        ArgumentNullException.ThrowIfNull(definition);
        (definition, var unsolved) = StringHeight.Solve(definition);
        // What the shapes need before they can be drawn.
        ImmutableArray<Finding> findings = [.. unsolved, .. Foundations.Check(definition)];
        var (plan, outlineFindings) = BodyPlan.Of(definition);
        findings = [.. findings, .. outlineFindings];
        if (plan is null || (definition.Neck.Section ?? NeckProfile.Named(definition.Neck.Profile)) is not { } profile || findings.Any(f => f.Severity == Severity.Stops))
            return new(definition, [], findings);

        var headstock = NeckMaker.Headstock(definition);
        var back = NeckMaker.Back(definition, profile);
        var (body, wireFindings) = BodyMaker.Make(definition, plan);
        ImmutableArray<Part> parts = [body, NeckMaker.Make(definition, back, headstock), FretboardMaker.Make(definition)];
        var (figures, playing) = Play.Of(definition, parts);
        findings = [.. findings, .. Fit.Check(definition, parts, back, headstock), .. wireFindings, .. playing];
        return new(definition, definition.Hand == Hand.Left ? [.. parts.Select(Mirror.Of)] : parts, findings) { Figures = figures };
    }
}
