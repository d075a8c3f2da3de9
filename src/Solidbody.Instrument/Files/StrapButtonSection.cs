using System.Collections.Immutable;
using Solidbody.Instrument.Bodies;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The list <c>[[body.strap_buttons]]</c>: one on the bass horn's tip (on a rounded shoulder where it turns to the side), one at the tail.</summary>
static class StrapButtonSection
{
    /// <summary>Pilot for the common button's screw; common practice, no source.</summary>
    const double Pilot = 3, PilotDepth = 25;

    public static ImmutableArray<StrapButtonDefinition> Read(TableReader body, OutlineDefinition outline, double scale, double shoulderX, double heelWidth) =>
        body.Tables("strap_buttons", 0, 4, Defaults(outline, OutlineFrame.Of(outline, scale, shoulderX, heelWidth)), (button, or) => new StrapButtonDefinition(
            button.Text("name", 30, or?.Name, "what sheets call it"),
            button.Length("x", -100, 1200, or?.X, "from the nut: the button stands on the outline's point nearest to x, y"),
            button.Length("y", -300, 300, or?.Y, "from the centre line toward the treble side"),
            button.Length("pilot", 1.5, 6, or?.Pilot ?? Pilot, "hole for its screw, made by hand"),
            button.Length("pilot_depth", 10, 50, or?.PilotDepth ?? PilotDepth, "from the outline inward")));

    static ImmutableArray<StrapButtonDefinition> Defaults(OutlineDefinition outline, OutlineFrame frame)
    {
        var place = outline.Bass switch
        {
            ShoulderDefinition.Horned horn => HornShape.TipOf(horn, frame),
            ShoulderDefinition.Rounded shoulder => OutlineSide.Corner(OutlineSide.UpperBoutOf(outline, -1, frame), shoulder, frame),
            _ => throw new ArgumentException($"A shoulder is horned or rounded, not {outline.Bass.GetType().Name}.", nameof(outline)),
        };
        return [new("horn button", Math.Round(place.X, 1), Math.Round(-place.Y, 1), Pilot, PilotDepth), new("tail button", Math.Round(frame.TailX, 1), Math.Round(outline.TailOffset, 1), Pilot, PilotDepth)];
    }
}
