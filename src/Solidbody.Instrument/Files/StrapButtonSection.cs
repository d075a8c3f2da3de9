using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The list <c>[[body.strap_buttons]]</c>: one on the bass horn's tip (on a rounded shoulder where it turns to the side), one at the tail.</summary>
static class StrapButtonSection
{
    /// <summary>Pilot for the common button's screw; common practice, no source.</summary>
    const double Pilot = 3, PilotDepth = 25;

    public static ImmutableArray<StrapButtonDefinition> Read(TableReader body, OutlineDefinition outline, DrawnOutline? drawn, double scale, double shoulderX, double heelWidth) =>
        body.Tables("strap_buttons", 0, 4, drawn is null ? Defaults(outline, OutlineFrame.Of(outline, scale, shoulderX, heelWidth)) : Defaults(drawn), (button, or) => new StrapButtonDefinition(
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
        return Pair(new(place.X, -place.Y), new(frame.TailX, outline.TailOffset));
    }

    /// <summary>On a drawn outline: where its bass side reaches furthest forward, and where it ends.</summary>
    static ImmutableArray<StrapButtonDefinition> Defaults(DrawnOutline drawn) =>
        Pair(drawn.Loop.Points.Where(p => p.Y < 0).DefaultIfEmpty(drawn.Loop.Points[0]).MinBy(p => p.X), drawn.Loop.Points.MaxBy(p => p.X));

    static ImmutableArray<StrapButtonDefinition> Pair(Point2 horn, Point2 tail) =>
        [new("horn button", Math.Round(horn.X, 1), Math.Round(horn.Y, 1), Pilot, PilotDepth), new("tail button", Math.Round(tail.X, 1), Math.Round(tail.Y, 1), Pilot, PilotDepth)];
}
