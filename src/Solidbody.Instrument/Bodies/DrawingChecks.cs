using System.Collections.Immutable;
using Solidbody.Drawings;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>Whether a drawn outline takes the neck where the instrument has it, and what reading it had to say.</summary>
internal static class DrawingChecks
{
    /// <summary>The outline's front edge across the pocket's mouth, from the shoulder line: in front of it the heel's back is no longer level,
    /// far behind it the heel hangs in the air. mm; common practice, no source.</summary>
    public const double MostInFront = 2.5, MostBehind = 10;

    /// <summary>Distance between the lines looked along, mm.</summary>
    private const double Step = 1;

    public static ImmutableArray<Finding> Of(DrawnOutline drawn, NeckJoint joint) =>
        [.. drawn.Notes.Select(n => n.Kind == DrawingNoteKind.Mended ? DrawingFindings.Mended(drawn.Source.Name, n) : DrawingFindings.Understood(drawn.Source.Name, n)), .. Mouth(new(drawn.Loop), joint)];

    private static IEnumerable<Finding> Mouth(Region outline, NeckJoint joint)
    {
        var (half, xs) = (joint.HeelWidth / 2, new List<double>());
        var (worst, at) = (0.0, 0.0);
        for (var k = -Math.Floor(half / Step); k * Step <= half; k++)
        {
            outline.Crossings(k * Step, xs);
            // Where nothing is crossed there is no body at all.
            var behind = xs.Count == 0 ? double.PositiveInfinity : xs[0] - joint.ShoulderX;
            if (Outside(behind) > Outside(worst)) (worst, at) = (behind, k * Step);
        }
        if (!(worst is >= -MostInFront and <= MostBehind)) yield return DrawingFindings.MissesMouth(joint.ShoulderX, at, worst);
    }

    private static double Outside(double behind) => Math.Max(-MostInFront - behind, behind - MostBehind);
}
