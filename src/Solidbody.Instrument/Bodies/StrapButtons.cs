using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>A strap button where it stands.</summary>
/// <param name="Definition">What the file says of it.</param>
/// <param name="Foot">On the outline, half way between front and back.</param>
/// <param name="Inward">The way its screw goes, unit, plan.</param>
public sealed record StrapButton(StrapButtonDefinition Definition, PartPoint Foot, Point2 Inward)
{
    /// <summary>Where its pilot ends.</summary>
    public PartPoint PilotEnd => new(Foot.X + Definition.PilotDepth * Inward.X, Foot.Y + Definition.PilotDepth * Inward.Y, Foot.Z);
}

/// <summary>Strap buttons on the body's outline, right-handed.</summary>
public static class StrapButtons
{
    /// <param name="body">The definition.</param>
    /// <param name="plan">The body's outline.</param>
    public static ImmutableArray<StrapButton> Of(BodyDefinition body, Region plan)
    {
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(plan);
        return [.. body.StrapButtons.Select(b =>
        {
            var (foot, inward) = Segments.Nearest(plan.Loops[0], new(b.X, b.Y));
            return new StrapButton(b, new(foot.X, foot.Y, -body.Thickness / 2), inward);
        })];
    }

    internal static string PilotName(StrapButtonDefinition button) => $"{button.Name} pilot";

    /// <summary>Their pilots, from the outline inward.</summary>
    internal static IEnumerable<HandBore> Pilots(BodyDefinition body, Region plan) =>
        Of(body, plan).Select(b => new HandBore(PilotName(b.Definition), b.Foot, b.PilotEnd, b.Definition.Pilot, "with a hand drill square to the edge, after the edges are shaped") { FromEdge = true });
}
