using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Bought;
using Solidbody.Instrument.Checks;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Playing;

namespace Solidbody.Instrument;

/// <summary>From what the instrument file says to parts in closed form, and to what does not fit.</summary>
public static class Designer
{
    /// <summary>Works out body, neck and fretboard, or what of them is not bought.</summary>
    /// <returns>The design. When a finding keeps a part from being drawn at all, there are no parts, and that finding stops.</returns>
    /// <remarks>Built right-handed throughout; a left-handed instrument is mirrored at the very end, so that bass and treble keep their meaning. Pure and deterministic.</remarks>
    public static Design Design(InstrumentDefinition definition)
    {
        ArgumentNullException.ThrowIfNull(definition);
        (definition, var unsolved) = StringHeight.Solve(definition);
        // What the shapes need before they can be drawn.
        ImmutableArray<Finding> findings = [.. unsolved, .. Foundations.Check(definition)];
        var (plan, outlineFindings) = definition.BoughtBody is null ? BodyPlan.Of(definition) : (null, []);
        findings = [.. findings, .. outlineFindings, .. plan is null ? [] : ThroughChecks.Foundations(definition, plan.Region)];
        if (plan is null && definition.BoughtBody is null || (definition.Neck.Section ?? NeckProfile.Named(definition.Neck.Profile)) is not { } profile || findings.Any(f => f.Severity == Severity.Stops))
            return new(definition, [], findings);

        if (definition.BoughtBody is { } bought) return With(definition, findings, Alone.Neck(definition, profile, bought));
        if (definition.BoughtNeck is { } neck) return With(definition, findings, Alone.Body(definition, plan!, neck));

        var headstock = NeckMaker.Headstock(definition);
        var back = NeckMaker.Back(definition, profile);
        var (body, wireFindings) = BodyMaker.Make(definition, plan!);
        ImmutableArray<Part> parts = [body, NeckMaker.Make(definition, back, headstock), FretboardMaker.Make(definition)];
        var (figures, playing) = Play.Of(definition, parts);
        return With(definition, findings, new(parts, figures, [.. Fit.Check(definition, parts, back, headstock), .. wireFindings, .. playing]));
    }

    private static Design With(InstrumentDefinition definition, ImmutableArray<Finding> before, Alone made) =>
        new(definition, definition.Hand == Hand.Left ? [.. made.Parts.Select(Mirror.Of)] : made.Parts, [.. before, .. made.Findings]) { Figures = made.Figures };
}
