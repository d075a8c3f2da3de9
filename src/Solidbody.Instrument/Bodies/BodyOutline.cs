using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>The body's outline from its own measures: one closed, curvature-continuous curve, counter-clockwise, right-handed.</summary>
/// <param name="Curve">Order: tail, treble side, shoulder, bass side.</param>
/// <param name="TailRadius">At the rearmost point, mm.</param>
/// <param name="Treble">The treble side as built.</param>
/// <param name="Bass">The bass side as built.</param>
/// <remarks>Our own outline family: docs/shapes.md gives the construction, its rules and why they suffice.</remarks>
public sealed record BodyOutline(BSpline Curve, double TailRadius, OutlineSide Treble, OutlineSide Bass)
{
    /// <summary>Builds the outline, or says which measure keeps it from being sound.</summary>
    /// <returns>The outline, null when a finding stops it; and the findings.</returns>
    public static (BodyOutline? Outline, ImmutableArray<Finding> Findings) Build(OutlineDefinition measures, NeckJoint joint)
    {
        var frame = OutlineFrame.Of(measures, joint);
        var treble = OutlineSide.Build("treble", +1, measures, measures.Treble, frame);
        var bass = OutlineSide.Build("bass", -1, measures, measures.Bass, frame);
        var findings = OutlineRules.Check(measures, frame, treble, bass, o => Rules(o, joint));
        if (findings.Length > 0) return (null, findings);

        var (s, m) = (measures.TailSquareness, 1 - OutlineFrame.SquareCurvature * measures.TailSquareness);
        var f = OutlineFrame.OvalLeg * (1 + OutlineFrame.SquareLeg * s);
        var curvature = m * (treble.TailToBout / Square(treble.TailToSide) + bass.TailToBout / Square(bass.TailToSide)) / 2;
        var tail = StationTriple.At(new(frame.TailX, measures.TailOffset), new(0, 1), new(1, 0), f * bass.TailToSide, f * treble.TailToSide,
            curvature, 0.13 * Math.Min(treble.TailToBout, bass.TailToBout));
        ImmutableArray<Point2> controls =
        [
            tail.Before, tail.Middle, tail.After,
            .. treble.Controls,
            new(joint.ShoulderX, 0),
            .. bass.Controls.Reverse().Select(p => new Point2(p.X, -p.Y)),
        ];
        var outline = new BodyOutline(new(controls, Closed: true), 1 / tail.Curvature, treble, bass);
        return OutlineRules.IsOrdered(treble) && OutlineRules.IsOrdered(bass)
            ? (outline, [])
            : (null, [OutlineFindings.Crosses()]);
    }

    /// <summary>How the rules stand for other measures on the same neck.</summary>
    internal static ImmutableArray<OutlineRule> Rules(OutlineDefinition measures, NeckJoint joint)
    {
        var frame = OutlineFrame.Of(measures, joint);
        return OutlineRules.Of(measures, frame, OutlineSide.Build("treble", +1, measures, measures.Treble, frame), OutlineSide.Build("bass", -1, measures, measures.Bass, frame));
    }

    private static double Square(double v) => v * v;
}
